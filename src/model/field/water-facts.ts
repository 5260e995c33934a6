import type { Fact } from '../fact.ts';
import { assumption, derived, published } from './mark.ts';

const fao56 = 'FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998), as public programs carry it';
const sammis = 'Sammis et al. 1985, Trans. ASAE 28:773, New Mexico State Univ. cotton irrigation page';

/** Water of the field. */
export const waterFacts = {
  solarConstant: published(
    0.082,
    'MJ/m²/min',
    [0.082, 0.08202],
    `${fao56}: equation 21; USDA-ARS wind erosion code has 0.08202`,
  ),
  orbitEccentricity: published(0.033, 'ratio', null, `${fao56}: equation 23, the earth nearest to the sun in January`),
  earthTilt: published(0.409, 'rad', null, `${fao56}: equation 24, 23.4 degrees`),
  equinoxPhase: published(1.39, 'rad', null, `${fao56}: equation 24, the sun crosses the equator near day 81`),
  hargreavesFactor: published(
    0.0023,
    '1/°C^1.5',
    null,
    'Hargreaves; kalamatapremiumoliveoil.com prints the form and constants',
  ),
  hargreavesOffsetC: published(17.8, '°C', null, 'Hargreaves; same print'),
  mmPerMegajoule: published(0.408, 'mm m²/MJ', null, `${fao56}: 1 over the 2.45 MJ/kg that evaporate water`),
  gddUpperC: published(30, '°C', null, sammis),
  gddLowerC: published(12.5, '°C', null, sammis),
  kc0: published(4.24e-4, 'ratio', null, sammis),
  kc1: published(1.2e-3, '1/°C-day', null, sammis),
  kc2: published(4.62e-7, '1/°C-day²', null, sammis),
  kc3: published(-5.77e-10, '1/°C-day³', null, sammis),
  kcPeakGdd: derived(1100, '°C-day', null, 'where the polynomial is highest, 1.11'),
  kcEndGdd: derived(1900, '°C-day', null, 'the polynomial turns negative near here'),
  kcAfterEnd: published(
    0.5,
    'ratio',
    [0.5, 0.7],
    `${fao56}: table 12, cotton at the end of the season; the lower end, a drying canopy`,
  ),
  kcLeast: assumption(0.2, 'ratio', [0.15, 0.35], 'bare, mostly dry soil'),
  depletionFraction: published(0.65, 'fraction', null, `${fao56}: table 22, cotton`),
  irrigationMm: assumption(25, 'mm', [20, 40], 'one watering, about an inch'),
} as const satisfies Record<string, Fact>;

/** The weather generator. */
export const generatorFacts = {
  skewDivisor: published(6, 'ratio', null, 'SWAT+ theory 1:3.1.2: the skewed normal'),
  skewPower: published(3, 'power', null, 'SWAT+ theory 1:3.1.2: the skewed normal'),
  leastRainInches: published(0.01, 'inch', null, 'SWAT+ theory 1:3.1.2: floor on a wet day'),
  wetDayShift: published(0.5, 'fraction', null, 'SWAT+ theory 1:3.4: wet and dry days apart by half the range'),
  spreadKept: derived(
    0.85,
    'ratio',
    [0.8, 0.95],
    'the spread of highs that leaves the total unchanged beside the wet-day shift',
  ),
  leastRangeF: assumption(1, '°F', [0.5, 2], 'a low is held this far below its high'),
} as const satisfies Record<string, Fact>;

/**
 * How today's departures carry over from yesterday's, and the fresh noise, for highs and lows.
 * Richardson & Wright 1984 (USDA ARS-8), without the third row, which is for sunshine.
 */
export const residualMatrices = {
  carry: [
    [0.567, 0.086],
    [0.253, 0.504],
  ],
  noise: [
    [0.781, 0],
    [0.328, 0.637],
  ],
  unit: 'ratio',
  source: 'Richardson & Wright 1984 (USDA ARS-8), as quoted in public code',
  mark: 'published',
} as const;
