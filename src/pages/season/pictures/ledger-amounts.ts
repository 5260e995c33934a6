import type { Words } from '../../../language/words.ts';
import type { Lot } from '../../../model/lot.ts';
import { scaleMasses, totalWaterKg } from '../../../model/lot.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { type Masses, massOf, plus } from '../../../scene/stations/flow/flow-input.ts';
import { ledgerRows } from '../../../ui/ledger-rows.ts';
import { ledgerOf, oneBaleShare } from '../ledger-panel.tsx';

/** One account of a station's ledger, for one bale's worth. */
export interface LedgerAmount {
  readonly masses: Masses;
  /** What has come when a share of the work is done, with its unit; all of it reads as in the ledger table. */
  readonly amount: (share: number) => string;
}

/** A mass that the table would write as nothing is left out of a picture, kg for one bale's worth. */
const leastKg = 0.02;

/**
 * Looks accounts of a station's ledger up, scaled to one bale's worth.
 * @returns a way to look up; it gives null for what the season has nothing of
 */
export function ledgerAmounts(season: Season, station: StationId, { formats, messages, unitSystem }: Words) {
  const ledger = ledgerOf(season, station, 'bale');
  const rows = ledger ? ledgerRows(ledger, unitSystem) : null;
  const { sign } = messages.units[unitSystem === 'us' ? 'pounds' : 'kilograms'];
  return (side: 'in' | 'out', account: string): LedgerAmount | null => {
    const entries = ledger?.[side].filter((entry) => entry.account === account) ?? [];
    const row = rows?.[side].find((each) => each.account === account);
    if (!rows || !row || entries.length === 0) return null;
    const masses = entries.map(({ dryKg, waterKg }): Masses => ({ dryKg, waterKg })).reduce(plus);
    if (massOf(masses) < leastKg) return null;
    return {
      masses,
      amount: (share) => `${formats.number(row.all * share, rows.decimals)}\u00a0${sign}`,
    };
  };
}

/** Masses of the whole field as one bale's worth. */
export function baleMasses(season: Season, lot: Pick<Lot, 'dryKg' | 'waterKg'>): Masses {
  const { dryKg, waterKg } = scaleMasses(lot, oneBaleShare(season));
  return { dryKg, waterKg: totalWaterKg(waterKg) };
}
