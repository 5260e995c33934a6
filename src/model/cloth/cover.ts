import { asTex, neFromTex } from '../units.ts';
import { geometryFacts } from './facts.ts';

/** Cover factor of one direction: threads per inch / sqrt(Ne); 28 is full. */
export const coverFactor = (threadsPerInch: number, tex: number): number =>
  threadsPerInch / Math.sqrt(neFromTex(asTex(tex)));

/** Cover factor of the cloth, Peirce: K1 + K2 - K1 K2 / 28. */
export const clothCover = (warpCover: number, weftCover: number): number =>
  warpCover + weftCover - (warpCover * weftCover) / geometryFacts.peirceThreads.value;

/** Share of the area that yarn covers, 0 to 1; cover past full counts as full. */
export function coverFraction(warpCover: number, weftCover: number): number {
  const full = geometryFacts.peirceThreads.value;
  return clothCover(Math.min(full, warpCover), Math.min(full, weftCover)) / full;
}
