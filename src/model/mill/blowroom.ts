import { type Lot, type PartMasses, partMasses } from '../lot.ts';
import { wasteFacts } from './waste-facts.ts';

/** Share of each trash part (and of stray seed) that opening and cleaning take out. */
const trashShares: Partial<PartMasses> = {
  burs: wasteFacts.blowroomBurs.value,
  sticks: wasteFacts.blowroomSticks.value,
  leaf: wasteFacts.blowroomLeaf.value,
  motes: wasteFacts.blowroomMotes.value,
  dirt: wasteFacts.blowroomDirt.value,
  seed: wasteFacts.blowroomSeed.value,
};

/** Share of every part that the blowroom takes: trash by its kind, and as much good fibre as makes half of the waste. */
export function blowroomShares(dryKg: PartMasses): PartMasses {
  let trashKg = 0;
  for (const part of ['burs', 'sticks', 'leaf', 'motes', 'dirt', 'seed'] as const) {
    trashKg += dryKg[part] * trashShares[part]!;
  }
  const fibre = wasteFacts.blowroomFibreShare.value;
  const lintKg = (trashKg * fibre) / (1 - fibre);
  const lint = dryKg.lint > 0 ? Math.min(wasteFacts.blowroomMostLint.value, lintKg / dryKg.lint) : 0;
  return partMasses({ ...trashShares, lint });
}

/** The same share of every trash part and of stray seed, and a share of the lint. */
export const cleaningShares = (trash: number, lint: number): PartMasses =>
  partMasses({ burs: trash, sticks: trash, leaf: trash, motes: trash, dirt: trash, seed: trash, lint });

/** Masses alone. */
export type Masses = Pick<Lot, 'dryKg' | 'waterKg'>;
