import type { ClothDescription } from '../model/cloth/describe-cloth.ts';
import { feelFacts, geometryFacts } from '../model/cloth/facts.ts';
import { type Drape, fuzzScore } from '../model/cloth/feel.ts';
import { above, constant, exact, formula, input, percent, procedure, read, step } from './steps.ts';
import type { Origin, Working } from './working.ts';

/** Weight of a woven cloth from its threads. */
export function wovenWeight({ construction, gramsPerSquareMetre }: ClothDescription, at: Origin): Working {
  const { endsPerInch, picksPerInch, warpTex, weftTex, warpCrimpPercent, weftCrimpPercent } = construction;
  return formula(
    'clothWeight',
    [
      input('e', 'endsFinished', exact(endsPerInch, 'threadsPerInch'), at),
      input('c_1', 'warpCrimp', exact(warpCrimpPercent, 'percent'), at),
      input('T_1', 'warpTex', exact(warpTex, 'tex'), at),
      input('p', 'picksFinished', exact(picksPerInch, 'threadsPerInch'), at),
      input('c_2', 'weftCrimp', exact(weftCrimpPercent, 'percent'), at),
      input('T_2', 'weftTex', exact(weftTex, 'tex'), at),
    ],
    exact(gramsPerSquareMetre, 'gramsPerSquareMetre'),
    { as: 'clothWeight', value: gramsPerSquareMetre },
  );
}

/** Peirce cover of a woven cloth from that of its warp and its weft. */
export const coverWorking = ({ warpCover, weftCover, clothCover }: ClothDescription, at: Origin): Working =>
  formula(
    'clothCover',
    [
      input('K_1', 'warpCover', exact(warpCover), at),
      input('K_2', 'weftCover', exact(weftCover), at),
      constant('f', 'fullCover', geometryFacts.peirceThreads, 'none'),
    ],
    exact(clothCover),
    { as: 'number', value: clothCover, decimals: 1 },
  );

/** How a cloth bends, in a word. @param coverFraction null for a knit */
export const drapeWorking = (
  drape: Drape,
  gramsPerSquareMetre: number,
  coverFraction: number | null,
  at: Origin,
): Working =>
  procedure(
    [
      step('bendingFloor', exact(drape.floorMm, 'millimetres'), at),
      ...(coverFraction === null ? [] : [step('areaCovered', percent(100 * coverFraction), at)]),
      step('bendingLength', exact(drape.bendingLengthMm, 'millimetres'), at),
      step('clothWeight', exact(gramsPerSquareMetre, 'gramsPerSquareMetre'), at),
      step('rigidity', exact(drape.rigidity, 'micronewtonMetres'), at),
      step('fluidBelow', exact(feelFacts.fluidBelow.value, 'micronewtonMetres'), read(feelFacts.fluidBelow)),
      step('crispAbove', exact(feelFacts.crispAbove.value, 'micronewtonMetres'), read(feelFacts.crispAbove)),
    ],
    { as: 'word', list: 'drapes', word: drape.word },
  );

/** How fuzzy a yarn makes a cloth, in a word. @param shortPercent short fibre in the yarn, by weight */
export function fuzzWorking(
  fibreEndsPerCm: number,
  shortPercent: number,
  fuzz: string,
  from: { readonly yarn: Origin; readonly fibre: Origin },
): Working {
  const { fuzzEndsPerCm, fuzzShortPercent, fuzzLittleBelow, fuzzMuchAbove } = feelFacts;
  return procedure(
    [
      step('fibreEnds', exact(fibreEndsPerCm, 'endsPerCm'), from.yarn),
      step('shortInYarn', percent(shortPercent), from.fibre),
      step('usualEnds', exact(fuzzEndsPerCm.value, 'endsPerCm'), read(fuzzEndsPerCm)),
      step('doublingShort', percent(fuzzShortPercent.value), read(fuzzShortPercent)),
      step('fuzzScore', exact(fuzzScore(fibreEndsPerCm, shortPercent)), above),
      step('fuzzLittle', exact(fuzzLittleBelow.value), read(fuzzLittleBelow)),
      step('fuzzMuch', exact(fuzzMuchAbove.value), read(fuzzMuchAbove)),
    ],
    { as: 'word', list: 'fuzzes', word: fuzz },
  );
}
