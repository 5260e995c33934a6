import { presentMoney } from '../../model/classing/money-facts.ts';
import { oilMillFacts } from '../../model/gin/facts.ts';
import { crushSeed, paidSeedKg } from '../../model/gin/seed.ts';
import { totalKg } from '../../model/lot.ts';
import { kilogramsFromPounds, POUNDS_PER_STATISTICAL_BALE } from '../../model/units.ts';
import type { SeedKey } from '../../workings/seed.ts';
import { mass, money, number, workedLine } from './amounts.ts';
import { farmNamed, type Question } from './question.ts';

const farm = farmNamed('coastal-plain');
const keys: readonly SeedKey[] = ['seedKg', 'oilKg', 'mealKg', 'hullsKg', 'lintersKg', 'lossKg'];

/** Where does all the seed go? The seed that came with one bale, and what an oil mill makes of it. */
export const whereTheSeedGoes: Question = {
  id: 'where-the-seed-goes',
  runs: [{ scenario: farm, seed: 1 }],
  answer: (seasons) => {
    const { ginning, pressing, payments } = seasons[0]!;
    const netKg = pressing?.bales.reduce((sum, bale) => sum + bale.netKg, 0) ?? 0;
    const perBale = kilogramsFromPounds(POUNDS_PER_STATISTICAL_BALE) / netKg;
    const seedKg = (ginning ? totalKg(ginning.seedHouse) : 0) * perBale;
    const split = crushSeed(seedKg);
    return {
      verdict: payments?.seedAndGin.seedPaysGin ? 'paysGin' : 'fallsShort',
      said: {
        seed: mass(seedKg),
        bale: mass(kilogramsFromPounds(POUNDS_PER_STATISTICAL_BALE)),
        times: number(seedKg / kilogramsFromPounds(POUNDS_PER_STATISTICAL_BALE), 2),
        oil: mass(split.oilKg),
        meal: mass(split.mealKg),
        hulls: mass(split.hullsKg),
        linters: mass(split.lintersKg),
        credit: money((payments?.seedAndGin.seedCreditUsd ?? 0) * perBale),
        charge: money((payments?.seedAndGin.ginChargeUsd ?? 0) * perBale),
        paid: mass((ginning ? paidSeedKg(ginning.seedHouse) : 0) * perBale),
      },
      sides: seasons,
      compare: null,
      shown: keys.map((key) => workedLine(key, seasons, () => ({ topic: 'seed', key }))),
    };
  },
  decidedBy: [
    { name: 'oilShare', fact: oilMillFacts.oil },
    { name: 'mealShare', fact: oilMillFacts.meal },
    { name: 'linterShare', fact: oilMillFacts.linters },
    { name: 'seedPrice', fact: presentMoney.seedUsdPerTon },
  ],
  station: 'ginning',
};
