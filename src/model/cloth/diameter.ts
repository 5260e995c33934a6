import { asTex, MM_PER_INCH, neFromTex, YARDS_PER_HANK } from '../units.ts';
import { geometryFacts } from './facts.ts';

/** Threads of a yarn that lie side by side in an inch, by Peirce: 28 sqrt(Ne). */
export const threadsSideBySide = (tex: number): number =>
  geometryFacts.peirceThreads.value * Math.sqrt(neFromTex(asTex(tex)));

/** Diameter of a yarn in cloth, mm. */
export const yarnDiameterMm = (tex: number): number => MM_PER_INCH / threadsSideBySide(tex);

/** Threads of a yarn that lie side by side in an inch, by Ashenhurst: 0.9 sqrt(yd/lb). */
export const ashenhurstSideBySide = (tex: number): number =>
  geometryFacts.ashenhurstThreads.value * Math.sqrt(YARDS_PER_HANK * neFromTex(asTex(tex)));
