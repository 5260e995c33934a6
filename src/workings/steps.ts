import type { Fact } from '../model/fact.ts';
import type { DestinationAccount, MassEntry, MassLedger } from '../model/ledger.ts';
import { parts, totalDryKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import type { UnitKey } from './unit-key.ts';
import type { Between, FormulaWorking, Input, Name, Origin, Printed, ProcedureWorking, Step } from './working.ts';

/** What explains the figures of one station: a working for each key, or null where the season shows no such number. */
export type StationWorkings = Readonly<Record<string, (season: Season) => FormulaWorking | ProcedureWorking | null>>;

type Exact = Extract<Printed, { as: 'exact' }>;

export const exact = (value: number, unit: UnitKey = 'none'): Exact => ({ as: 'exact', value, unit });
export const mass = (kg: number, decimals?: number): Printed =>
  decimals === undefined ? { as: 'mass', value: kg } : { as: 'mass', value: kg, decimals };
export const percent = (value: number, decimals = 1): Printed => ({ as: 'percent', value, decimals });
export const count = (value: number): Printed => ({ as: 'count', value });
export const day = (dayOfYear: number): Printed => ({ as: 'day', value: dayOfYear });

export const above: Origin = { at: 'above' };
export const inField: Origin = { at: 'field' };
export const decided = (station: StationId): Origin => ({ at: 'decision', station });
export const inLedger = (station: StationId): Origin => ({ at: 'ledger', station });
export const counted = (station: StationId): Origin => ({ at: 'counts', station });
export const atStation = (station: StationId): Origin => ({ at: 'station', station });
export const read = (fact: Pick<Fact, 'source' | 'mark'>): Origin => ({
  fact: { source: fact.source, mark: fact.mark },
});

/** A step under a word of its own. */
export const step = (name: string | Name, value: Printed, from: Origin): Step => ({
  name: typeof name === 'string' ? { word: name } : name,
  value,
  from,
});

/** An input of a formula. */
export const input = (symbol: string, name: string | Name, value: Exact, from: Origin): Input => ({
  symbol,
  name: typeof name === 'string' ? { word: name } : name,
  value,
  from,
});

/** An input that is a constant of the model. */
export const constant = (symbol: string, name: string, fact: Fact, unit: UnitKey): Input =>
  input(symbol, name, exact(fact.value, unit), read(fact));

/** Steps that end in the last one's value. */
export const procedure = (steps: readonly Step[], result: Printed): ProcedureWorking => ({
  kind: 'procedure',
  steps,
  result,
});

export const formula = (
  id: FormulaWorking['formula'],
  inputs: readonly Input[],
  value: Exact,
  result: Printed,
  first: readonly Between[] = [],
): FormulaWorking => ({ kind: 'formula', formula: id, inputs, exact: value, result, first });

/** A number that is worked out before the last formula. */
export const between = (id: FormulaWorking['formula'], symbol: string, name: string, value: Exact): Between => ({
  ...input(symbol, name, value, above),
  formula: id,
});

/** Dry matter and water of a ledger's line, kg. */
const entryKg = ({ dryKg, waterKg }: MassEntry): number => totalDryKg(dryKg) + waterKg;

/** What came in and where the rest went, down to one account. */
export function ledgerSteps(ledger: MassLedger): Step[] {
  const side = (name: 'in' | 'out') =>
    ledger[name]
      .filter((entry) => entryKg(entry) > 0)
      .map((entry) => step({ account: entry.account, side: name }, mass(entryKg(entry)), inLedger(ledger.station)));
  return [...side('in'), ...side('out')];
}

/**
 * Everything a ledger sent to an account, of all that came in: part by part, and the water with it.
 * @param rates the constants that say what the account takes
 */
export function accountWorking(
  ledger: MassLedger,
  account: DestinationAccount,
  decimals: number,
  rates: readonly Step[] = [],
): ProcedureWorking {
  const entries = ledger.out.filter((entry) => entry.account === account);
  const cameInKg = ledger.in.reduce((sum, entry) => sum + entryKg(entry), 0);
  const ofParts = parts.flatMap((part) => {
    const kg = entries.reduce((sum, entry) => sum + entry.dryKg[part], 0);
    return kg > 0 ? [step({ part }, mass(kg), inLedger(ledger.station))] : [];
  });
  const waterKg = entries.reduce((sum, entry) => sum + entry.waterKg, 0);
  const steps = [step('cameIn', mass(cameInKg), inLedger(ledger.station)), ...rates, ...ofParts];
  if (waterKg > 0) steps.push(step({ part: 'water' }, mass(waterKg), inLedger(ledger.station)));
  const allKg = entries.reduce((sum, entry) => sum + entryKg(entry), 0);
  return procedure(steps, mass(allKg, decimals));
}
