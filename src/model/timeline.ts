import type { Season } from './season.ts';
import type { StationId } from './station.ts';
import { timelineFacts } from './timeline-facts.ts';

const workSteps = timelineFacts.workSteps.value;

/** A stretch of the season: days of the year in the field and in storage, or steps of work. */
export interface StationSpan {
  /** First and last day of the year; equal where the station takes no days. Past 365 the next year has begun. */
  readonly fromDay: number;
  readonly toDay: number;
  /** Steps the station takes: its days, or steps of work. */
  readonly steps: number;
  /** How many of them are work on the first day, before the days begin to count: sowing. */
  readonly firstDaySteps: number;
}

/**
 * When a station happens. The field's stations share the growing season between them: Planting until the first square,
 * Bloom until cut-out, Boll until the harvest. The planting day itself is watched as work.
 */
export function stationSpan(season: Season, station: StationId): StationSpan {
  const { events, plantedDay, days, harvestDays } = season.field;
  const lastDay = days.at(-1)?.dayOfYear ?? plantedDay;
  const square = events.firstSquare ?? lastDay;
  const cutOut = Math.max(square, events.cutOut ?? lastDay);
  const firstPicking = Math.max(cutOut, harvestDays[0] ?? lastDay);
  const between = (fromDay: number, toDay: number): StationSpan => ({
    fromDay,
    toDay,
    steps: Math.max(1, toDay - fromDay),
    firstDaySteps: 0,
  });
  const stored = lastDay + season.scenario.decisions.module.storageDays;
  switch (station) {
    case 'planting': {
      const growing = between(plantedDay, square);
      return { ...growing, steps: workSteps + growing.steps, firstDaySteps: workSteps };
    }
    case 'bloom':
      return between(square, cutOut);
    case 'boll':
      return between(cutOut, firstPicking);
    case 'harvest':
      return { ...between(firstPicking, lastDay), steps: Math.max(workSteps, lastDay - firstPicking) };
    case 'module':
      return between(lastDay, stored);
    default:
      return { fromDay: stored, toDay: stored, steps: workSteps, firstDaySteps: 0 };
  }
}

/** The day of the year at a step of a station. */
export function dayAt({ fromDay, toDay, steps, firstDaySteps }: StationSpan, step: number): number {
  const share = Math.max(0, Math.min(step, steps) - firstDaySteps) / (steps - firstDaySteps);
  return Math.round(fromDay + (toDay - fromDay) * share);
}

/** The step of a station at which a day begins: the way back from a hand on the ribbon. */
export function stepOn({ fromDay, toDay, steps, firstDaySteps }: StationSpan, dayOfYear: number): number {
  if (dayOfYear <= fromDay) return 0;
  const share = Math.min(1, (dayOfYear - fromDay) / Math.max(1, toDay - fromDay));
  return firstDaySteps + Math.round((steps - firstDaySteps) * share);
}
