import type { Audience, Focus, SegmentMinutes } from './stop.ts';

/** What a teacher says first. */
export interface PlanWish {
  readonly minutes: SegmentMinutes;
  readonly audience: Audience;
  readonly focus: Focus;
}

/** A stop in a plan, and the minutes it has there. */
export interface PlannedStop {
  readonly id: string;
  readonly minutes: number;
}

/** A segment: its stops in order never take more than its minutes, and each stop stands in it once. */
export interface Plan extends PlanWish {
  readonly stops: readonly PlannedStop[];
  /** The link's query of the season it shows: farm, season number, decisions. */
  readonly season: string;
}

/** Minutes that stops take together. */
export const plannedMinutes = (stops: readonly PlannedStop[]): number =>
  stops.reduce((sum, { minutes }) => sum + minutes, 0);

/** Minutes of a plan that no stop has. */
export const freeMinutes = ({ minutes, stops }: Plan): number => minutes - plannedMinutes(stops);
