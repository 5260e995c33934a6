import type { ClimateId } from '../scenario.ts';
import {
  type BollClock,
  bollClocks,
  climateLevers,
  type LeverFacts,
  type StationTable,
  stationTables,
} from './climate-facts.ts';

/** One of five climates: a public station's weather as published, and the levers of its farms. */
export interface Climate extends StationTable {
  readonly id: ClimateId;
  readonly levers: LeverFacts;
  /** Heat unit by which bolls ripen here. */
  readonly bollClock: BollClock;
}

/** The climate of an id. */
export const climateOf = (id: ClimateId): Climate => ({
  id,
  ...stationTables[id],
  levers: climateLevers[id],
  bollClock: bollClocks[id],
});
