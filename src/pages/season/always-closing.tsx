import { useWords } from '../../language/words.ts';
import { closingErrorRelative } from '../../model/ledger.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { closesBelow } from '../../ui/ledger-parts.tsx';

export interface AlwaysClosingProps {
  readonly season: Season;
  readonly station: StationId;
}

/**
 * Whether a station's ledger closes, in words in the head of the page, so that it is always in sight; the error itself stands
 * under the ledger. Nothing where things are counted.
 */
export function AlwaysClosing({ season, station }: AlwaysClosingProps) {
  const { messages, unitSystem } = useWords();
  const ledger = season.ledgers.find((each) => each.station === station);
  if (!ledger) return null;
  const { accounted, notAccounted } = messages.ledger;
  return (
    <span class="always-closing">
      {closingErrorRelative(ledger) < closesBelow ? accounted[unitSystem] : notAccounted}
    </span>
  );
}
