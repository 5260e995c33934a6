import type { Words } from '../../../language/words.ts';
import type { MassEntry } from '../../../model/ledger.ts';
import type { Lot } from '../../../model/lot.ts';
import { scaleMasses, totalWaterKg } from '../../../model/lot.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { KG_PER_POUND } from '../../../model/units.ts';
import { type InAccount, type Masses, massOf, type OutAccount, plus } from '../../../scene/stations/flow/flow-input.ts';
import { ledgerRows } from '../../../ui/ledger-rows.ts';
import type { Step } from '../../../workings/working.ts';
import { ledgerOf, oneBaleShare } from '../ledger-panel.tsx';
import { accountSteps, type LedgerAccount } from './row-steps.ts';

/** A mass that would be written as 0.0 gets no place and no words: kg for one bale's worth. */
const leastKg = 0.02;

/** A station's ledger for one bale's worth, as a picture needs it: masses by account, and each number as the table rounds it. */
export interface PictureLedger {
  readonly inflow: ReadonlyMap<InAccount, Masses>;
  readonly outflow: ReadonlyMap<OutAccount, Masses>;
  /** One pound or one kilogram, kg. */
  readonly unitKg: number;
  /** The mass of an account with its unit, after a share of the work: at 1 the table's own number. */
  readonly massIn: (account: InAccount, progress?: number) => string;
  readonly massOut: (account: OutAccount, progress?: number) => string;
  /** How such a mass was come by. */
  readonly steps: (side: 'in' | 'out', account: LedgerAccount, progress?: number) => readonly Step[];
  /** All that came in. */
  readonly massAll: () => string;
}

/** Entries of one account put together; those of next to nothing left out. */
function gathered<Account extends string>(entries: readonly MassEntry<Account>[]): Map<Account, Masses> {
  const sums = new Map<Account, Masses>();
  for (const { account, dryKg, waterKg } of entries) {
    const sofar = sums.get(account);
    sums.set(account, sofar ? plus(sofar, { dryKg, waterKg }) : { dryKg, waterKg });
  }
  for (const [account, masses] of sums) if (massOf(masses) < leastKg) sums.delete(account);
  return sums;
}

/** The ledger of a station as its picture shows it; null where the season did not come so far. */
export function pictureLedger(season: Season, station: StationId, words: Words): PictureLedger | null {
  const whole = ledgerOf(season, station, 'bale');
  if (!whole) return null;
  const { messages, formats, unitSystem } = words;
  const rows = ledgerRows(whole, unitSystem);
  const sign = messages.units[unitSystem === 'us' ? 'pounds' : 'kilograms'].sign;
  const text = (value: number) => `${formats.number(value, rows.decimals)}\u00a0${sign}`;
  const allOf = (side: typeof rows.in, account: string) => side.find((row) => row.account === account)?.all ?? 0;
  return {
    inflow: gathered(whole.in),
    outflow: gathered(whole.out),
    unitKg: unitSystem === 'us' ? KG_PER_POUND : 1,
    massIn: (account, progress = 1) => text(allOf(rows.in, account) * progress),
    massOut: (account, progress = 1) => text(allOf(rows.out, account) * progress),
    steps: (side, account, progress = 1) => accountSteps(season, station, side, account, progress, words),
    massAll: () => text(rows.inAll.all),
  };
}

/** Masses of the whole field as one bale's worth. */
export function baleMasses(season: Season, lot: Pick<Lot, 'dryKg' | 'waterKg'>): Masses {
  const { dryKg, waterKg } = scaleMasses(lot, oneBaleShare(season));
  return { dryKg, waterKg: totalWaterKg(waterKg) };
}
