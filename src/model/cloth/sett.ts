import { MM_PER_INCH } from '../units.ts';
import type { WovenConstruction } from './construction.ts';
import { ashenhurstSideBySide, yarnDiameterMm } from './diameter.ts';
import { type WeaveId, weaveOf } from './weaves.ts';

/** Highest equal sett both ways by the handweaver's rule, threads per inch: side-by-side threads x repeat / (repeat + intersections). */
export function maximumSettPerInch(warpTex: number, weftTex: number, weave: WeaveId): number {
  const meanDiameterInches = (1 / ashenhurstSideBySide(warpTex) + 1 / ashenhurstSideBySide(weftTex)) / 2;
  const { repeat, intersections } = weaveOf(weave);
  return repeat / (repeat + intersections) / meanDiameterInches;
}

/** Whether threads can lie so close, by the geometry of round yarns. */
export interface Jamming {
  /** 1 where warp and weft press on each other everywhere; above it the cloth cannot be beaten up. */
  readonly pressure: number;
  readonly jammed: boolean;
  /** Most ends at these picks, and picks at these ends; null where the other direction alone is too close. */
  readonly highestEndsPerInch: number | null;
  readonly highestPicksPerInch: number | null;
}

/**
 * Jamming of Peirce's round threads: sqrt(1 - (p1/D)^2) + sqrt(1 - (p2/D)^2) = 1, p the spacing at an interlacing and D
 * the two diameters together. Threads in a float lie side by side, which leaves more room where the weave interlaces
 * (Love 1954, Textile Research Journal 24:1073, from memory).
 */
export function jamming(construction: WovenConstruction): Jamming {
  const { repeat, intersections } = weaveOf(construction.weave);
  const warpMm = yarnDiameterMm(construction.warpTex);
  const weftMm = yarnDiameterMm(construction.weftTex);
  const togetherMm = warpMm + weftMm;
  const lean = (threadsPerInch: number, diameterMm: number) => {
    const crossingMm =
      ((repeat * MM_PER_INCH) / threadsPerInch - (repeat - intersections) * diameterMm) / intersections;
    return Math.sqrt(Math.max(0, 1 - Math.min(1, Math.max(0, crossingMm) / togetherMm) ** 2));
  };
  const highest = (diameterMm: number, otherThreads: number, otherMm: number): number | null => {
    if (MM_PER_INCH / otherThreads < otherMm) return null;
    const crossingMm = togetherMm * Math.sqrt(1 - (1 - lean(otherThreads, otherMm)) ** 2);
    const spacingMm = (intersections * crossingMm + (repeat - intersections) * diameterMm) / repeat;
    return MM_PER_INCH / Math.max(diameterMm, spacingMm);
  };
  const { endsPerInch, picksPerInch } = construction;
  const pressure = lean(endsPerInch, warpMm) + lean(picksPerInch, weftMm);
  const highestEndsPerInch = highest(warpMm, picksPerInch, weftMm);
  const highestPicksPerInch = highest(weftMm, endsPerInch, warpMm);
  const fits = (threads: number, most: number | null) => most !== null && threads <= most;
  return {
    pressure,
    jammed: !(fits(endsPerInch, highestEndsPerInch) && fits(picksPerInch, highestPicksPerInch)),
    highestEndsPerInch,
    highestPicksPerInch,
  };
}
