import type { MassEntry, MassLedger } from '../../model/ledger.ts';
import type { StationId } from '../../model/station.ts';
import type { LedgerColumn } from '../../ui/ledger-rows.ts';
import type { JourneyTerm } from '../../workings/journey.ts';

/** One account that a part came from, or went to for good, at a station. */
export interface PartMove {
  readonly side: 'source' | 'destination';
  readonly account: JourneyTerm['account'];
  readonly kg: number;
}

export interface PartStop {
  readonly station: StationId;
  readonly moves: readonly PartMove[];
  /** What goes on to the next station, kg. */
  readonly onKg: number;
}

export interface PartJourney {
  readonly stops: readonly PartStop[];
  /** All that came in from any source, kg. */
  readonly sourcesKg: number;
  /** All that ended anywhere, and what the last lot still holds, kg: the same, when the chain closes. */
  readonly destinationsKg: number;
}

const held = (entry: MassEntry, part: LedgerColumn): number => (part === 'water' ? entry.waterKg : entry.dryKg[part]);

/**
 * One part's way through the whole chain, from where it came to where it ended.
 * @param ledgers of the stations, in order, kg
 */
export function followPart(ledgers: readonly MassLedger[], part: LedgerColumn): PartJourney {
  let sourcesKg = 0;
  let destinationsKg = 0;
  const stops = ledgers.map((ledger, i): PartStop => {
    const moves = new Map<string, PartMove>();
    const add = (side: PartMove['side'], entry: MassEntry & { readonly account: JourneyTerm['account'] }) => {
      const kg = held(entry, part);
      if (kg === 0) return;
      const key = `${side} ${entry.account}`;
      moves.set(key, { side, account: entry.account, kg: (moves.get(key)?.kg ?? 0) + kg });
    };
    let onKg = 0;
    for (const entry of ledger.in) {
      if (entry.account !== 'lot') {
        add('source', entry);
        sourcesKg += held(entry, part);
      } else if (i === 0) sourcesKg += held(entry, part);
    }
    for (const entry of ledger.out) {
      if (entry.account === 'lot') onKg += held(entry, part);
      else {
        add('destination', entry);
        destinationsKg += held(entry, part);
      }
    }
    if (i === ledgers.length - 1) destinationsKg += onKg;
    return { station: ledger.station, moves: [...moves.values()], onKg };
  });
  return { stops: stops.filter(({ moves, onKg }) => moves.length > 0 || onKg > 0), sourcesKg, destinationsKg };
}

/** Every line of a part's way in the order of the stations, and what the last lot still holds. */
export function journeyTerms({ stops }: PartJourney): JourneyTerm[] {
  const last = stops.at(-1);
  return [
    ...stops.flatMap(({ station, moves }) =>
      moves.map(
        ({ side, account, kg }): JourneyTerm => ({
          station,
          account,
          side: side === 'source' ? 'in' : 'out',
          kg,
        }),
      ),
    ),
    ...(last && last.onKg > 0 ? [{ station: last.station, account: 'lot', side: 'out', kg: last.onKg } as const] : []),
  ];
}
