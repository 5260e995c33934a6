import { presentMoney, thirtiesMoney } from '../model/classing/money-facts.ts';
import type { PaymentLine } from '../model/classing/payments.ts';
import { priceOfCrop } from '../model/classing/prices.ts';
import type { Fact } from '../model/fact.ts';
import { paidSeedKg } from '../model/gin/seed.ts';
import { totalKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import { poundsFromKilograms } from '../model/units.ts';
import { leftWorking } from './classing.ts';
import { atStation, constant, count, exact, formula, inLedger, input, procedure, read, step } from './steps.ts';
import type { FormulaWorking, Input, Printed, Working } from './working.ts';

export type MoneyKey = PaymentLine['item'] | 'left';

const usd = (value: number, decimals: number): Printed => ({ as: 'money', value, decimals });

/** Price of seed and where it was read: today's, or the season average of the crop year. */
function seedPrice(era: Season['scenario']['era']): Input {
  if (era === 'present') return constant('p', 'seedPrice', presentMoney.seedUsdPerTon, 'dollarsPerTon');
  const crop = priceOfCrop(thirtiesMoney.cropYear.value)!;
  return input('p', 'seedPrice', exact(crop.seedUsdPerTon!, 'dollarsPerTon'), read(crop));
}

const ginCharge = (era: Season['scenario']['era']): Fact =>
  era === 'present' ? presentMoney.ginChargeUsdPer480Lb : thirtiesMoney.ginChargeUsdPer480Lb;

/** The whole field's line of the settlement in closed form; what the farm pays is shown with its minus sign. */
function lineWorking(season: Season, item: PaymentLine['item'], paid: number): FormulaWorking | null {
  const { scenario, classing, ginning, harvest } = season;
  if (!classing || !ginning || !harvest) return null;
  const bales = classing.classed;
  const at = atStation('classing');
  const done = (id: FormulaWorking['formula'], inputs: readonly Input[]) =>
    formula(id, inputs, exact(Math.abs(paid), 'dollars'), usd(paid, 0));
  if (item === 'seed') {
    const pounds = poundsFromKilograms(paidSeedKg(ginning.seedHouse));
    return done('seedCredit', [
      input('S', 'seedPaid', exact(pounds, 'pounds'), inLedger('ginning')),
      seedPrice(scenario.era),
    ]);
  }
  if (item === 'ginning') {
    const netLb = bales.reduce((sum, bale) => sum + bale.netLb, 0);
    return done('ginCharge', [
      input('W', 'netOfBales', exact(netLb, 'pounds'), at),
      constant('c', 'ginCharge', ginCharge(scenario.era), 'dollarsPer480'),
    ]);
  }
  if (item === 'classing') {
    return done('classFee', [
      input('n', 'balesPressed', exact(bales.length, 'bales'), at),
      constant('c', 'classFee', presentMoney.classFeeUsdPerBale, 'dollarsPerBale'),
    ]);
  }
  if (item === 'picking') {
    const pounds = poundsFromKilograms(totalKg(harvest.lot));
    return done('pickingPay', [
      input('S', 'seedCotton', exact(pounds, 'pounds'), inLedger('harvest')),
      constant('c', 'pickingRate', thirtiesMoney.pickingUsdPerCwt, 'dollarsPerHundredweight'),
    ]);
  }
  return null;
}

/** The working of a line of the settlement, for the whole field or for one bale of it. */
export function moneyWorking(season: Season, key: MoneyKey, perBale: boolean): Working | null {
  const { payments, classing } = season;
  if (!payments || !classing) return null;
  const line = payments.lines.find(({ item }) => item === key);
  const whole = key === 'left' ? payments.netToFarmUsd : line?.usd;
  if (whole === undefined) return null;
  const bales = classing.classed.length;
  if (perBale) {
    return procedure(
      [step('wholeField', usd(whole, 2), { at: 'sale' }), step('balesPressed', count(bales), atStation('classing'))],
      usd(whole / bales, 2),
    );
  }
  if (key === 'left') return leftWorking(season);
  const closed = lineWorking(season, key, whole);
  if (closed) return closed;
  const sum = classing.classed.reduce((total, bale) => total + bale.valueUsd, 0);
  return procedure(
    [
      step('balesPressed', count(bales), atStation('classing')),
      step('meanBale', usd(sum / bales, 2), atStation('classing')),
    ],
    usd(key === 'lint' ? sum : whole, 0),
  );
}
