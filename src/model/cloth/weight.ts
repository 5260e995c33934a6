import { KILO, MM_PER_INCH } from '../units.ts';
import type { WovenConstruction } from './construction.ts';

const inchesPerMetre = KILO / MM_PER_INCH;

/** Length of yarn in a square metre of cloth, km: warp and weft. */
export function yarnKilometresPerSquareMetre(construction: WovenConstruction): {
  readonly warp: number;
  readonly weft: number;
} {
  const kilometres = (threadsPerInch: number, crimpPercent: number) =>
    (threadsPerInch * inchesPerMetre * (1 + crimpPercent / 100)) / KILO;
  return {
    warp: kilometres(construction.endsPerInch, construction.warpCrimpPercent),
    weft: kilometres(construction.picksPerInch, construction.weftCrimpPercent),
  };
}

/** Mass of the warp and of the weft in a square metre, g: length x tex. */
export function yarnGramsPerSquareMetre(construction: WovenConstruction): {
  readonly warp: number;
  readonly weft: number;
} {
  const { warp, weft } = yarnKilometresPerSquareMetre(construction);
  return { warp: warp * construction.warpTex, weft: weft * construction.weftTex };
}

/** Mean linear density of things laid end to end, by their share of the mass: the harmonic mean. Shares need not add up to one. */
export function meanLinearDensity(portions: readonly { readonly density: number; readonly mass: number }[]): number {
  let mass = 0;
  let length = 0;
  for (const portion of portions) {
    mass += portion.mass;
    length += portion.mass / portion.density;
  }
  return mass / length;
}
