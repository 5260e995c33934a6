import type { ClimateId } from '../scenario.ts';
import { climateLevers, type LeverFacts, type StationTable, stationTables } from './climate-facts.ts';

/** One of five climates: a public station's weather as published, and the levers of its farms. */
export interface Climate extends StationTable {
  readonly id: ClimateId;
  readonly levers: LeverFacts;
}

/** The climate of an id. */
export const climateOf = (id: ClimateId): Climate => ({ id, ...stationTables[id], levers: climateLevers[id] });
