import type { Scenario } from '../model/scenario.ts';

/** What makes a farm the farm it is, in the order in which a comparison puts it in: its time, its climate, its field, its soil. */
export const landKeys = ['era', 'climate', 'acres', 'soilWaterMm'] as const satisfies readonly (keyof Scenario)[];
export type LandKey = (typeof landKeys)[number];
export type Land = Readonly<Pick<Scenario, LandKey>>;

/** Something of the land that two farms do not share. */
export interface ChangedLand {
  readonly land: LandKey;
  readonly from: Land[LandKey];
  readonly to: Land[LandKey];
}

export const changedLand = (from: Land, to: Land): ChangedLand[] =>
  landKeys.filter((land) => from[land] !== to[land]).map((land) => ({ land, from: from[land], to: to[land] }));

/** A farm with one thing of its land as on another. */
export const withLand = (scenario: Scenario, { land, to }: ChangedLand): Scenario => ({ ...scenario, [land]: to });

/** Whether two farms have the same land under the same climate, so that decisions and weather are all that differ. */
export const sameFarm = (a: Land, b: Land): boolean => changedLand(a, b).length === 0;
