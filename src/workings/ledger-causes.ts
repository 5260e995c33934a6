import type { MassEntry, MassLedger } from '../model/ledger.ts';
import { type Lot, type Part, totalWaterKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import { rateSteps } from './ledger-rates.ts';
import { above, atStation, inLedger, mass, percent, step } from './steps.ts';
import type { Step } from './working.ts';

export type LedgerColumn = Part | 'water';

/** What an entry holds of a part or of water, kg. */
export const inColumnKg = (entry: MassEntry, column: LedgerColumn): number =>
  column === 'water' ? entry.waterKg : entry.dryKg[column];

/** What a ledger books to an account, of a part or of water, kg. */
export const bookedKg = (ledger: MassLedger, side: 'in' | 'out', account: string, column: LedgerColumn): number =>
  ledger[side].reduce((sum, entry) => (entry.account === account ? sum + inColumnKg(entry, column) : sum), 0);

type Moved = readonly { readonly account: string; readonly masses: Pick<Lot, 'dryKg' | 'waterKg'> }[];

/** A station's line of machines; empty where the station has none. */
function machinesOf(
  season: Season,
  station: StationId,
): readonly { readonly machine: string; readonly added?: Moved; readonly removed: Moved }[] {
  if (station === 'spinning') return season.spinning?.steps ?? [];
  if (station === 'cleaning' || station === 'ginning' || station === 'pressing') return season[station]?.machines ?? [];
  return [];
}

/** What each machine took out or put in. */
function machineSteps(
  season: Season,
  station: StationId,
  side: 'in' | 'out',
  account: string,
  column: LedgerColumn,
): Step[] {
  return machinesOf(season, station).flatMap(({ machine, added = [], removed }) => {
    const kg = (side === 'in' ? added : removed).reduce((sum, each) => {
      if (each.account !== account) return sum;
      return sum + (column === 'water' ? totalWaterKg(each.masses.waterKg) : each.masses.dryKg[column]);
    }, 0);
    return kg > 0 ? [step({ machine }, mass(kg), atStation(station))] : [];
  });
}

/** Every account of a side that holds any of a column, but one. */
const otherSteps = (ledger: MassLedger, side: 'in' | 'out', column: LedgerColumn, but: string | null): Step[] =>
  [...new Set(ledger[side].map(({ account }) => account as string))].flatMap((account) => {
    const kg = account === but ? 0 : bookedKg(ledger, side, account, column);
    const name = { account, side } as Step['name'];
    return kg > 0 ? [step(name, mass(kg), inLedger(ledger.station))] : [];
  });

/**
 * How a number of a ledger came about: what a lot was handed by the station before; what goes on is what came in less what
 * went elsewhere; everything else by the constants and the machines that took it.
 */
export function causeSteps(
  season: Season,
  ledger: MassLedger,
  side: 'in' | 'out',
  account: string,
  column: LedgerColumn,
): Step[] {
  const { station } = ledger;
  if (account === 'lot' && side === 'in') {
    const before = season.ledgers[season.ledgers.indexOf(ledger) - 1];
    if (!before) return [];
    const kg = bookedKg(before, 'out', 'lot', column);
    return [step({ account: 'lot', side: 'out' }, mass(kg), inLedger(before.station))];
  }
  const cameIn = otherSteps(ledger, 'in', column, null);
  if (account === 'lot') return [...cameIn, ...otherSteps(ledger, 'out', column, 'lot')];
  const wholeKg = ledger.in.reduce((sum, entry) => sum + inColumnKg(entry, column), 0);
  const kg = bookedKg(ledger, side, account, column);
  return [
    ...(side === 'out' ? cameIn : []),
    ...rateSteps(season, station, account, column),
    ...machineSteps(season, station, side, account, column),
    ...(side === 'out' && wholeKg > 0 ? [step('shareOfIn', percent((100 * kg) / wholeKg, 3), above)] : []),
  ];
}
