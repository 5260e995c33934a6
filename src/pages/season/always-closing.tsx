import { useWords, type Words } from '../../language/words.ts';
import { closingErrorRelative } from '../../model/ledger.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import { workingSource } from './working-source.ts';

export interface AlwaysClosingProps {
  readonly season: Season;
  readonly station: StationId;
}

const ledgerAt = ({ season, station }: AlwaysClosingProps) => season.ledgers.find((each) => each.station === station);

/** The working of the number in the head; the ledger below has the same under its own key. */
const sourceOf = ({ season, station }: AlwaysClosingProps, words: Words) =>
  workingSource(
    season,
    words,
    { topic: 'ledger', station, oneBale: false, decimals: 0, at: 'closing', place: { kind: 'closing' } },
    words.messages.ledger.unaccounted,
    'head/',
  );

/** The closing error of a station's ledger, in the head of the page, so that it is always in sight; nothing where things are counted. */
export function AlwaysClosing(props: AlwaysClosingProps) {
  const words = useWords();
  const ledger = ledgerAt(props);
  if (!ledger) return null;
  const text = words.formats.powerOfTen(closingErrorRelative(ledger));
  return (
    <span class="always-closing">
      {words.messages.ledger.accountedBut} <WorkingNumber text={text} source={sourceOf(props, words)} />
    </span>
  );
}

/** The place below the head for the working of that number. */
export function AlwaysClosingWorking(props: AlwaysClosingProps) {
  const words = useWords();
  return <WorkingPlace sources={ledgerAt(props) ? [sourceOf(props, words)] : []} />;
}
