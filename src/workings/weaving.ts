import type { Cloth } from '../model/cloth/cloth.ts';
import type { ClothDescription } from '../model/cloth/describe-cloth.ts';
import type { JerseyDescription } from '../model/cloth/describe-jersey.ts';
import { jerseyFacts, shrinkFacts } from '../model/cloth/facts.ts';
import type { Season } from '../model/season.ts';
import { coverWorking, drapeWorking, fuzzWorking, wovenWeight } from './of-cloth.ts';
import {
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
    description.kind === 'woven' ? wovenWeight(description, at) : knitWeight(description),
  ),
  threadCount: woven((_, { scenario }) => {
    const { endsPerInch, picksPerInch } = scenario.decisions.weaving;
    return threads(endsPerInch, picksPerInch, false);
  }),
  threadCountFinished: woven(({ construction }) => threads(construction.endsPerInch, construction.picksPerInch, true)),
  cover: woven((description) => coverWorking(description, at)),
  shrinkage: made((cloth) => procedure([...shrinkSteps(cloth)], { as: 'both', ...cloth.finishShrinkPercent })),
  drape: made(({ drape, gramsPerSquareMetre, description }) =>
    drapeWorking(drape, gramsPerSquareMetre, description.kind === 'woven' ? description.coverFraction : null, at),
  ),
  fuzziness: made(({ fuzz }, { spinning }) => {
    const yarn = spinning?.yarn;
    const from = { yarn: atStation('spinning'), fibre: { at: 'fibre' } as const };
    return yarn ? fuzzWorking(yarn.fibreEndsPerCm, yarn.shortFibrePercentByWeight, fuzz, from) : null;
  }),
};
