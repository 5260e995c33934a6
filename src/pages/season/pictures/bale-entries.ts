import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import type { MassEntry } from '../../../model/ledger.ts';
import type { Season } from '../../../model/season.ts';
import { type StationId, stationIds } from '../../../model/station.ts';
import { KG_PER_POUND } from '../../../model/units.ts';
import { type Masses, massOf, plus } from '../../../scene/stations/flow/flow-input.ts';
import type { InEntry, LabelledEntry, OutEntry } from '../../../scene/stations/flow/labelled-entry.ts';
import { type LedgerRow, ledgerRows } from '../../../ui/ledger-rows.ts';
import type { Printed } from '../../../workings/working.ts';
import { ledgerOf } from '../ledger-panel.tsx';
import { printed } from '../printed.ts';
import type { TwinRow } from './picture.ts';
import { accountSteps, type LedgerAccount } from './row-steps.ts';

/** A mass that would be written as 0.0 gets no band and no words, kg for one bale's worth. */
const leastKg = 0.02;

export interface BaleEntries {
  readonly inflow: readonly InEntry[];
  readonly outflow: readonly OutEntry[];
}

/**
 * A station's ledger for one bale's worth, account by account, with the numbers of the ledger's table.
 * @returns null in the field's stations and past a stop
 */
export function baleEntries(season: Season, station: StationId, words: Words): BaleEntries | null {
  const ledger = ledgerOf(season, station, 'bale');
  if (!ledger) return null;
  const { messages, formats, unitSystem } = words;
  const rows = ledgerRows(ledger, unitSystem);
  const { sign } = messages.units[unitSystem === 'us' ? 'pounds' : 'kilograms'];
  const index = stationIds.indexOf(station);
  const nameOf = (at: number) => messages.stations[stationIds[at] ?? station].name;
  const labelled = <Account extends string>(
    entries: readonly MassEntry<Account>[],
    side: readonly LedgerRow[],
    lot: string,
    names: Readonly<Partial<Record<string, string>>>,
  ): LabelledEntry<Account>[] =>
    [...gathered(entries)]
      .filter(([, masses]) => massOf(masses) >= leastKg)
      .map(([account, masses]) => {
        const all = side.find((row) => row.account === account)?.all ?? 0;
        return {
          account,
          masses,
          name: account === 'lot' ? lot : (names[account] ?? account),
          amount: (share) => `${formats.number(all * share, rows.decimals)}\u00a0${sign}`,
        };
      });
  const { sources, destinations, lotIn, lotOut } = messages.accounts;
  return {
    inflow: labelled(ledger.in, rows.in, fill(lotIn, { name: nameOf(index - 1) }), sources),
    outflow: labelled(ledger.out, rows.out, fill(lotOut, { name: nameOf(index + 1) }), destinations),
  };
}

/** Entries of one account put together. */
function gathered<Account extends string>(entries: readonly MassEntry<Account>[]): Map<Account, Masses> {
  const sums = new Map<Account, Masses>();
  for (const { account, dryKg, waterKg } of entries) {
    const sofar = sums.get(account);
    sums.set(account, sofar ? plus(sofar, { dryKg, waterKg }) : { dryKg, waterKg });
  }
  return sums;
}

/** The accounts as rows of the table beside a picture, as far as the work is done. */
export function entryRows(
  { inflow, outflow }: BaleEntries,
  share: number,
  season: Season,
  station: StationId,
  words: Words,
): TwinRow[] {
  const row = (side: 'in' | 'out', { account, name, amount }: LabelledEntry<LedgerAccount>): TwinRow => ({
    key: `${side}/${account}`,
    label: name,
    text: amount(share),
    steps: accountSteps(season, station, side, account, share, words),
  });
  return [...inflow.map((entry) => row('in', entry)), ...outflow.map((entry) => row('out', entry))];
}

/** A round mass that pieces stand for, without a show of decimals. */
export function roundMass(kg: number, { unitSystem }: Words): Exclude<Printed, { as: 'exact' }> {
  const units = kg / (unitSystem === 'us' ? KG_PER_POUND : 1);
  return { as: 'mass', value: kg, decimals: units > 0.95 ? 0 : units > 0.095 ? 1 : 2 };
}
export const roundMassText = (kg: number, words: Words): string => printed(roundMass(kg, words), words);
