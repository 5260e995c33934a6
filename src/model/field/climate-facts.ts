import type { Fact } from '../fact.ts';
import type { ClimateId } from '../scenario.ts';
import { assumption, derived } from './mark.ts';

/** Twelve monthly figures, January first. */
export type Monthly = readonly number[];

/** What is published of a station: rain per wet day (mean, spread, skew; inches), chances of a wet day after wet and after dry, highs and lows, °F. */
export interface StationTable {
  readonly station: string;
  readonly latitudeDegrees: number;
  readonly meanRainInches: Monthly;
  readonly sdRainInches: Monthly;
  readonly skewRain: Monthly;
  readonly wetAfterWet: Monthly;
  readonly wetAfterDry: Monthly;
  readonly maxF: Monthly;
  readonly minF: Monthly;
  readonly sdMaxF: Monthly;
  readonly sdMinF: Monthly;
}
export const stationSource = {
  source: 'CLIGEN 2015 station parameter files, US government data, about 40 years each',
  mark: 'published',
} as const;

export const stationTables = {
  midSouth: {
    station: 'Stoneville, Mississippi',
    latitudeDegrees: 33.42,
    meanRainInches: [0.46, 0.47, 0.48, 0.58, 0.49, 0.48, 0.4, 0.36, 0.49, 0.53, 0.5, 0.49],
    sdRainInches: [0.65, 0.59, 0.62, 0.78, 0.63, 0.61, 0.55, 0.52, 0.83, 0.79, 0.74, 0.68],
    skewRain: [2.45, 3.04, 2.21, 2.62, 2.18, 2.14, 2.3, 2.41, 4.55, 2.89, 3.15, 2.86],
    wetAfterWet: [0.5, 0.48, 0.46, 0.46, 0.51, 0.42, 0.44, 0.38, 0.47, 0.48, 0.5, 0.49],
    wetAfterDry: [0.27, 0.25, 0.26, 0.19, 0.23, 0.19, 0.21, 0.17, 0.15, 0.16, 0.18, 0.23],
    maxF: [50.97, 55.77, 65.11, 74.58, 82.63, 89.2, 91.76, 91.9, 86.03, 76.22, 64.37, 54.03],
    minF: [33.05, 36.7, 44.39, 53.1, 62.56, 69.71, 72.43, 70.63, 63.09, 51.79, 42.95, 35.68],
    sdMaxF: [12.28, 12.32, 11.17, 9.2, 6.99, 5.39, 4.61, 5.24, 7.23, 9.16, 10.64, 11.55],
    sdMinF: [10.12, 9.41, 9.46, 8.43, 6.92, 4.78, 3.45, 4.31, 7.49, 9.21, 9.53, 9.96],
  },
  highPlains: {
    station: 'Crosbyton, Texas',
    latitudeDegrees: 33.65,
    meanRainInches: [0.21, 0.23, 0.25, 0.37, 0.38, 0.45, 0.4, 0.39, 0.47, 0.38, 0.26, 0.22],
    sdRainInches: [0.29, 0.29, 0.36, 0.57, 0.48, 0.54, 0.56, 0.58, 0.73, 0.67, 0.37, 0.29],
    skewRain: [2.86, 2.02, 2.74, 2.92, 1.89, 2.13, 2.66, 3.65, 3.34, 4.06, 2.55, 2.22],
    wetAfterWet: [0.36, 0.38, 0.38, 0.39, 0.42, 0.42, 0.36, 0.42, 0.49, 0.46, 0.43, 0.39],
    wetAfterDry: [0.08, 0.11, 0.12, 0.12, 0.17, 0.18, 0.15, 0.16, 0.13, 0.11, 0.09, 0.09],
    maxF: [53.05, 57.71, 66.58, 75.58, 82.64, 89.63, 92.59, 91.54, 84.33, 75.14, 63.35, 53.94],
    minF: [25.42, 28.61, 35.88, 44.63, 54.77, 63.66, 66.81, 65.84, 58.34, 47.48, 35.69, 27.16],
    sdMaxF: [13.84, 14.74, 13.14, 11.57, 10.39, 7.93, 6.22, 6.41, 9.47, 10.5, 12.58, 13.42],
    sdMinF: [7.91, 8.86, 8.77, 7.98, 7.03, 4.85, 3.39, 3.47, 6.69, 8.13, 8.85, 8.44],
  },
  centralValley: {
    station: 'Fresno, California',
    latitudeDegrees: 36.73,
    meanRainInches: [0.28, 0.24, 0.27, 0.21, 0.18, 0.29, 0.05, 0.04, 0.19, 0.26, 0.19, 0.23],
    sdRainInches: [0.3, 0.29, 0.3, 0.25, 0.22, 0.43, 0.07, 0.05, 0.23, 0.35, 0.22, 0.28],
    skewRain: [1.67, 2.45, 2.5, 1.99, 2.37, 2.31, 2.18, 2.79, 1.68, 2.03, 1.79, 2.05],
    wetAfterWet: [0.54, 0.55, 0.54, 0.44, 0.4, 0.28, 0.11, 0, 0.26, 0.37, 0.43, 0.48],
    wetAfterDry: [0.15, 0.19, 0.15, 0.09, 0.04, 0.02, 0.01, 0.01, 0.02, 0.05, 0.12, 0.15],
    maxF: [55.15, 61.86, 67.45, 74.66, 84.17, 92.27, 98.41, 96.77, 91.13, 79.74, 65.22, 55.48],
    minF: [38.73, 41.55, 45.44, 48.92, 55.55, 61.83, 67.18, 65.62, 61.43, 52.86, 43.33, 37.82],
    sdMaxF: [6.97, 6.53, 7.73, 9.33, 9.27, 8.14, 5.86, 6.2, 7.81, 8.56, 7.78, 6.7],
    sdMinF: [6.34, 5.84, 5.42, 5.54, 5.93, 5.59, 5.47, 4.99, 5.1, 5.61, 5.98, 6.54],
  },
  lowDesert: {
    station: 'Phoenix, Arizona',
    latitudeDegrees: 33.43,
    meanRainInches: [0.22, 0.2, 0.25, 0.15, 0.14, 0.05, 0.23, 0.2, 0.22, 0.22, 0.26, 0.23],
    sdRainInches: [0.26, 0.25, 0.31, 0.16, 0.19, 0.06, 0.33, 0.29, 0.3, 0.32, 0.33, 0.26],
    skewRain: [1.96, 2.35, 2.52, 1.89, 2.71, 1.42, 2.48, 2.25, 2.37, 3.66, 2.13, 1.75],
    wetAfterWet: [0.42, 0.48, 0.42, 0.24, 0.25, 0.05, 0.3, 0.33, 0.23, 0.32, 0.43, 0.42],
    wetAfterDry: [0.09, 0.09, 0.08, 0.05, 0.03, 0.02, 0.11, 0.12, 0.08, 0.06, 0.05, 0.08],
    maxF: [67.13, 70.85, 76.92, 85.28, 94.53, 104.4, 106.17, 104.62, 99.89, 88.81, 75.86, 66.54],
    minF: [44.95, 47.89, 52.79, 59.35, 68.32, 77.22, 83.15, 82.23, 76.55, 64.48, 52.09, 44.52],
    sdMaxF: [6.9, 7.7, 8.6, 8.96, 7.7, 6.07, 4.99, 5.06, 6, 8.29, 8.26, 6.9],
    sdMinF: [5.9, 5.71, 5.82, 6.74, 6.23, 5.67, 4.78, 4.83, 5.59, 6.75, 6.54, 5.57],
  },
  coastalPlain: {
    station: 'Headland, Alabama',
    latitudeDegrees: 31.35,
    meanRainInches: [0.53, 0.56, 0.58, 0.57, 0.46, 0.44, 0.47, 0.4, 0.5, 0.53, 0.5, 0.43],
    sdRainInches: [0.69, 0.8, 0.8, 0.81, 0.61, 0.55, 0.71, 0.54, 0.71, 0.88, 0.74, 0.63],
    skewRain: [2.4, 2.85, 3.45, 3.23, 2.75, 2.8, 5.15, 3.39, 3.3, 3.7, 3.49, 3.54],
    wetAfterWet: [0.48, 0.49, 0.49, 0.42, 0.44, 0.56, 0.56, 0.53, 0.47, 0.47, 0.47, 0.45],
    wetAfterDry: [0.25, 0.23, 0.2, 0.17, 0.17, 0.25, 0.32, 0.27, 0.19, 0.13, 0.19, 0.23],
    maxF: [59.09, 62.99, 71.09, 78.08, 85.51, 90.54, 91.98, 91.19, 87.23, 78.69, 69.67, 61.54],
    minF: [36.43, 39.39, 46.35, 52.35, 61.11, 67.74, 69.81, 68.84, 64.31, 52.95, 45.16, 38.49],
    sdMaxF: [10.79, 10.14, 9.57, 7.57, 5.71, 5.12, 4.5, 4.69, 5.77, 7.12, 8.74, 10.16],
    sdMinF: [11.29, 9.91, 9.19, 8.03, 6.54, 4.4, 3.33, 3.8, 6.03, 9.22, 9.87, 10.74],
  },
} as const satisfies Record<ClimateId, StationTable>;

