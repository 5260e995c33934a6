import type { Cloth } from '../model/cloth/cloth.ts';
import type { ClothDescription } from '../model/cloth/describe-cloth.ts';
import type { JerseyDescription } from '../model/cloth/describe-jersey.ts';
import { feelFacts, geometryFacts, jerseyFacts, shrinkFacts } from '../model/cloth/facts.ts';
import { fuzzScore } from '../model/cloth/feel.ts';
import type { Season } from '../model/season.ts';
import {
  above,
  atStation,
  constant,
  decided,
  exact,
  formula,
  input,
  percent,
  procedure,
  read,
  type StationWorkings,
  step,
} from './steps.ts';
import type { Step, Working } from './working.ts';

const at = atStation('weaving');
const made = (working: (cloth: Cloth, season: Season) => Working | null) => (season: Season) =>
  season.weaving?.cloth ? working(season.weaving.cloth, season) : null;
const woven = (working: (cloth: ClothDescription, season: Season) => Working | null) =>
  made(({ description }, season) => (description.kind === 'woven' ? working(description, season) : null));

function wovenWeight({ construction, gramsPerSquareMetre }: ClothDescription): Working {
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

/** The two constants of a knit in its state. */
const knitFacts = (state: JerseyDescription['state']) =>
  state === 'dry'
    ? { courses: jerseyFacts.coursesDry, wales: jerseyFacts.walesDry }
    : state === 'wet'
      ? { courses: jerseyFacts.coursesWet, wales: jerseyFacts.walesWet }
      : { courses: jerseyFacts.coursesFull, wales: jerseyFacts.walesFull };

function knitWeight({ state, loopLengthMm, tightness, gramsPerSquareMetre }: JerseyDescription): Working {
  const { courses, wales } = knitFacts(state);
  const millimetresPerCm = 10;
  const tex = (tightness * (loopLengthMm / millimetresPerCm)) ** 2;
  return formula(
    'knitWeight',
    [
      constant('c', 'coursesConstant', courses, 'none'),
      constant('w', 'walesConstant', wales, 'none'),
      input('l', 'loopLength', exact(loopLengthMm, 'millimetres'), at),
      input('T', 'finishedTex', exact(tex, 'tex'), at),
    ],
    exact(gramsPerSquareMetre, 'gramsPerSquareMetre'),
    { as: 'clothWeight', value: gramsPerSquareMetre },
  );
}

const threads = (ends: number, picks: number, finished: boolean): Working =>
  formula(
    'threadCount',
    [
      input('e', finished ? 'endsFinished' : 'ends', exact(ends, 'threadsPerInch'), finished ? at : decided('weaving')),
      input(
        'p',
        finished ? 'picksFinished' : 'picks',
        exact(picks, 'threadsPerInch'),
        finished ? at : decided('weaving'),
      ),
    ],
    exact(ends + picks, 'threadsPerInch'),
    { as: 'count', value: ends + picks },
  );

/** What finishing took out: for woven cloth two constants, for a knit what the loops draw together. */
function shrinkSteps({ description, finish }: Cloth): Step[] {
  if (description.kind === 'woven') {
    return finish === 'grey'
      ? [step('noBath', percent(0), decided('weaving'))]
      : [
          step('shrinkLength', percent(shrinkFacts.finishLength.value), read(shrinkFacts.finishLength)),
          step('shrinkWidth', percent(shrinkFacts.finishWidth.value), read(shrinkFacts.finishWidth)),
        ];
  }
  const dry = knitFacts('dry');
  const now = knitFacts(description.state);
  return [
    step('coursesOffMachine', exact(dry.courses.value), read(dry.courses)),
    step('walesOffMachine', exact(dry.wales.value), read(dry.wales)),
    step('coursesConstant', exact(now.courses.value), read(now.courses)),
    step('walesConstant', exact(now.wales.value), read(now.wales)),
  ];
}

export const weavingWorkings: StationWorkings = {
  weight: made(({ description }) =>
    description.kind === 'woven' ? wovenWeight(description) : knitWeight(description),
  ),
  threadCount: woven((_, { scenario }) => {
    const { endsPerInch, picksPerInch } = scenario.decisions.weaving;
    return threads(endsPerInch, picksPerInch, false);
  }),
  threadCountFinished: woven(({ construction }) => threads(construction.endsPerInch, construction.picksPerInch, true)),
  cover: woven(({ warpCover, weftCover, clothCover }) =>
    formula(
      'clothCover',
      [
        input('K_1', 'warpCover', exact(warpCover), at),
        input('K_2', 'weftCover', exact(weftCover), at),
        constant('f', 'fullCover', geometryFacts.peirceThreads, 'none'),
      ],
      exact(clothCover),
      { as: 'number', value: clothCover, decimals: 1 },
    ),
  ),
  shrinkage: made((cloth) => procedure([...shrinkSteps(cloth)], { as: 'both', ...cloth.finishShrinkPercent })),
  drape: made(({ drape, gramsPerSquareMetre, description }) =>
    procedure(
      [
        step('bendingFloor', exact(drape.floorMm, 'millimetres'), at),
        ...(description.kind === 'woven' ? [step('areaCovered', percent(100 * description.coverFraction), at)] : []),
        step('bendingLength', exact(drape.bendingLengthMm, 'millimetres'), at),
        step('clothWeight', exact(gramsPerSquareMetre, 'gramsPerSquareMetre'), at),
        step('rigidity', exact(drape.rigidity, 'micronewtonMetres'), at),
        step('fluidBelow', exact(feelFacts.fluidBelow.value, 'micronewtonMetres'), read(feelFacts.fluidBelow)),
        step('crispAbove', exact(feelFacts.crispAbove.value, 'micronewtonMetres'), read(feelFacts.crispAbove)),
      ],
      { as: 'word', list: 'drapes', word: drape.word },
    ),
  ),
  fuzziness: made(({ fuzz }, { spinning }) => {
    const yarn = spinning?.yarn;
    if (!yarn) return null;
    const { fuzzEndsPerCm, fuzzShortPercent, fuzzLittleBelow, fuzzMuchAbove } = feelFacts;
    return procedure(
      [
        step('fibreEnds', exact(yarn.fibreEndsPerCm, 'endsPerCm'), atStation('spinning')),
        step('shortInYarn', percent(yarn.shortFibrePercentByWeight), { at: 'fibre' }),
        step('usualEnds', exact(fuzzEndsPerCm.value, 'endsPerCm'), read(fuzzEndsPerCm)),
        step('doublingShort', percent(fuzzShortPercent.value), read(fuzzShortPercent)),
        step('fuzzScore', exact(fuzzScore(yarn.fibreEndsPerCm, yarn.shortFibrePercentByWeight)), above),
        step('fuzzLittle', exact(fuzzLittleBelow.value), read(fuzzLittleBelow)),
        step('fuzzMuch', exact(fuzzMuchAbove.value), read(fuzzMuchAbove)),
      ],
      { as: 'word', list: 'fuzzes', word: fuzz },
    );
  }),
};
