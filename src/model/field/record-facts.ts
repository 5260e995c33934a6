import type { Fact } from '../fact.ts';
import { assumption } from './mark.ts';

const noStation = 'wider than any reading of a weather station';

/** Limits of what a daily record is believed in, in each unit it may be written in. */
export const recordLimits = {
  us: {
    temperature: {
      low: assumption(-76, '°F', [-90, -60], noStation),
      high: assumption(140, '°F', [135, 150], noStation),
    },
    rain: {
      low: assumption(0, 'inches', [0, 0], 'rain is never negative'),
      high: assumption(80, 'inches', [72, 100], noStation),
    },
  },
  metric: {
    temperature: {
      low: assumption(-60, '°C', [-68, -51], noStation),
      high: assumption(60, '°C', [57, 66], noStation),
    },
    rain: {
      low: assumption(0, 'mm', [0, 0], 'rain is never negative'),
      high: assumption(2000, 'mm', [1830, 2540], noStation),
    },
  },
} as const satisfies Record<string, Record<string, { readonly low: Fact; readonly high: Fact }>>;

/** Latitudes a record may be from. */
export const latitudeLimits = {
  low: assumption(-60, '°', [-66, -45], 'no cotton grows nearer to a pole'),
  high: assumption(60, '°', [45, 66], 'no cotton grows nearer to a pole'),
} as const satisfies Record<string, Fact>;

/** How a record is read. */
export const recordFacts = {
  medianHighOfFahrenheit: assumption(
    45,
    '°',
    [42, 50],
    'half the highs of a year above this can only be °F: the hottest places have a median high near 36 °C, and cotton country one above 60 °F',
  ),
  mostFilledDays: assumption(5, 'day', [3, 10], 'missing days of a year that are filled from the days beside'),
  mostProblems: assumption(5, 'problem', [3, 10], 'the first few bad lines tell what is wrong'),
} as const satisfies Record<string, Fact>;
