import { celsiusFromFahrenheit, DAYS_PER_YEAR, MINUTES_PER_DAY, MM_PER_INCH, RADIANS_PER_DEGREE } from '../units.ts';
import { waterFacts } from './water-facts.ts';

/**
 * Sunshine outside the air, MJ/m²/day (FAO-56 equation 21, from memory).
 * @param latitudeDegrees north positive
 * @param dayOfYear 1 to 365
 */
export function extraterrestrialRadiation(latitudeDegrees: number, dayOfYear: number): number {
  const latitude = latitudeDegrees * RADIANS_PER_DEGREE;
  const season = (2 * Math.PI * dayOfYear) / DAYS_PER_YEAR;
  // Orbit of the earth: distance and tilt.
  const distance = 1 + waterFacts.orbitEccentricity.value * Math.cos(season);
  const declination = waterFacts.earthTilt.value * Math.sin(season - waterFacts.equinoxPhase.value);
  const sunset = Math.acos(Math.min(1, Math.max(-1, -Math.tan(latitude) * Math.tan(declination))));
  const sun =
    sunset * Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
  return (MINUTES_PER_DAY / Math.PI) * waterFacts.solarConstant.value * distance * sun;
}

/** Reference evapotranspiration of a day by Hargreaves, mm. */
export function referenceEtMm(maxF: number, minF: number, radiation: number): number {
  const max = celsiusFromFahrenheit(maxF);
  const min = celsiusFromFahrenheit(minF);
  const { hargreavesFactor, hargreavesOffsetC, mmPerMegajoule } = waterFacts;
  const mean = Math.max(0, (max + min) / 2 + hargreavesOffsetC.value);
  return hargreavesFactor.value * mean * Math.sqrt(Math.max(0, max - min)) * mmPerMegajoule.value * radiation;
}

/** Growing degree-days of a day for the crop coefficient, °C: highs cut at 30, lows raised to 12.5, above 12.5. */
export function cropGddC(maxF: number, minF: number): number {
  const { gddUpperC, gddLowerC } = waterFacts;
  const max = Math.min(gddUpperC.value, celsiusFromFahrenheit(maxF));
  const min = Math.max(gddLowerC.value, celsiusFromFahrenheit(minF));
  return Math.max(0, (max + min) / 2 - gddLowerC.value);
}

/**
 * Crop coefficient from the degree-days since planting (Sammis et al. 1985), held above bare soil, and at a drying canopy
 * where the polynomial ends.
 */
export function cropCoefficient(gddC: number): number {
  const { kc0, kc1, kc2, kc3, kcPeakGdd, kcEndGdd, kcAfterEnd, kcLeast } = waterFacts;
  if (gddC > kcEndGdd.value) return kcAfterEnd.value;
  const polynomial = kc0.value + gddC * (kc1.value + gddC * (kc2.value + gddC * kc3.value));
  return Math.max(gddC > kcPeakGdd.value ? kcAfterEnd.value : kcLeast.value, polynomial);
}

/** Share of its thirst that the crop can drink: 1 in moist soil, falling to 0 at wilting. */
export const waterSupply = (waterMm: number, capacityMm: number): number =>
  Math.min(1, waterMm / capacityMm / (1 - waterFacts.depletionFraction.value));

/** The water of the root zone, and what the season asked and got. Changed day by day. */
export interface SoilWater {
  readonly capacityMm: number;
  readonly effectiveRainFraction: number;
  waterMm: number;
  irrigationLeftMm: number;
  gddC: number;
  neededMm: number;
  usedMm: number;
  irrigatedMm: number;
}

/** A day's water: supply 0 to 1, and what was irrigated, mm. */
export interface WaterDay {
  readonly supply: number;
  readonly irrigatedMm: number;
}

/**
 * Moves the soil water by one day.
 * @param soil changed in place
 * @param growing false before planting: only bare soil dries
 * @param mayIrrigate whether water is still being given
 */
export function stepSoilWater(
  soil: SoilWater,
  day: { readonly maxF: number; readonly minF: number; readonly rainInches: number; readonly radiation: number },
  growing: boolean,
  mayIrrigate: boolean,
): WaterDay {
  if (growing) soil.gddC += cropGddC(day.maxF, day.minF);
  const supply = waterSupply(soil.waterMm, soil.capacityMm);
  const neededMm = cropCoefficient(soil.gddC) * referenceEtMm(day.maxF, day.minF, day.radiation);
  const usedMm = Math.min(soil.waterMm, supply * neededMm);
  const irrigatedMm =
    growing && mayIrrigate && supply < 1 ? Math.min(waterFacts.irrigationMm.value, soil.irrigationLeftMm) : 0;
  const rainMm = soil.effectiveRainFraction * day.rainInches * MM_PER_INCH;
  soil.waterMm = Math.min(soil.capacityMm, soil.waterMm + rainMm + irrigatedMm - usedMm);
  soil.irrigationLeftMm -= irrigatedMm;
  if (growing) {
    soil.neededMm += neededMm;
    soil.usedMm += usedMm;
    soil.irrigatedMm += irrigatedMm;
  }
  return { supply, irrigatedMm };
}
