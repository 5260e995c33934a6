import { type Decision, type Decisions, decisionTable } from '../model/decisions.ts';
import type { Scenario } from '../model/scenario.ts';
import { type StationId, stationIds } from '../model/station.ts';

export type DecidedValue = number | string | boolean;

/** One decision, by its station and its key in the decision table. */
export interface DecisionPlace {
  readonly station: StationId;
  readonly key: string;
  readonly decision: Decision;
}

/** A decision that two runs take differently. */
export interface ChangedDecision extends DecisionPlace {
  readonly from: DecidedValue;
  readonly to: DecidedValue;
}

/** Every decision, in the order in which a season meets them. */
export const decisionPlaces: readonly DecisionPlace[] = stationIds.flatMap((station) =>
  (Object.entries(decisionTable[station]) as [string, Decision][]).map(([key, decision]) => ({
    station,
    key,
    decision,
  })),
);

export const decidedValue = (decisions: Decisions, { station, key }: Pick<DecisionPlace, 'station' | 'key'>) =>
  (decisions[station] as Readonly<Record<string, DecidedValue>>)[key]!;

/** A scenario with one decision taken otherwise. */
export function withDecision(
  scenario: Scenario,
  { station, key }: Pick<DecisionPlace, 'station' | 'key'>,
  value: DecidedValue,
): Scenario {
  const decisions = { ...scenario.decisions, [station]: { ...scenario.decisions[station], [key]: value } };
  return { ...scenario, decisions };
}

/** The decisions that differ, in the order of the chain. */
export const changedDecisions = (from: Decisions, to: Decisions): ChangedDecision[] =>
  decisionPlaces.flatMap((place) => {
    const before = decidedValue(from, place);
    const after = decidedValue(to, place);
    return before === after ? [] : [{ ...place, from: before, to: after }];
  });
