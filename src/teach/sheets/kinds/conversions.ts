import { areaKept } from '../../../model/cloth/cloth-in-use.ts';
import { washTable } from '../../../model/cloth/wash-facts.ts';
import {
  GSM_PER_OUNCE_PER_SQUARE_YARD,
  gsmFromOuncesPerSquareYard,
  INCHES_PER_YARD,
  KILO,
  kilogramsFromPounds,
  MM_PER_INCH,
  millimetresFromInches,
  ouncesPerSquareYardFromGsm,
} from '../../../model/units.ts';
import type { QuestionKind } from '../question.ts';
import { amount, askFor, nearest, step } from '../rounding.ts';
import { massIn, massUnit } from './gin-masses.ts';

/** Meters in a yard and grams a square meter in an ounce a square yard, as they are printed. */
const metresPerYard = amount(millimetresFromInches(INCHES_PER_YARD) / KILO, 4, 'none');
const gsmPerOunce = amount(GSM_PER_OUNCE_PER_SQUARE_YARD, 3, 'none');

/** Percentages and the two systems of units, as sewing meets them. */
export const conversions: QuestionKind = {
  1: ({ random, season, units }) => {
    // The heavier ones of the season's own bales: more than some bale of the middle weighs.
    const weights = season.classing!.classed.map(({ netLb }) => massIn(units, kilogramsFromPounds(netLb)));
    const sorted = [...weights].sort((a, b) => a - b);
    const middle = sorted[Math.floor(sorted.length * (random.integer(20, 80) / 100))]!;
    const limit = amount(Math.floor(middle), 0, massUnit(units));
    const all = amount(weights.length, 0, 'none');
    const heavy = amount(weights.filter((weight) => weight > limit.value).length, 0, 'none');
    const share = (100 * heavy.value) / all.value;
    const price = amount(random.integer(300, 1900) / 100, 2, 'dollars');
    const off = amount(random.integer(2, 12) * 5, 0, 'percent');
    return {
      given: { heavy, all, limit, price, off },
      asks: [
        askFor([step('share', '{heavy} ÷ {all} × 100', share, 3, 'percent')], nearest(1)),
        askFor(
          [step('newPrice', '{price} × (1 − {off})', price.value * (1 - off.value / 100), 4, 'dollars')],
          nearest(2),
        ),
      ],
    };
  },
  2: ({ random, units }) => {
    if (units === 'us') {
      const length = amount(random.integer(5, 60) / 4, 2, 'yd');
      const weight = amount(random.integer(21, 140) / 10, 1, 'oz/yd²');
      return {
        given: { length, weight, metresPerYard, gsmPerOunce },
        asks: [
          askFor(
            [step('otherLength', '{length} × {metresPerYard}', length.value * metresPerYard.value, 4, 'm')],
            nearest(2),
            millimetresFromInches(length.value * INCHES_PER_YARD) / KILO,
          ),
          askFor(
            [step('otherWeight', '{weight} × {gsmPerOunce}', weight.value * gsmPerOunce.value, 3, 'g/m²')],
            nearest(0),
            gsmFromOuncesPerSquareYard(weight.value),
          ),
        ],
      };
    }
    const length = amount(random.integer(11, 140) / 10, 1, 'm');
    const weight = amount(random.integer(70, 470), 0, 'g/m²');
    return {
      given: { length, weight, metresPerYard, gsmPerOunce },
      asks: [
        askFor(
          [step('otherLength', '{length} ÷ {metresPerYard}', length.value / metresPerYard.value, 4, 'yd')],
          nearest(2),
          (length.value * KILO) / MM_PER_INCH / INCHES_PER_YARD,
        ),
        askFor(
          [step('otherWeight', '{weight} ÷ {gsmPerOunce}', weight.value / gsmPerOunce.value, 3, 'oz/yd²')],
          nearest(1),
          ouncesPerSquareYardFromGsm(weight.value),
        ),
      ],
    };
  },
  3: ({ random, units }) => {
    const isUs = units === 'us';
    const wash = washTable.rows[random.integer(0, washTable.rows.length - 1)]!;
    const shrink = amount(wash.lengthPercent, 1, 'percent');
    const shrinkAcross = amount(wash.widthPercent, 1, 'percent');
    const bought = isUs ? amount(random.integer(6, 40) / 4, 2, 'yd') : amount(random.integer(12, 95) / 10, 1, 'm');
    const piece = isUs ? amount(random.integer(20, 110), 0, 'in') : amount(random.integer(50, 280), 0, 'cm');
    const weight = isUs
      ? amount(random.integer(30, 120) / 10, 1, 'oz/yd²')
      : amount(random.integer(100, 400), 0, 'g/m²');
    const kept = 1 - shrink.value / 100;
    const keptAcross = 1 - shrinkAcross.value / 100;
    const both = areaKept({ length: shrink.value, width: shrinkAcross.value });
    return {
      given: { shrink, shrinkAcross, bought, piece, weight },
      asks: [
        askFor([step('after', '{bought} × (1 − {shrink})', bought.value * kept, 4, bought.unit)], nearest(2)),
        askFor([step('cutLength', '{piece} ÷ (1 − {shrink})', piece.value / kept, 3, piece.unit)], nearest(1)),
        askFor(
          [
            step(
              'heavier',
              '{weight} ÷ (1 − {shrink}) ÷ (1 − {shrinkAcross})',
              weight.value / kept / keptAcross,
              4,
              weight.unit,
            ),
          ],
          nearest(isUs ? 2 : 0),
          weight.value / both,
        ),
      ],
    };
  },
};
