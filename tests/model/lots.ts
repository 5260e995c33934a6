import type { Fibre } from '../../src/model/fibre.ts';
import { gaussianByMass } from '../../src/model/length/length-distribution.ts';
import { type Lot, type PartMasses, partMasses } from '../../src/model/lot.ts';

/** Medium upland as it comes from the boll, for tests that need some fibre. */
export const mediumFibre: Fibre = {
  kind: 'upland',
  lengths: gaussianByMass(30.7, 0.16),
  linearDensityMtex: 175,
  maturityRatio: 0.92,
  strengthGPerTex: 30,
  breakTendency: 1,
  reflectanceRd: 78,
  yellownessB: 8.5,
  nepsRatio: 1,
};

/** A lot of picked seed cotton: about a third lint, a little of every foreign part, some water in each group. */
export const pickedLot = (over: Partial<PartMasses> = {}): Lot => ({
  dryKg: partMasses({ lint: 340, seed: 560, burs: 40, sticks: 12, leaf: 20, motes: 9, dirt: 6, ...over }),
  waterKg: { lint: 24, seed: 62, trash: 11 },
  fibre: mediumFibre,
});