/** The levers that bring a climate's mean crop to its published yield. */
export interface LeverFacts {
  /**
   * Lint a healthy, watered field can set, lb/acre: every boll at its full size, before what stays thin, light or closed is
   * taken off, so a fifth to a third above what is picked.
   */
  readonly capacityLintLbPerAcre: Fact;
  /** Whole farms against plots: pests, rot, poor corners. */
  readonly wholeFarmFactor: Fact;
  /** Yield lost per share of the water need not met. */
  readonly yieldResponse: Fact;
  /** Share of rain that reaches the roots. */
  readonly effectiveRainFraction: Fact;
  /** Soil water on 1 January over what the root zone holds. */
  readonly startingWaterFraction: Fact;
  /** Added to the station's lows: farm land against an airport. */
  readonly farmNightF: Fact;
}

const nass = (mean: string) => `tuned so that the mean crop is near the published ${mean} (USDA-NASS 2002-2011)`;
const wholeFarm = 'a farm against plots: insects, rot, skips and wet corners';
const ky = 'FAO 33/66: 0.85 for the whole season, from memory';
const noShift = 'station on or beside farm land';
const lever = {
  farm: (value: number) => assumption(value, 'fraction', [0.8, 0.95], wholeFarm),
  humidRain: derived(
    0.8,
    'fraction',
    [0.4, 0.9],
    'runs and drains away in the humid belt; Beltwide 2003 I018 gives the dry end',
  ),
  dryRain: derived(
    0.5,
    'fraction',
    [0.4, 0.6],
    'Beltwide 2003 I018: over half the rain can be lost from bare soil on the High Plains',
  ),
  sameNights: assumption(0, '°F', [-2, 2], noShift),
};

