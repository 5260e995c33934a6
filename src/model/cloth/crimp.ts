import { MM_PER_INCH } from '../units.ts';
import type { WovenConstruction } from './construction.ts';
import { yarnDiameterMm } from './diameter.ts';
import { geometryFacts } from './facts.ts';
import { interlacing, type WeaveId } from './weaves.ts';

/** Crimp of a weave where none is stated, percent: the plain values, less where the yarn floats. */
export const usualCrimpPercent = (weave: WeaveId): { readonly warp: number; readonly weft: number } => ({
  warp: geometryFacts.warpCrimpPercent.value * interlacing(weave),
  weft: geometryFacts.weftCrimpPercent.value * interlacing(weave),
});

/** Height of a yarn's wave, in the unit of the spacing of the threads it crosses: Peirce, 4/3 spacing x sqrt(crimp). */
const waveHeight = (spacing: number, crimpPercent: number): number =>
  geometryFacts.waveHeight.value * spacing * Math.sqrt(crimpPercent / 100);

/**
 * Weft crimp that a warp crimp leaves, percent: the two wave heights together are the two diameters.
 * Spacings and diameters in one unit; 0 where the warp takes all.
 */
export function weftCrimpFromWarp(
  endSpacing: number,
  pickSpacing: number,
  diametersTogether: number,
  warpCrimpPercent: number,
): number {
  const weftHeight = Math.max(0, diametersTogether - waveHeight(pickSpacing, warpCrimpPercent));
  return 100 * (weftHeight / (geometryFacts.waveHeight.value * endSpacing)) ** 2;
}

/** Thickness of plain-surface cloth, mm: the thicker of warp wave and weft wave, each with its yarn. */
export function thicknessMm(construction: WovenConstruction): number {
  const { endsPerInch, picksPerInch, warpTex, weftTex, warpCrimpPercent, weftCrimpPercent } = construction;
  return Math.max(
    waveHeight(MM_PER_INCH / picksPerInch, warpCrimpPercent) + yarnDiameterMm(warpTex),
    waveHeight(MM_PER_INCH / endsPerInch, weftCrimpPercent) + yarnDiameterMm(weftTex),
  );
}

/**
 * Cloth after it has drawn in: threads lie closer, crimp rises, and not a millimetre of yarn is gained or lost.
 * @param lengthPercent shrinkage along the warp
 * @param widthPercent shrinkage across it
 */
export function relax(construction: WovenConstruction, lengthPercent: number, widthPercent: number): WovenConstruction {
  const lengthKept = 1 - lengthPercent / 100;
  const widthKept = 1 - widthPercent / 100;
  const drawnIn = (crimpPercent: number, kept: number) => 100 * ((1 + crimpPercent / 100) / kept - 1);
  return {
    ...construction,
    endsPerInch: construction.endsPerInch / widthKept,
    picksPerInch: construction.picksPerInch / lengthKept,
    warpCrimpPercent: drawnIn(construction.warpCrimpPercent, lengthKept),
    weftCrimpPercent: drawnIn(construction.weftCrimpPercent, widthKept),
  };
}
