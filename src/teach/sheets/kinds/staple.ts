import { stapleCode32nds } from '../../../model/classing/staple.ts';
import { stapleChart } from '../../../model/classing/staple-facts.ts';
import { MM_PER_INCH, THIRTY_SECONDS_PER_INCH } from '../../../model/units.ts';
import type { Amount, Ask, Draw, QuestionKind } from '../question.ts';
import { amount, askFor, exact, nearest, step } from '../rounding.ts';

/** Codes of the chart, without the first, which has no lower end of its own. */
const rows = stapleChart.upland.rows.slice(1);
const ordinals = ['first', 'second', 'third', 'fourth'] as const;

/** Lengths of some bales of the pupil's season and of others like them, hundredths of an inch. */
function drawLengths({ random, season }: Draw, count: number): number[] {
  const { classed } = season.classing!;
  const mean = classed.reduce((sum, { reading }) => sum + reading.lengthIn, 0) / classed.length;
  return Array.from({ length: count }, () => Math.round(100 * mean) + random.integer(-14, 9));
}

const chartGiven: Readonly<Record<string, Amount>> = Object.fromEntries(
  rows.flatMap(({ code32nds, fromHundredths }) => [
    [`from${code32nds}`, amount(fromHundredths / 100, 2, 'in')],
    [`code${code32nds}`, amount(code32nds, 0, 'none')],
  ]),
);
const chartTable = {
  name: 'staple',
  rows: rows.map(({ code32nds }) => [`from${code32nds}`, `code${code32nds}`]),
} as const;

/** Reading the chart: the last line that the length reaches. */
function readChart(name: string, lengthName: string, lengthIn: number): Ask {
  const code = stapleCode32nds('upland', lengthIn);
  return askFor([step(name, `{${lengthName}} ≥ {from${code}}`, code, 0, 'none')], exact(), code);
}

/** The code that stands for the length of a bale's fibers, in thirty-seconds of an inch. */
export const staple: QuestionKind = {
  1: ({ inTurn }) => {
    const turn = inTurn(0, 139);
    const codes = [28 + (turn % 5), 33 + (Math.floor(turn / 5) % 4), 37 + Math.floor(turn / 20)];
    const given = Object.fromEntries(codes.map((code, i) => [ordinals[i]!, amount(code, 0, 'none')]));
    return {
      given,
      asks: codes.map((code, i) =>
        askFor(
          [step(`${ordinals[i]!}Inches`, `{${ordinals[i]!}} ÷ 32`, code / THIRTY_SECONDS_PER_INCH, 5, 'in')],
          nearest(3),
        ),
      ),
    };
  },
  2: (draw) => {
    const lengths = drawLengths(draw, ordinals.length);
    return {
      given: {
        ...Object.fromEntries(lengths.map((length, i) => [ordinals[i]!, amount(length / 100, 2, 'in')])),
        ...chartGiven,
      },
      table: chartTable,
      asks: lengths.map((length, i) => readChart(`${ordinals[i]!}Code`, ordinals[i]!, length / 100)),
    };
  },
  3: (draw) => {
    const [, other] = drawLengths(draw, 2);
    const lengths = [
      amount(draw.inTurn(235, 325) / 10, 1, 'mm'),
      amount((other! / 100) * MM_PER_INCH + draw.random.integer(-1, 1) / 10, 1, 'mm'),
    ];
    return {
      given: { ...Object.fromEntries(lengths.map((length, i) => [ordinals[i]!, length])), ...chartGiven },
      table: chartTable,
      asks: lengths.flatMap(({ value }, i) => {
        const inches = value / MM_PER_INCH;
        const inchesAsk = askFor(
          [step(`${ordinals[i]!}Inches`, `{${ordinals[i]!}} ÷ 25.4`, inches, 4, 'in')],
          nearest(2),
        );
        return [inchesAsk, readChart(`${ordinals[i]!}Code`, `${ordinals[i]!}Inches`, inchesAsk.answer.value)];
      }),
    };
  },
};
