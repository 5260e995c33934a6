import { type Lot, type Part, type PartMasses, partMasses, parts, totalWaterKg } from './lot.ts';
import type { StationId } from './station.ts';

/** Where mass may come from. */
export const sourceAccounts = [
  'grown',
  'takenAlong',
  'moistureTakenUp',
  'moistureAdded',
  'warpSize',
  'finish',
] as const;
/** Where mass may end. */
export const destinationAccounts = [
  'leftInField',
  'weathered',
  'moduleLoss',
  'ginTrash',
  'lintCleanerWaste',
  'seedHouse',
  'evaporated',
  'classingSample',
  'bale',
  'millTrash',
  'cardStrips',
  'comberNoil',
  'hardWaste',
  'invisibleLoss',
  'effluent',
  'yarn',
  'offcuts',
  'cloth',
] as const;
export type SourceAccount = (typeof sourceAccounts)[number];
export type DestinationAccount = (typeof destinationAccounts)[number];

/** One line of a ledger: an account, its dry mass by part and its water, kg. 'lot' is what comes from the station before, or goes to the next. */
export interface MassEntry<Account extends string = string> {
  readonly account: Account;
  readonly dryKg: PartMasses;
  readonly waterKg: number;
}

/** One station's mass ledger: what came in and what went out. */
export interface MassLedger {
  readonly station: StationId;
  readonly in: readonly MassEntry<SourceAccount | 'lot'>[];
  readonly out: readonly MassEntry<DestinationAccount | 'lot'>[];
}

/** A count ledger, for the stations where things are counted and not weighed: the first count equals the sum of the others. */
export interface CountLedger {
  readonly station: StationId;
  readonly whole: { readonly name: CountName; readonly count: number };
  readonly shares: readonly { readonly name: CountName; readonly count: number }[];
}
export type CountName =
  | 'seedsSown'
  | 'plants'
  | 'notEmerged'
  | 'squares'
  | 'flowers'
  | 'squaresShed'
  | 'bolls'
  | 'bollsShed'
  | 'squaresUnopened'
  | 'flowersToday';

/** An entry from masses, with the water of all groups added up. */
export const massEntry = <Account extends string>(
  account: Account,
  masses: Pick<Lot, 'dryKg' | 'waterKg'>,
): MassEntry<Account> => ({ account, dryKg: masses.dryKg, waterKg: totalWaterKg(masses.waterKg) });

/** An entry of water alone, kg. */
export const waterEntry = <Account extends string>(account: Account, waterKg: number): MassEntry<Account> => ({
  account,
  dryKg: partMasses({}),
  waterKg,
});

/** What enters minus what leaves, for one part or for water, kg. */
export function unaccountedKg(ledger: Pick<MassLedger, 'in' | 'out'>, what: Part | 'water'): number {
  const pick = (entry: MassEntry) => (what === 'water' ? entry.waterKg : entry.dryKg[what]);
  let difference = 0;
  for (const entry of ledger.in) difference += pick(entry);
  for (const entry of ledger.out) difference -= pick(entry);
  return difference;
}

/**
 * The worst closing error of a ledger: over the parts and the water, |in - out| relative to what came in of that part.
 * A part that leaves without having come in gives Infinity. Zero for an empty ledger.
 */
export function closingErrorRelative(ledger: Pick<MassLedger, 'in' | 'out'>): number {
  let worst = 0;
  for (const what of [...parts, 'water'] as const) {
    const difference = Math.abs(unaccountedKg(ledger, what));
    if (difference === 0) continue;
    let entered = 0;
    for (const entry of ledger.in) entered += what === 'water' ? entry.waterKg : entry.dryKg[what];
    worst = Math.max(worst, entered > 0 ? difference / entered : Number.POSITIVE_INFINITY);
  }
  return worst;
}

/** |whole - sum of shares| relative to the whole; zero for an empty ledger. */
export function countErrorRelative(ledger: CountLedger): number {
  const sum = ledger.shares.reduce((total, share) => total + share.count, 0);
  const difference = Math.abs(ledger.whole.count - sum);
  return difference === 0 ? 0 : ledger.whole.count > 0 ? difference / ledger.whole.count : Number.POSITIVE_INFINITY;
}

/**
 * Joins station ledgers into one for the whole chain: sources on one side, destinations on the other, and whatever lot
 * the last station still holds as 'lot'. The lots handed from one station to the next cancel, and are left out.
 */
export function chainLedger(ledgers: readonly MassLedger[]): Pick<MassLedger, 'in' | 'out'> {
  const last = ledgers.at(-1);
  return {
    in: ledgers.flatMap((ledger, index) => ledger.in.filter((entry) => entry.account !== 'lot' || index === 0)),
    out: ledgers.flatMap((ledger) => ledger.out.filter((entry) => entry.account !== 'lot' || ledger === last)),
  };
}
