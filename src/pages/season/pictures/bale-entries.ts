import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import type { Season } from '../../../model/season.ts';
import { type StationId, stationIds } from '../../../model/station.ts';
import { KG_PER_POUND } from '../../../model/units.ts';
import type { Masses } from '../../../scene/stations/flow/flow-input.ts';
import type { InEntry, LabelledEntry, OutEntry } from '../../../scene/stations/flow/labelled-entry.ts';
import type { Printed } from '../../../workings/working.ts';
import { printed } from '../printed.ts';
import type { TwinRow } from './picture.ts';
import { pictureLedger } from './picture-ledger.ts';
import { accountSteps, type LedgerAccount } from './row-steps.ts';

export interface BaleEntries {
  readonly inflow: readonly InEntry[];
  readonly outflow: readonly OutEntry[];
}

/**
 * A station's ledger for one bale's worth, account by account, with the names and the numbers of the ledger's table.
 * @returns null in the field's stations and past a stop
 */
export function baleEntries(season: Season, station: StationId, words: Words): BaleEntries | null {
  const ledger = pictureLedger(season, station, words);
  if (!ledger) return null;
  const { accounts, stations } = words.messages;
  const index = stationIds.indexOf(station);
  const nameOf = (at: number) => stations[stationIds[at] ?? station].name;
  const labelled = <Account extends LedgerAccount>(
    held: ReadonlyMap<Account, Masses>,
    lot: string,
    names: Readonly<Partial<Record<string, string>>>,
    amount: (account: Account, share: number) => string,
  ): LabelledEntry<Account>[] =>
    [...held].map(([account, masses]) => ({
      account,
      masses,
      name: account === 'lot' ? lot : (names[account] ?? account),
      amount: (share) => amount(account, share),
    }));
  return {
    inflow: labelled(ledger.inflow, fill(accounts.lotIn, { name: nameOf(index - 1) }), accounts.sources, ledger.massIn),
    outflow: labelled(
      ledger.outflow,
      fill(accounts.lotOut, { name: nameOf(index + 1) }),
      accounts.destinations,
      ledger.massOut,
    ),
  };
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