export const climateLevers = {
  midSouth: {
    capacityLintLbPerAcre: assumption(1250, 'lb/acre', [1000, 1500], nass('896 lb/acre, Mississippi')),
    wholeFarmFactor: lever.farm(0.88),
    yieldResponse: assumption(0.85, 'ratio', [0.85, 1.2], ky),
    effectiveRainFraction: lever.humidRain,
    startingWaterFraction: assumption(1, 'fraction', [0.8, 1], 'a wet winter'),
    farmNightF: lever.sameNights,
  },
  coastalPlain: {
    capacityLintLbPerAcre: assumption(1320, 'lb/acre', [1000, 1500], nass('783 and 673 lb/acre, Georgia and Alabama')),
    wholeFarmFactor: lever.farm(0.88),
    yieldResponse: assumption(0.85, 'ratio', [0.85, 1.2], ky),
    effectiveRainFraction: lever.humidRain,
    startingWaterFraction: assumption(1, 'fraction', [0.8, 1], 'a wet winter'),
    farmNightF: lever.sameNights,
  },
  highPlains: {
    capacityLintLbPerAcre: assumption(
      1350,
      'lb/acre',
      [1000, 1500],
      'tuned so that the mean dryland crop is near the published 357 lb/acre, Lubbock County 1972-2018 (NASS yields)',
    ),
    wholeFarmFactor: lever.farm(0.85),
    yieldResponse: assumption(1.1, 'ratio', [0.85, 1.2], ky),
    effectiveRainFraction: lever.dryRain,
    startingWaterFraction: assumption(0.75, 'fraction', [0.2, 0.9], 'the crop before took the water; winters are dry'),
    farmNightF: lever.sameNights,
  },
  lowDesert: {
    capacityLintLbPerAcre: assumption(2250, 'lb/acre', [1500, 2800], nass('1416 lb/acre, Arizona')),
    wholeFarmFactor: lever.farm(0.9),
    yieldResponse: assumption(0.85, 'ratio', [0.85, 1.2], ky),
    effectiveRainFraction: lever.humidRain,
    startingWaterFraction: assumption(1, 'fraction', [0.8, 1], 'watered before planting'),
    farmNightF: assumption(
      -5,
      '°F',
      [-8, 0],
      'the station is the Phoenix airport in a city; irrigated farm land has colder nights',
    ),
  },
  centralValley: {
    capacityLintLbPerAcre: assumption(
      2700,
      'lb/acre',
      [1500, 2800],
      'tuned so that the mean Pima crop is near the published 1516 lb/acre, California extra-long staple, five years to 2016 (USDA-NASS)',
    ),
    wholeFarmFactor: lever.farm(0.92),
    yieldResponse: assumption(0.85, 'ratio', [0.85, 1.2], ky),
    effectiveRainFraction: lever.humidRain,
    startingWaterFraction: assumption(1, 'fraction', [0.8, 1], 'watered before planting'),
    farmNightF: lever.sameNights,
  },
} as const satisfies Record<ClimateId, LeverFacts>;

/** The heat unit a region counts its bolls by. */
export type BollClock = 'dd60' | 'hu8655';
/** Arizona counts 55 to 86 °F (Univ. Arizona AZMET); the rest of the belt counts DD60. */
export const bollClocks = {
  midSouth: 'dd60',
  coastalPlain: 'dd60',
  highPlains: 'dd60',
  lowDesert: 'hu8655',
  centralValley: 'dd60',
} as const satisfies Record<ClimateId, BollClock>;
