import { useWords } from '../../language/words.ts';
import { closingErrorRelative } from '../../model/ledger.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';

/** The closing error of a station's ledger, in the head of the page, so that it is always in sight; nothing where things are counted. */
export function AlwaysClosing({ season, station }: { readonly season: Season; readonly station: StationId }) {
  const { messages, formats } = useWords();
  const ledger = season.ledgers.find((each) => each.station === station);
  if (!ledger) return null;
  const error = closingErrorRelative(ledger);
  return (
    <span class="always-closing">
      {messages.ledger.unaccounted} {error === 0 ? formats.count(0) : formats.powerOfTen(error)}
    </span>
  );
}
