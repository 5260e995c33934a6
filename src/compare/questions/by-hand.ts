import { thirtiesMoney } from '../../model/classing/money-facts.ts';
import { harvestFacts } from '../../model/harvest/facts.ts';
import { MINUTES_PER_HOUR } from '../../model/units.ts';
import { counted, lines, money, percent } from './amounts.ts';
import { farmNamed, type Question } from './question.ts';

const then = farmNamed('hand-picked-1930s');
const now = farmNamed('coastal-plain');

/** By hand in the 1930s: the days it took to pick a bale, what they were paid, and the machine's minutes today. */
export const byHand: Question = {
  id: 'by-hand',
  runs: [
    { scenario: then, seed: 1 },
    { scenario: now, seed: 1 },
  ],
  answer: (seasons) => {
    const [old, present] = [seasons[0]!, seasons[1]!];
    const bales = ({ classing }: (typeof seasons)[number]) => classing?.classed.length ?? 0;
    const paid = -(old.payments?.lines.find(({ item }) => item === 'picking')?.usd ?? 0);
    const lint = old.payments?.lines.find(({ item }) => item === 'lint')?.usd ?? 0;
    const days = old.harvest?.labour.personDays ?? 0;
    const minutes = ((present.harvest?.labour.machineHours ?? 0) * MINUTES_PER_HOUR) / bales(present);
    return {
      verdict: paid / lint > 1 / 4 ? 'muchOfIt' : 'littleOfIt',
      said: {
        days: counted(days / bales(old), 'personDay', 1),
        pounds: { as: 'pounds', value: harvestFacts.handPoundsPerDay.value },
        rate: money(thirtiesMoney.pickingUsdPerCwt.value, 2),
        dayPay: money(paid / days, 2),
        balePay: money(paid / bales(old), 2),
        share: percent((100 * paid) / lint, 0),
        minutes: counted(minutes, 'minute'),
        area: { as: 'area', value: then.acres },
        year: { as: 'text', text: String(thirtiesMoney.cropYear.value) },
      },
      sides: seasons,
      compare: { before: { scenario: then, seed: 1 }, after: { scenario: now, seed: 1 } },
      shown: [
        lines.personDays(seasons),
        lines.machineHours(seasons),
        lines.bales(seasons),
        lines.pickingPerBale(seasons),
        lines.lintPerBale(seasons),
        lines.foreignMatter(seasons),
      ],
    };
  },
  decidedBy: [
    { name: 'handPounds', fact: harvestFacts.handPoundsPerDay },
    { name: 'pickingRate', fact: thirtiesMoney.pickingUsdPerCwt },
    { name: 'pickerAcres', fact: harvestFacts.pickerAcresPerHour },
  ],
  station: 'harvest',
};
