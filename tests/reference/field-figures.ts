import { expect } from 'vitest';
import { readFibre } from '../../src/model/fibre.ts';
import type { FieldSeason } from '../../src/model/field/field-season.ts';
import { long } from '../laws/runs.ts';

/** Seasons behind a mean: the full 200 in the long run. */
export const seeds = long ? 200 : 40;

/** The crop of a season that made one. */
export function cropOf(season: FieldSeason) {
  if (!season.crop) throw new Error(`no crop: ${season.stopped?.reason}`);
  return season.crop;
}
/** Lint left on the plants at picking, lb/acre; nothing where the crop failed. */
export const standing = (season: FieldSeason): number =>
  season.crop ? season.crop.lintLbPerAcre * (1 - season.crop.weatheredFraction) : 0;
/** Statistics count ginned lint: a spindle leaves 5 % in the field, a stripper 4 %, and the gin loses 5 % more. */
export const ginned = (season: FieldSeason, gathered = 0.95): number => standing(season) * gathered * 0.95;
/** Readings of the fibre in the bolls. */
export const fibreOf = (season: FieldSeason) => readFibre(cropOf(season).grown.fibre);

export function within(value: number, expected: number, tolerance: number): void {
  expect(Math.abs(value - expected), `${value} against ${expected}`).toBeLessThanOrEqual(tolerance);
}
export function inRange(value: number, low: number, high: number): void {
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
}
