import { clothOfThreads } from '../bench/bench-cloth.ts';
import { startingSetUp } from '../bench/set-up.ts';
import { type ClothName, catalogue } from '../cloth/catalogue-facts.ts';
import { parseYarnNumber } from '../mill/yarn-number.ts';

/** The named cloths of the catalogue. */
export const clothNames = Object.keys(catalogue) as readonly ClothName[];

const isNamed = (name: string): name is ClothName => Object.hasOwn(catalogue, name);

/** Weight of a named cloth as the bench weaves or knits it, oz/yd2; undefined for a name that is not in the catalogue. */
export function clothOunces(name: string): number | undefined {
  if (!isNamed(name)) return undefined;
  // Neither cotton nor noil changes what the threads weigh.
  const setUp = startingSetUp('uplandMedium', name, 0);
  const [warp, weft] = [parseYarnNumber(setUp.warp), parseYarnNumber(setUp.weft)];
  return warp.ok && weft.ok ? clothOfThreads(setUp, warp.value, weft.value).ouncesPerSquareYard : undefined;
}
