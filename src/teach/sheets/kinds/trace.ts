import { chainFacts } from '../../../model/trace/facts.ts';
import { needOf } from '../../../model/trace/need.ts';
import { projectIds } from '../../../model/trace/project-facts.ts';
import { bollsFor, lintForKg, seedCottonForKg, yarnForClothKg } from '../../../model/trace/steps-back.ts';
import { GRAMS_PER_OUNCE, KILO, OUNCES_PER_POUND, poundsFromKilograms } from '../../../model/units.ts';
import type { Draw, QuestionKind } from '../question.ts';
import { amount, askFor, nearest, step } from '../rounding.ts';
import { ginMasses } from './gin-masses.ts';

/** Grams in an ounce as they are printed. */
const gramsPerOunce = amount(GRAMS_PER_OUNCE, 2, 'none');
const percent = (fraction: number, decimals = 1) => amount(100 * fraction, decimals, 'percent');

/** A project, how many of it, and the boll and the turnout of the pupil's season; small masses in ounces or grams. */
function drawProject({ random, season, units }: Draw) {
  // Things without batting, which is not spun.
  const sewn = projectIds.filter((id) => !id.includes('quilt'));
  const project = sewn[random.integer(0, sewn.length - 1)]!;
  const pieces = amount(random.integer(2, 30), 0, 'none');
  const need = needOf({ project, count: pieces.value }, 'middle');
  if (!need.ok) throw new Error(`no cloth is known for ${project}`);
  const isUs = units === 'us';
  const cloth = isUs
    ? amount(poundsFromKilograms(need.value.clothKg) * OUNCES_PER_POUND, 0, 'oz')
    : amount(need.value.clothKg * KILO, 0, 'g');
  const { lintToPress, added, load } = ginMasses(season, units);
  const turnout = percent((lintToPress + added) / load);
  const boll = amount(season.field.bollGrams, 1, 'g');
  return { project, pieces, cloth, turnout, boll, isUs, perGram: isUs ? gramsPerOunce.value : 1 } as const;
}

const realisation = percent(chainFacts.yarnRealisation.value, 0);
const finishing = percent(chainFacts.finishingYield.value, 0);
const weaving = percent(chainFacts.weavingYield.value, 1);

/** From a sewing project back to the bolls. */
export const trace: QuestionKind = {
  1: (draw) => {
    const { project, pieces, cloth, turnout } = drawProject(draw);
    const lint = amount(cloth.value * (1 + draw.random.integer(18, 24) / 100), 0, cloth.unit);
    const seedCotton = (100 * lint.value) / turnout.value;
    return {
      given: { pieces, lint, turnout },
      named: { project },
      asks: [
        askFor(
          [step('seedCotton', '{lint} ÷ {turnout}', seedCotton, 2, cloth.unit)],
          nearest(0),
          seedCottonForKg(lint.value, turnout.value / 100),
        ),
      ],
    };
  },
  2: (draw) => {
    const { project, pieces, cloth, turnout, boll, isUs, perGram } = drawProject(draw);
    const lint = amount(cloth.value * (1 + draw.random.integer(18, 24) / 100), 0, cloth.unit);
    const seedCotton = (100 * lint.value) / turnout.value;
    const seedCottonStep = step('seedCotton', '{lint} ÷ {turnout}', seedCotton, 3, cloth.unit);
    const bolls = (seedCotton * perGram) / boll.value;
    return {
      given: { pieces, lint, turnout, boll, ...(isUs ? { gramsPerOunce } : {}) },
      named: { project },
      asks: [
        askFor([seedCottonStep], nearest(0)),
        askFor(
          [
            seedCottonStep,
            step('bolls', isUs ? '{seedCotton} × {gramsPerOunce} ÷ {boll}' : '{seedCotton} ÷ {boll}', bolls, 2, 'none'),
          ],
          nearest(0),
          bollsFor(seedCottonForKg((lint.value * perGram) / KILO, turnout.value / 100), 1, boll.value),
        ),
      ],
    };
  },
  3: (draw) => {
    const { project, pieces, cloth, turnout, boll, isUs, perGram } = drawProject(draw);
    const share = (value: number) => value / 100;
    const [f, w, r, t] = [finishing, weaving, realisation, turnout].map(({ value }) => share(value)) as [
      number,
      number,
      number,
      number,
    ];
    const yarn = cloth.value / f / w;
    const lint = yarn / r;
    const seedCotton = lint / t;
    const bolls = (seedCotton * perGram) / boll.value;
    const yarnStep = step('yarn', '{cloth} ÷ {finishing} ÷ {weaving}', yarn, 3, cloth.unit);
    const lintStep = step('lint', '{yarn} ÷ {realisation}', lint, 3, cloth.unit);
    const exactLint = lintForKg(yarnForClothKg(cloth.value, f, w), r, 0, 1);
    return {
      given: { pieces, cloth, finishing, weaving, realisation, turnout, boll, ...(isUs ? { gramsPerOunce } : {}) },
      named: { project },
      asks: [
        askFor([yarnStep], nearest(0), yarnForClothKg(cloth.value, f, w)),
        askFor([yarnStep, lintStep], nearest(0), exactLint),
        askFor(
          [
            yarnStep,
            lintStep,
            step('seedCotton', '{lint} ÷ {turnout}', seedCotton, 3, cloth.unit),
            step('bolls', isUs ? '{seedCotton} × {gramsPerOunce} ÷ {boll}' : '{seedCotton} ÷ {boll}', bolls, 2, 'none'),
          ],
          nearest(0),
          bollsFor(seedCottonForKg((exactLint * perGram) / KILO, t), 1, boll.value),
        ),
      ],
    };
  },
};
