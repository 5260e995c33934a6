import type { Season } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import { stationSpan } from '../model/timeline.ts';

/** What goes on at a farm on a day; in winter four things by turns, each for a quarter of it. */
export type DayWork = 'planting' | 'bloom' | 'boll' | 'harvest' | 'module' | 'gin' | 'mill' | 'sewing' | 'seed';

export interface Today {
  readonly work: DayWork;
  /** The scene that shows it, and how far its work is. */
  readonly station: StationId;
  readonly progress: number;
}

const daysOfYear = 365;
const inField = ['planting', 'bloom', 'boll'] as const;
const winter: readonly (readonly [DayWork, StationId])[] = [
  ['gin', 'ginning'],
  ['mill', 'spinning'],
  ['sewing', 'sewing'],
  ['seed', 'planting'],
];
/** A scene of work without days of its own is shown when most of it is done. */
const mostlyDone = 0.7;

/** What this season's farm is at on a day of the visitor's year, 1 to 365: the work of its own dates, and in winter what the off season brings. */
export function todayOn(season: Season, dayOfYear: number): Today {
  const from = stationSpan(season, 'planting').fromDay;
  // Days before the sowing belong to the winter after last year's harvest.
  const day = dayOfYear < from ? dayOfYear + daysOfYear : dayOfYear;
  for (const station of inField) {
    const { fromDay, toDay } = stationSpan(season, station);
    if (day >= fromDay && day < toDay)
      return { work: station, station, progress: (day - fromDay) / Math.max(1, toDay - fromDay) };
  }
  const harvest = stationSpan(season, 'harvest');
  // A machine picks a field in a day; a farm has several, and a wet day or two between.
  const pickedBy = Math.max(harvest.toDay, harvest.fromDay + 7);
  if (day <= pickedBy) return { work: 'harvest', station: 'harvest', progress: mostlyDone };
  const stored = Math.max(pickedBy, stationSpan(season, 'module').toDay);
  if (day <= stored) return { work: 'module', station: 'module', progress: (day - pickedBy) / (stored - pickedBy) };
  const quarter = Math.min(
    winter.length - 1,
    Math.floor((winter.length * (day - stored)) / (from + daysOfYear - stored)),
  );
  const [work, station] = winter[quarter]!;
  return { work, station, progress: mostlyDone };
}

/** The day of the year of a date by the clock on the wall, 1 to 365; the last of a leap year counts as the one before. */
export function dayOfYearOf(date: Date): number {
  const start = Date.UTC(date.getFullYear(), 0, 1);
  const day = Date.UTC(date.getFullYear(), date.getMonth(), date.getDate());
  return Math.min(daysOfYear, 1 + Math.round((day - start) / 86_400_000));
}
