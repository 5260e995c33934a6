import { presentMoney } from '../../model/classing/money-facts.ts';
import { counted, lines, money, number } from './amounts.ts';
import { farmNamed, type Question } from './question.ts';

const farm = farmNamed('coastal-plain');

/** Who gets the money? The settlement of one season, a bale at a time, and what the lint of one boll was sold for. */
export const whoGetsTheMoney: Question = {
  id: 'who-gets-the-money',
  runs: [{ scenario: farm, seed: 1 }],
  answer: (seasons) => {
    const { payments, classing, field, sewing, scenario } = seasons[0]!;
    const bales = classing?.classed.length ?? 0;
    const bolls = field.bollsPerPlant * field.plantsPerAcre * scenario.acres;
    const line = (item: string) => payments?.lines.find((each) => each.item === item)?.usd ?? 0;
    return {
      verdict: payments?.seedAndGin.seedPaysGin ? 'seedPays' : 'seedFallsShort',
      said: {
        bales: counted(bales, 'bale'),
        lint: money(line('lint') / bales, 0),
        seed: money(line('seed') / bales, 2),
        ginning: money(-line('ginning') / bales, 2),
        classing: money(-line('classing') / bales, 2),
        left: money((payments?.netToFarmUsd ?? 0) / bales, 0),
        centsPerBoll: number((100 * line('lint')) / bolls, 2),
        patch: { as: 'length', value: sewing?.patchInchesPerBoll ?? 0, decimals: 1 },
        lintYear: { as: 'text', text: String(payments?.lines.find(({ item }) => item === 'lint')?.year ?? '') },
        ginYear: { as: 'text', text: String(presentMoney.ginChargeYear.value) },
        seedYear: { as: 'text', text: String(presentMoney.seedYear.value) },
      },
      sides: seasons,
      compare: null,
      shown: [
        lines.lintPerBale(seasons),
        lines.seedPerBale(seasons),
        lines.ginningPerBale(seasons),
        lines.classingPerBale(seasons),
        lines.leftPerBale(seasons),
      ],
    };
  },
  decidedBy: [
    { name: 'seedPrice', fact: presentMoney.seedUsdPerTon },
    { name: 'ginCharge', fact: presentMoney.ginChargeUsdPer480Lb },
  ],
  station: 'classing',
};
