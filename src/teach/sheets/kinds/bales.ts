import { baleValueUsd } from '../../../model/classing/class-card.ts';
import { settleSeed } from '../../../model/classing/payments.ts';
import {
  KG_PER_POUND,
  KILO,
  kilogramsFromPounds,
  POUNDS_PER_SHORT_TON,
  POUNDS_PER_STATISTICAL_BALE,
  poundsFromKilograms,
} from '../../../model/units.ts';
import type { Draw, QuestionKind } from '../question.ts';
import { amount, askFor, down, exact, nearest, step } from '../rounding.ts';
import { ginMasses, massIn, massUnit } from './gin-masses.ts';

/** Cents for the sheet's unit of mass. */
const centsIn = ({ units }: Draw, perPound: number) =>
  units === 'us' ? amount(perPound, 2, '¢/lb') : amount(perPound / KG_PER_POUND, 2, '¢/kg');

/** How many bales a harvest makes, what one is worth by its class, and whether its seed pays for the ginning. */
export const bales: QuestionKind = {
  1: (draw) => {
    const { lintToPress, added } = ginMasses(draw.season, draw.units);
    const unit = massUnit(draw.units);
    const bale = amount(massIn(draw.units, kilogramsFromPounds(draw.random.integer(478, 505))), 0, unit);
    const lint = amount((lintToPress + added) * (draw.random.integer(110, 390) / 10), 0, unit);
    const count = lint.value / bale.value;
    const whole = Math.floor(count);
    return {
      given: { lint, bale },
      asks: [
        askFor([step('fullBales', '{lint} ÷ {bale}', count, 2, 'none')], down()),
        askFor([step('left', '{lint} − {fullBales} × {bale}', lint.value - whole * bale.value, 0, unit)], exact()),
      ],
    };
  },
  2: (draw) => {
    const classed = draw.season.classing!.classed;
    const one = classed[draw.random.integer(0, classed.length - 1)]!;
    const net = amount(massIn(draw.units, kilogramsFromPounds(draw.inTurn(440, 524))), 0, massUnit(draw.units));
    const base = centsIn(draw, one.baseCentsPerLb);
    const difference = centsIn(draw, one.premiumPoints / 100);
    const price = base.value + difference.value;
    const priceStep = step('price', '{base} + ({difference})', price, 2, base.unit);
    return {
      given: { net, base, difference },
      asks: [
        askFor([priceStep], exact(2)),
        askFor(
          [priceStep, step('value', '{net} × {price} ÷ 100', (net.value * price) / 100, 4, 'dollars')],
          nearest(2),
          baleValueUsd(net.value, base.value, difference.value * 100),
        ),
      ],
    };
  },
  3: (draw) => {
    const isUs = draw.units === 'us';
    const unit = massUnit(draw.units);
    const lines = draw.season.payments!.lines;
    const count = draw.random.integer(12, 60);
    const masses = ginMasses(draw.season, draw.units);
    const seed = amount(masses.seed * count, 0, unit);
    const lint = amount((masses.lintToPress + masses.added) * count, 0, unit);
    const ofItem = (item: 'seed' | 'ginning') => Math.abs(lines.find((line) => line.item === item)!.usd);
    const seasonSeedLb =
      poundsFromKilograms(ginMasses(draw.season, 'metric').seed) * draw.season.pressing!.bales.length;
    const perShortTon = (ofItem('seed') / seasonSeedLb) * POUNDS_PER_SHORT_TON;
    const ton = isUs ? POUNDS_PER_SHORT_TON : KILO;
    const seedPrice = amount(
      isUs ? perShortTon : perShortTon * (KILO / kilogramsFromPounds(POUNDS_PER_SHORT_TON)),
      2,
      'dollars',
    );
    const ginPrice = amount(draw.random.integer(425, 500) / 10, 2, 'dollars');
    const bale = amount(massIn(draw.units, kilogramsFromPounds(POUNDS_PER_STATISTICAL_BALE)), 0, unit);
    const credit = (seed.value / ton) * seedPrice.value;
    const charge = (lint.value / bale.value) * ginPrice.value;
    const settled = settleSeed(isUs ? seed.value : (seed.value * POUNDS_PER_SHORT_TON) / KILO, seedPrice.value, charge);
    const creditStep = step('credit', `{seed} ÷ ${isUs ? '2,000' : '1,000'} × {seedPrice}`, credit, 4, 'dollars');
    const chargeStep = step('charge', '{lint} ÷ {bale} × {ginPrice}', charge, 4, 'dollars');
    return {
      given: { seed, lint, seedPrice, ginPrice, bale },
      asks: [
        askFor([creditStep], nearest(2), settled.seedCreditUsd),
        askFor([chargeStep], nearest(2)),
        askFor(
          [creditStep, chargeStep, step('balance', '{credit} − {charge}', credit - charge, 4, 'dollars')],
          nearest(2),
          settled.balanceUsd,
        ),
      ],
    };
  },
};
