import type { WeaveId } from './weaves.ts';

/** Threads per inch each way, the yarns as they lie (resultant tex), and how much longer than the cloth each lies. */
export interface WovenConstruction {
  readonly weave: WeaveId;
  readonly warpTex: number;
  readonly weftTex: number;
  readonly endsPerInch: number;
  readonly picksPerInch: number;
  readonly warpCrimpPercent: number;
  readonly weftCrimpPercent: number;
}
