import type { DecisionsOf } from '../../../src/model/decisions.ts';
import type { Fibre } from '../../../src/model/fibre.ts';
import { summariseGin } from '../../../src/model/gin/byproducts.ts';
import { cleanSeedCotton } from '../../../src/model/gin/clean.ts';
import { ginLot } from '../../../src/model/gin/gin-lot.ts';
import { pressBales } from '../../../src/model/gin/press.ts';
import { foreignMatterShares } from '../../../src/model/harvest/facts.ts';
import { breakAtRandom } from '../../../src/model/length/breakage.ts';
import { gaussianByMass } from '../../../src/model/length/length-distribution.ts';
import { groupDryKg, type Lot, partMasses, waterForMoisture } from '../../../src/model/lot.ts';
import { openStream } from '../../../src/model/random.ts';

/** Four cottons as they come off the seed by hand: centre of the peak, its spread, breaks on the seed, breaking tendency. */
const cottons = {
  short: { centreMm: 27.7, spread: 0.16, breaksPerMm: 0.015, breakTendency: 1 },
  medium: { centreMm: 30.7, spread: 0.16, breaksPerMm: 0.0087, breakTendency: 1 },
  long: { centreMm: 32.7, spread: 0.16, breaksPerMm: 0.0028, breakTendency: 1 },
  pima: { centreMm: 40, spread: 0.12, breaksPerMm: 0.0037, breakTendency: 0.72 },
} as const;
export type Cotton = keyof typeof cottons;

export function fibreOf(cotton: Cotton): Fibre {
  const { centreMm, spread, breaksPerMm, breakTendency } = cottons[cotton];
  return {
    kind: cotton === 'pima' ? 'pima' : 'upland',
    lengths: breakAtRandom(gaussianByMass(centreMm, spread), breaksPerMm),
    linearDensityMtex: 170,
    maturityRatio: 0.9,
    strengthGPerTex: 30,
    breakTendency,
    reflectanceRd: 75,
    yellownessB: 8.5,
    nepsRatio: 1,
  };
}

/** Water that gives every group the same moisture, % wet basis. */
export function evenlyMoist(dryKg: Lot['dryKg'], moisturePercent: number): Lot['waterKg'] {
  const water = (group: 'lint' | 'seed' | 'trash') => waterForMoisture(groupDryKg(dryKg, group), moisturePercent / 100);
  return { lint: water('lint'), seed: water('seed'), trash: water('trash') };
}

export interface Delivered {
  readonly method: 'hand' | 'spindle' | 'stripper';
  readonly foreignMatter: number;
  readonly lintShare: number;
  readonly moisturePercent?: number;
  readonly cotton?: Cotton;
  readonly seedCottonKg?: number;
}

/** Seed cotton as it arrives at a gin: a foreign matter fraction split by the harvest's own class shares. */
export function delivered({ method, foreignMatter, lintShare, ...rest }: Delivered): Lot {
  const kg = rest.seedCottonKg ?? 100_000;
  const { shares } = foreignMatterShares[method];
  const trash = kg * foreignMatter;
  const dryKg = partMasses({
    lint: (kg - trash) * lintShare,
    seed: (kg - trash) * (1 - lintShare),
    burs: trash * shares.burs,
    sticks: trash * shares.sticks,
    leaf: trash * shares.leaf,
    motes: trash * shares.motes,
    dirt: trash * shares.dirt,
  });
  return { dryKg, waterKg: evenlyMoist(dryKg, rest.moisturePercent ?? 6), fibre: fibreOf(rest.cotton ?? 'medium') };
}

/** A standard line without drying, so that moisture stays as it came. */
export const undried: DecisionsOf<'cleaning'> = { dryers: 0, dryerAirF: 180, cylinderCleaners: 2, stickMachines: 1 };
export const sawAndTwo: DecisionsOf<'ginning'> = {
  stand: 'saw',
  lintCleaner: 'saw',
  lintCleaners: 2,
  moistureAddedPoints: 0,
};

/** From the module feeder to the bale. */
export function ginAll(
  lot: Lot,
  harvestMethod: DecisionsOf<'harvest'>['method'],
  cleaning: DecisionsOf<'cleaning'> = undried,
  ginning: DecisionsOf<'ginning'> = sawAndTwo,
  restoreToPercent = 4,
) {
  const cleaned = cleanSeedCotton(lot, cleaning, { harvestMethod });
  const ginned = ginLot(cleaned.lot, ginning);
  const pressed = pressBales(ginned.lot, { netPounds: 480, restoreToPercent }, 'present', openStream(7, 'press'));
  return { cleaned, ginned, pressed, summary: summariseGin(cleaned.ledger, ginned.ledger, pressed.ledger) };
}
