import { yarnGramsPerSquareMetre } from '../../../model/cloth/weight.ts';
import { clothNames, clothOunces } from '../../../model/trace/cloth-weights.ts';
import { clothMassKg } from '../../../model/trace/steps-back.ts';
import { squareYards } from '../../../model/trace/yardage.ts';
import {
  asNe,
  asTex,
  gsmFromOuncesPerSquareYard,
  INCHES_PER_YARD,
  KILO,
  MM_PER_INCH,
  OUNCES_PER_POUND,
  ouncesPerSquareYardFromGsm,
  poundsFromKilograms,
  texFromNe,
  YARDS_PER_HANK,
} from '../../../model/units.ts';
import type { Draw, QuestionKind } from '../question.ts';
import { amount, askFor, nearest, step } from '../rounding.ts';

const cmPerInch = MM_PER_INCH / 10;

/** About the weight of some named cloth: sellers differ, so a tenth less to a tenth more than its threads weigh. */
function drawWeight({ random, units }: Draw) {
  const usual = clothOunces(clothNames[random.integer(0, clothNames.length - 1)]!)!;
  const ounces = usual * (0.9 + 0.2 * random.uniform());
  return units === 'us' ? amount(ounces, 1, 'oz/yd²') : amount(gsmFromOuncesPerSquareYard(ounces), 0, 'g/m²');
}

/** What a cloth weighs for its area, from a piece of it and from its threads. */
export const clothWeight: QuestionKind = {
  1: (draw) => {
    const isUs = draw.units === 'us';
    const area = amount(draw.random.integer(15, 90) / 10, 1, isUs ? 'yd²' : 'm²');
    const weight = drawWeight(draw);
    const mass = amount(area.value * weight.value, isUs ? 1 : 0, isUs ? 'oz' : 'g');
    return {
      given: { area, mass },
      asks: [
        askFor([step('weight', '{mass} ÷ {area}', mass.value / area.value, 4, weight.unit)], nearest(isUs ? 1 : 0)),
      ],
    };
  },
  2: (draw) => {
    const { random } = draw;
    const weight = drawWeight(draw);
    if (draw.units === 'metric') {
      const length = amount(random.integer(6, 60) / 10, 1, 'm');
      const width = amount(random.integer(90, 160), 0, 'cm');
      const area = (length.value * width.value) / 100;
      const areaStep = step('area', '{length} × {width} ÷ 100', area, 4, 'm²');
      return {
        given: { length, width, weight },
        asks: [
          askFor([areaStep], nearest(2)),
          askFor([areaStep, step('mass', '{area} × {weight}', area * weight.value, 2, 'g')], nearest(0)),
        ],
      };
    }
    const length = amount(random.integer(3, 28) / 4, 2, 'yd');
    const width = amount(random.integer(36, 62), 0, 'in');
    const area = (length.value * width.value) / INCHES_PER_YARD;
    const exact = squareYards(width.value, length.value * INCHES_PER_YARD);
    const areaStep = step('area', '{length} × {width} ÷ 36', area, 4, 'yd²');
    return {
      given: { length, width, weight },
      asks: [
        askFor([areaStep], nearest(2), exact),
        askFor(
          [areaStep, step('mass', '{area} × {weight} ÷ 16', (area * weight.value) / OUNCES_PER_POUND, 4, 'lb')],
          nearest(2),
          poundsFromKilograms(clothMassKg(exact, weight.value)),
        ),
      ],
    };
  },
  3: ({ random, units }) => {
    const crimp = {
      warp: amount(random.integer(3, 10), 0, 'percent'),
      weft: amount(random.integer(3, 10), 0, 'percent'),
    };
    const isUs = units === 'us';
    const ends = amount(isUs ? random.integer(48, 120) : random.integer(190, 470) / 10, isUs ? 0 : 1, 'none');
    const picks = amount(isUs ? random.integer(44, 100) : random.integer(170, 400) / 10, isUs ? 0 : 1, 'none');
    const count = isUs ? amount(random.integer(18, 50), 0, 'none') : amount(random.integer(120, 330) / 10, 1, 'tex');
    const tex = isUs ? texFromNe(asNe(count.value)) : asTex(count.value);
    const perInch = (threads: number) => (isUs ? threads : threads * cmPerInch);
    const grams = yarnGramsPerSquareMetre({
      weave: 'plain',
      warpTex: tex,
      weftTex: tex,
      endsPerInch: perInch(ends.value),
      picksPerInch: perInch(picks.value),
      warpCrimpPercent: crimp.warp.value,
      weftCrimpPercent: crimp.weft.value,
    });
    const gsm = grams.warp + grams.weft;
    // Threads along a square yard are 36 for each to the inch, each a yard long and its crimp longer; in a square meter 100.
    const across = isUs ? INCHES_PER_YARD : 100;
    const yarnOf = (threads: number, crimpPercent: number) => threads * across * (1 + crimpPercent / 100);
    const warp = yarnOf(ends.value, crimp.warp.value);
    const weft = yarnOf(picks.value, crimp.weft.value);
    const length = isUs ? 'yd' : 'm';
    const weight = isUs
      ? ((warp + weft) / (YARDS_PER_HANK * count.value)) * OUNCES_PER_POUND
      : ((warp + weft) * count.value) / KILO;
    const warpStep = step('warp', `{ends} × ${across} × (1 + {warpCrimp})`, warp, 3, length);
    const weftStep = step('weft', `{picks} × ${across} × (1 + {weftCrimp})`, weft, 3, length);
    return {
      given: { ends, picks, count, warpCrimp: crimp.warp, weftCrimp: crimp.weft },
      asks: [
        askFor([warpStep], nearest(0), isUs ? undefined : (grams.warp / tex) * KILO),
        askFor([weftStep], nearest(0), isUs ? undefined : (grams.weft / tex) * KILO),
        askFor(
          [
            warpStep,
            weftStep,
            step(
              'weight',
              isUs ? '({warp} + {weft}) ÷ (840 × {count}) × 16' : '({warp} + {weft}) × {count} ÷ 1,000',
              weight,
              4,
              isUs ? 'oz/yd²' : 'g/m²',
            ),
          ],
          nearest(isUs ? 2 : 0),
          isUs ? ouncesPerSquareYardFromGsm(gsm) : gsm,
        ),
      ],
    };
  },
};
