import { meanLengthMm } from '../model/length/statistics.ts';
import type { Season } from '../model/season.ts';
import { asTex, INCHES_PER_YARD, KILO, MM_PER_INCH, neFromTex, TERA } from '../model/units.ts';

/** One boll of a season followed to the patch that its lint makes. */
export interface OneBoll {
  /** Seed cotton in the open boll, g, as it dries in the field. */
  readonly seedCottonGrams: number;
  /** Lint on its seeds, g, and all the rest of the seed cotton. */
  readonly lintGrams: number;
  readonly seedGrams: number;
  readonly fibres: number;
  /** All its fibres laid end to end, m. */
  readonly fibreMetres: number;
  /** Side of the square of finished cloth, in. */
  readonly patchInches: number;
  /** Weight of that square, g, with what the finish and the air add. */
  readonly patchGrams: number;
  /** Yarn in that square, yd. */
  readonly yarnYards: number;
  readonly endsPerInch: number;
  readonly picksPerInch: number;
  readonly yarnNe: number;
}

/**
 * Follows one boll.
 * @throws Error when the season made no woven cloth
 */
export function oneBoll(season: Season): OneBoll {
  const { field, fibreTrail, weaving, sewing } = season;
  const cloth = weaving?.cloth;
  if (!cloth || !sewing?.patchInchesPerBoll || cloth.description.kind !== 'woven')
    throw new Error('one boll: this season made no woven cloth');
  const fibre = fibreTrail[0]!.fibre;
  const lintGrams = field.lintGramsPerBoll;
  const { endsPerInch, picksPerInch, warpCrimpPercent, weftCrimpPercent, warpTex } = cloth.description.construction;
  const side = sewing.patchInchesPerBoll;
  const yarnInches =
    side ** 2 * (endsPerInch * (1 + warpCrimpPercent / 100) + picksPerInch * (1 + weftCrimpPercent / 100));
  const squareMetres = ((side * MM_PER_INCH) / KILO) ** 2;
  return {
    seedCottonGrams: field.bollGrams,
    lintGrams,
    seedGrams: field.bollGrams - lintGrams,
    // A fibre of 1 mtex and 1 mm weighs a nanogram, and a kilogram is a million million of them.
    fibres: (lintGrams * (TERA / KILO)) / (fibre.linearDensityMtex * meanLengthMm(fibre.lengths, 'number')),
    fibreMetres: (lintGrams / fibre.linearDensityMtex) * KILO * KILO,
    patchInches: side,
    patchGrams: squareMetres * cloth.description.gramsPerSquareMetre,
    yarnYards: yarnInches / INCHES_PER_YARD,
    endsPerInch,
    picksPerInch,
    yarnNe: neFromTex(asTex(warpTex)),
  };
}
