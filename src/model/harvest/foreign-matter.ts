import type { DecisionsOf } from '../decisions.ts';
import { type PartMasses, partMasses } from '../lot.ts';
import { foreignMatterFacts, foreignMatterShares, harvestFacts } from './facts.ts';

export type HarvestMethod = DecisionsOf<'harvest'>['method'];

/** The machine, or the hand, that meets the plant: a field cleaner only works on what the stripper took. */
const gatherer = (method: HarvestMethod) => (method === 'stripperFieldCleaner' ? 'stripper' : method);

/**
 * Foreign matter in the seed cotton as it is gathered, before any field cleaner: fraction of its dry weight, motes included.
 * @param leafRemaining leaf still on the plant, 0 to 1
 * @param lintLbPerAcre lint yield; a poor crop shares the same plant parts among less lint
 */
export function foreignMatterFraction(method: HarvestMethod, leafRemaining: number, lintLbPerAcre: number): number {
  const facts = foreignMatterFacts[gatherer(method)];
  const poor = Math.min(1, Math.max(-1, 1 - lintLbPerAcre / facts.referenceLintLbPerAcre.value));
  const sum = facts.base.value + facts.perLeaf.value * leafRemaining + facts.perPoorCrop.value * poor;
  return Math.min(facts.most.value, Math.max(facts.least.value, sum));
}

/** Whether the yield is so far below the method's ordinary one that the trash in a pound of lint shows it. */
export const isPoorCrop = (method: HarvestMethod, lintLbPerAcre: number): boolean =>
  lintLbPerAcre < foreignMatterFacts[gatherer(method)].referenceLintLbPerAcre.value * harvestFacts.poorCropShare.value;

/**
 * The burs, sticks, leaf and dirt that come along so that all foreign matter, with the motes already in the bolls, is the
 * wanted fraction of the dry weight. Motes beyond that fraction leave nothing to take.
 * @param seedCottonKg dry lint and seed, kg
 * @param motesKg dry motes from the bolls, kg
 * @returns dry masses of what is taken along, kg
 */
export function takenAlongKg(
  method: HarvestMethod,
  fraction: number,
  seedCottonKg: number,
  motesKg: number,
): PartMasses {
  const { shares } = foreignMatterShares[gatherer(method)];
  const wantedKg = Math.max(0, (seedCottonKg * fraction) / (1 - fraction) - motesKg);
  const perShareKg = wantedKg / (1 - shares.motes);
  return partMasses({
    burs: perShareKg * shares.burs,
    sticks: perShareKg * shares.sticks,
    leaf: perShareKg * shares.leaf,
    dirt: perShareKg * shares.dirt,
  });
}
