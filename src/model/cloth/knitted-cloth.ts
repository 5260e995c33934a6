import { totalKg } from '../lot.ts';
import { KILO } from '../units.ts';
import type { Cloth, ClothYarn } from './cloth.ts';
import { areaKept, clothInUse } from './cloth-in-use.ts';
import { describeJersey, jerseyShrinkPercent, usualLoopLengthMm } from './describe-jersey.ts';
import { geometryFacts } from './facts.ts';
import { drapeOf } from './feel.ts';
import { greyKilometres, type Made } from './making.ts';

/** Loops give way when a knit bends, so nothing is added to the stiffness of its fibres. */
const noPressing = { cover: 0, interlacing: 1 };

/** Finished jersey: the loop keeps its length, and the loops draw together in the bath. */
export function knittedCloth(made: Made, yarn: ClothYarn, fibreMtex: number): Cloth {
  const loopLengthMm = usualLoopLengthMm(yarn.tex);
  const kilometres = greyKilometres(made, yarn.tex);
  // Of a yarn of 1 tex a square metre weighs as many grams as it holds kilometres.
  const greySquareMetres = kilometres / describeJersey(1, loopLengthMm, 'dry').gramsPerSquareMetre;
  const state = made.finish === 'grey' ? 'dry' : 'wet';
  const shrink = jerseyShrinkPercent('dry', state);
  const finishedTex = (totalKg(made.finished.masses) * KILO) / kilometres;
  const description = describeJersey(finishedTex, loopLengthMm, state);
  const { gramsPerSquareMetre } = description;
  return {
    ...clothInUse(
      made,
      yarn,
      greySquareMetres,
      greySquareMetres * areaKept(shrink),
      geometryFacts.jerseyWidthInches.value,
    ),
    description,
    gramsPerSquareMetre,
    finishShrinkPercent: shrink,
    shrinkLeftPercent: jerseyShrinkPercent(state, 'full'),
    drape: drapeOf(gramsPerSquareMetre, noPressing.cover, noPressing.interlacing, fibreMtex),
    notes: ['settIgnored'],
  };
}
