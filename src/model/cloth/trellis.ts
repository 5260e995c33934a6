import type { WovenConstruction } from './construction.ts';
import { coverFactor } from './cover.ts';
import { geometryFacts } from './facts.ts';

/**
 * Angle between warp and weft at which threads that are pulled aslant touch their neighbors, radians: threads keep their length
 * and turn at the crossings like the laths of a trellis (Weissenberg 1949, J. Text. Inst. 40:T89, from memory), and their spacing
 * shrinks with the sine of the angle. Round threads.
 */
export function lockingAngle({ endsPerInch, picksPerInch, warpTex, weftTex }: WovenConstruction): number {
  const full = geometryFacts.peirceThreads.value;
  const fullest = Math.max(coverFactor(endsPerInch, warpTex), coverFactor(picksPerInch, weftTex)) / full;
  return Math.asin(Math.min(1, fullest));
}

/**
 * How much longer a strip can be drawn before its threads touch or lie straight, percent. The most that the geometry allows:
 * friction stops a real cloth earlier.
 * @param fromWarpRadians direction of the strip, 0 along the warp, a quarter turn along the weft
 */
export function mostStretchPercent(construction: WovenConstruction, fromWarpRadians: number): number {
  const { warpCrimpPercent, weftCrimpPercent } = construction;
  const sheared = Math.sqrt(1 + Math.sin(2 * fromWarpRadians) * Math.cos(lockingAngle(construction))) - 1;
  // Along a thread the trellis does not give; the waves of that thread do.
  const along = Math.abs(Math.cos(fromWarpRadians)) > Math.SQRT1_2 ? warpCrimpPercent : weftCrimpPercent;
  return Math.max(100 * sheared, along * Math.abs(Math.cos(2 * fromWarpRadians)));
}
