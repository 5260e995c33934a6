import { backingYards, roundUpYards, yardsAtWidth } from '../../../model/trace/yardage.ts';
import { INCHES_PER_YARD } from '../../../model/units.ts';
import type { Draw, QuestionKind, SheetUnit } from '../question.ts';
import { amount, askFor, down, exact, nearest, step, up } from '../rounding.ts';

/** What a shop cuts to, and the units that cloth is bought and measured in. */
const shop = ({ units }: Draw) =>
  units === 'us'
    ? ({ long: 'yd', across: 'in', acrossInLong: INCHES_PER_YARD, cut: up(1 / 4, 2) } as const)
    : ({ long: 'm', across: 'cm', acrossInLong: 100, cut: up(1 / 10, 1) } as const);
/** Usable width of quilting cotton: 42 in, and the 107 cm that it is. */
const usableAcross = { us: 42, metric: 107 } as const;

/** Pieces on cloth with their grain along the selvage, and how much cloth that takes. */
export const layout: QuestionKind = {
  1: (draw) => {
    const { across } = shop(draw);
    const isUs = draw.units === 'us';
    // Every strip with every width, in turn.
    const [widths, strips] = isUs ? [19, 21] : [51, 45];
    const turn = draw.inTurn(0, widths * strips - 1);
    const width = amount((isUs ? 40 : 100) + Math.floor(turn / strips), 0, across);
    const strip = amount(((isUs ? 9 : 28) + (turn % strips)) / 4, 2, across);
    const count = width.value / strip.value;
    const whole = Math.floor(count + 1e-9);
    return {
      given: { width, strip },
      asks: [
        askFor([step('strips', '{width} ÷ {strip}', count, 3, 'none')], down()),
        askFor([step('left', '{width} − {strips} × {strip}', width.value - whole * strip.value, 2, across)], exact(2)),
      ],
    };
  },
  2: (draw) => {
    const { long, across, cut } = shop(draw);
    const isUs = draw.units === 'us';
    const needed = isUs
      ? amount(draw.random.integer(5, 26) / 4, 2, long)
      : amount(draw.random.integer(12, 60) / 10, 1, long);
    const from = amount(isUs ? draw.random.integer(35, 45) : draw.random.integer(90, 115), 0, across);
    const to = amount(isUs ? draw.random.integer(52, 62) : draw.random.integer(132, 160), 0, across);
    const length = (needed.value * from.value) / to.value;
    const exact = yardsAtWidth(needed.value, from.value, to.value);
    const lengthStep = step('sameArea', '{needed} × {from} ÷ {to}', length, 4, long);
    return {
      given: { needed, from, to },
      asks: [
        askFor([lengthStep], nearest(2), exact),
        askFor([{ ...lengthStep, name: 'buy' }], cut, isUs ? roundUpYards(exact) : exact),
      ],
    };
  },
  3: (draw) => {
    const { long, across, acrossInLong, cut } = shop(draw);
    const isUs = draw.units === 'us';
    const size = (low: number, high: number) =>
      amount(
        isUs ? draw.random.integer(low, high) : Math.round(draw.random.integer(low, high) * 2.5),
        0,
        across as SheetUnit,
      );
    const width = size(40, 82);
    const length = size(86, 108);
    const over = amount(isUs ? 8 : 20, 0, across);
    const usable = amount(usableAcross[draw.units], 0, across);
    const [wide, tall] = [width.value + over.value, length.value + over.value];
    const strips = (total: number) => Math.ceil(total / usable.value - 1e-9);
    const lengthOf = (count: number, each: number) => (count * each) / acrossInLong;
    const upright = lengthOf(strips(wide), tall);
    const crosswise = lengthOf(strips(tall), wide);
    const uprightSteps = [
      step('stripsUpright', '({width} + {over}) ÷ {usable}', wide / usable.value, 3, 'none'),
      step('upright', `{stripsUpright} × ({length} + {over}) ÷ ${acrossInLong}`, upright, 3, long),
    ];
    const crosswiseSteps = [
      step('stripsCrosswise', '({length} + {over}) ÷ {usable}', tall / usable.value, 3, 'none'),
      step('crosswise', `{stripsCrosswise} × ({width} + {over}) ÷ ${acrossInLong}`, crosswise, 3, long),
    ];
    const choice = upright <= crosswise ? '{upright} ≤ {crosswise}' : '{crosswise} ≤ {upright}';
    return {
      given: { width, length, over, usable },
      asks: [
        askFor(uprightSteps.slice(0, 1), up()),
        askFor(uprightSteps.slice(1), nearest(2)),
        askFor(crosswiseSteps.slice(0, 1), up()),
        askFor(crosswiseSteps.slice(1), nearest(2)),
        askFor(
          [step('buy', choice, Math.min(upright, crosswise), 3, long)],
          cut,
          isUs ? backingYards(wide, tall) : undefined,
        ),
      ],
    };
  },
};
