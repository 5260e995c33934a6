import type { DestinationAccount, SourceAccount } from '../model/ledger.ts';
import type { Season } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import type { LedgerColumn } from './ledger-causes.ts';
import { baleShare } from './seed.ts';
import { inLedger, mass, percent, procedure, step } from './steps.ts';
import type { Step, Working } from './working.ts';

/** One line of a part's way: what a station's books hold of it, kg of the whole field. */
export interface JourneyTerm {
  readonly station: StationId;
  readonly account: SourceAccount | DestinationAccount | 'lot';
  readonly side: 'in' | 'out';
  readonly kg: number;
}

/** Which number of a part's way through the chain is asked for. */
export interface JourneyPlace {
  readonly part: LedgerColumn;
  readonly station: StationId;
  /** Which of the station's numbers: tells them apart. */
  readonly of: string;
  /** The lines that the number is the sum of; one where it stands in one line. */
  readonly terms: readonly JourneyTerm[];
  /** Shown as one bale's worth, or for the whole field. */
  readonly oneBale: boolean;
  /** All that came in from any source, kg, where the number is a share of that; null where it is a mass. */
  readonly ofKg: number | null;
}

/** The working of a number of a part's way through the chain. */
export function journeyWorking(season: Season, { part, terms, oneBale, ofKg }: JourneyPlace): Working {
  const kg = terms.reduce((sum, term) => sum + term.kg, 0);
  const lines: Step[] = terms.map((term) =>
    step({ account: term.account, side: term.side }, mass(term.kg), inLedger(term.station)),
  );
  if (ofKg !== null) {
    return procedure(
      [...lines, step('cameIn', mass(ofKg), { at: 'ledgers' }), step({ part }, mass(kg), { at: 'above' })],
      percent((100 * kg) / ofKg),
    );
  }
  const { share, steps } = baleShare(season);
  return procedure([...lines, ...(oneBale ? steps : [])], mass(kg * (oneBale ? share : 1)));
}
