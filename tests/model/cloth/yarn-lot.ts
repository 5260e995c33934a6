import type { ClothYarn } from '../../../src/model/cloth/cloth.ts';
import { breakAtRandom } from '../../../src/model/length/breakage.ts';
import { gaussianByMass } from '../../../src/model/length/length-distribution.ts';
import { type Lot, partMasses } from '../../../src/model/lot.ts';
import { asNe, texFromNe } from '../../../src/model/units.ts';

/** 200 kg of dry yarn at standard regain, with the specks a card leaves. */
export const yarnLot: Lot = {
  dryKg: partMasses({ lint: 199.8, leaf: 0.17, motes: 0.02, seed: 0.01 }),
  waterKg: { lint: 199.8 * 0.085, seed: 0.01 * 0.085, trash: 0.19 * 0.085 },
  fibre: {
    kind: 'upland',
    lengths: breakAtRandom(gaussianByMass(30, 0.16), 0.012),
    linearDensityMtex: 172,
    maturityRatio: 0.91,
    strengthGPerTex: 29,
    breakTendency: 1,
    reflectanceRd: 76,
    yellownessB: 8.5,
    nepsRatio: 0.6,
  },
};

/** A carded yarn of a count. */
export const yarnOf = (ne: number, combed = false): ClothYarn => ({
  tex: texFromNe(asNe(ne)),
  combed,
  fibreEndsPerCm: 106 * (30 / ne),
  shortFibrePercentByWeight: 8.4,
});

/** Single yarn of a count, as a cloth is described with. */
export const single = (ne: number) => ({ singleTex: texFromNe(asNe(ne)), singles: 1 });
