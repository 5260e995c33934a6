import { type ClothName, catalogue } from '../model/cloth/catalogue-facts.ts';
import { type ClothDescription, describeCloth } from '../model/cloth/describe-cloth.ts';
import { tightnessOf } from '../model/cloth/tightness.ts';
import { type WeaveId, weaveIds } from '../model/cloth/weaves.ts';
import { parseYarnNumber, type YarnNumber } from '../model/mill/yarn-number.ts';
import { asNe, neFromTex, texFromNe } from '../model/units.ts';

const numberOf = (written: string): YarnNumber => {
  const parsed = parseYarnNumber(written);
  if (!parsed.ok) throw new RangeError(`${written} is no yarn number`);
  return parsed.value;
};

/**
 * A woven cloth of the list of named cloths, with what follows from its threads.
 * @throws RangeError for a knit
 */
export function listedCloth(name: ClothName): ClothDescription {
  const { structure, warp, weft, crimpPercent, ...listed } = catalogue[name];
  const weave = weaveIds.find((id) => id === structure);
  if (!weave) throw new RangeError(`${name} is knitted`);
  return describeCloth({
    ...listed,
    warp: numberOf(warp),
    weft: numberOf(weft),
    weave,
    warpCrimpPercent: crimpPercent?.[0] ?? null,
    weftCrimpPercent: crimpPercent?.[1] ?? null,
  });
}

/** Count of a cloth's warp as it lies, Ne. */
export const warpNeOf = (name: ClothName): number => neFromTex(numberOf(catalogue[name].warp).resultantTex);

const finestAsked = 1000;

/**
 * The coarsest yarn of which so many single threads fit into an inch each way, pressed flat, Ne.
 * @param threadsPerInch each way
 * @throws RangeError when no yarn up to Ne 1000 is fine enough
 */
export function coarsestNeFor(threadsPerInch: number, weave: WeaveId): number {
  const usual = listedCloth('quilting').construction;
  for (let ne = 1; ne <= finestAsked; ne++) {
    const tex = texFromNe(asNe(ne));
    const cloth = { ...usual, weave, warpTex: tex, weftTex: tex };
    if (tightnessOf({ ...cloth, endsPerInch: threadsPerInch, picksPerInch: threadsPerInch }) !== 'jammed') return ne;
  }
  throw new RangeError(`no yarn is fine enough for ${threadsPerInch} threads an inch`);
}
