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
}

/**
 * When a station happens. The field's stations share the growing season between them: Planting until the first square,
 * Bloom until cut-out, Boll until the harvest.
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
  });
  const stored = lastDay + season.scenario.decisions.module.storageDays;
  switch (station) {
    case 'planting':
      return between(plantedDay, square);
    case 'bloom':
      return between(square, cutOut);
    case 'boll':
      return between(cutOut, firstPicking);
    case 'harvest':
      return { ...between(firstPicking, lastDay), steps: Math.max(workSteps, lastDay - firstPicking) };
    case 'module':
      return between(lastDay, stored);
    default:
      return { fromDay: stored, toDay: stored, steps: workSteps };
  }
}

/** The day of the year at a step of a station. */
export function dayAt(span: StationSpan, step: number): number {
  return Math.round(span.fromDay + ((span.toDay - span.fromDay) * Math.min(step, span.steps)) / span.steps);
}
