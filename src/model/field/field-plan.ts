import type { DecisionsOf } from '../decisions.ts';
import type { ClimateId, Era } from '../scenario.ts';

/** Everything decided or given that the field needs. */
export interface FieldPlan {
  readonly climate: ClimateId;
  readonly era: Era;
  readonly acres: number;
  /** Water the root zone holds between full and wilting, mm. */
  readonly soilWaterMm: number;
  readonly variety: DecisionsOf<'planting'>['variety'];
  readonly plantingDayOfYear: number;
  readonly rowInches: number;
  readonly seedsPerFoot: number;
  /** Most water given in the season; it is given an inch at a time when the crop begins to thirst. */
  readonly irrigationInches: number;
  readonly harvestAid: boolean;
  /** Open bolls, percent of all bolls, at which the aid is applied or the wait for picking begins. */
  readonly openPercent: number;
  readonly method: DecisionsOf<'harvest'>['method'];
  /** Days from that day to the picking, then the first dry day. */
  readonly daysToHarvest: number;
  /** Times a field is gone over; machines go once. */
  readonly pickings: number;
}
