import { seedCottonForKg } from '../../../model/trace/steps-back.ts';
import { kilogramsFromPounds, POUNDS_PER_STATISTICAL_BALE } from '../../../model/units.ts';
import type { Draw, QuestionKind } from '../question.ts';
import { amount, askFor, nearest, step } from '../rounding.ts';
import { ginMasses, massIn, massUnit } from './gin-masses.ts';

/** The turnout of the pupil's season, percent of the load's weight, to a tenth. */
function seasonTurnout({ season, units }: Draw) {
  const { lintToPress, added, load } = ginMasses(season, units);
  return amount((100 * (lintToPress + added)) / load, 1, 'percent');
}

/** A bale of 480 lb, or the 218 kg that it is. */
const baleOf = ({ units }: Draw) =>
  amount(massIn(units, kilogramsFromPounds(POUNDS_PER_STATISTICAL_BALE)), 0, massUnit(units));

/** How much of the seed cotton is lint. */
export const turnout: QuestionKind = {
  1: (draw) => {
    const masses = ginMasses(draw.season, draw.units);
    const unit = massUnit(draw.units);
    const bales = draw.inTurn(200, 900) / 100;
    const load = amount(masses.load * bales, 0, unit);
    const lint = amount((masses.lintToPress + masses.added) * bales, 0, unit);
    const share = (100 * lint.value) / load.value;
    return {
      given: { load, lint },
      asks: [askFor([step('turnout', '{lint} ÷ {load} × 100', share, 3, 'percent')], nearest(1))],
    };
  },
  2: (draw) => {
    const unit = massUnit(draw.units);
    const load = amount(massIn(draw.units, draw.random.integer(2000, 2600)), 0, unit);
    const turnoutPercent = seasonTurnout(draw);
    const bale = baleOf(draw);
    const lint = (load.value * turnoutPercent.value) / 100;
    const lintStep = step('lint', '{load} × {turnoutPercent}', lint, 2, unit);
    return {
      given: { load, turnoutPercent, bale },
      asks: [
        askFor([lintStep], nearest(0)),
        askFor([lintStep, step('bales', '{lint} ÷ {bale}', lint / bale.value, 3, 'none')], nearest(1)),
      ],
    };
  },
  3: (draw) => {
    const unit = massUnit(draw.units);
    const first = seasonTurnout(draw);
    const second = amount(first.value - draw.random.integer(31, 99) / 10, 1, 'percent');
    const bale = baleOf(draw);
    const bales = amount(draw.random.integer(11, 60), 0, 'none');
    const [needFirst, needSecond] = [first, second].map(({ value }) => (100 * bale.value) / value) as [number, number];
    const firstStep = step('needFirst', '{bale} ÷ {first}', needFirst, 3, unit);
    const secondStep = step('needSecond', '{bale} ÷ {second}', needSecond, 3, unit);
    return {
      given: { first, second, bale, bales },
      asks: [
        askFor([firstStep], nearest(0), seedCottonForKg(bale.value, first.value / 100)),
        askFor([secondStep], nearest(0), seedCottonForKg(bale.value, second.value / 100)),
        askFor(
          [
            firstStep,
            secondStep,
            step('more', '({needSecond} − {needFirst}) × {bales}', (needSecond - needFirst) * bales.value, 2, unit),
          ],
          nearest(0),
        ),
      ],
    };
  },
};
