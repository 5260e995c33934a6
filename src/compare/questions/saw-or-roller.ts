import { presentMoney } from '../../model/classing/money-facts.ts';
import { machineBreakagePerMm } from '../../model/length/facts.ts';
import { type SeasonOutcomes, seasonOutcomes } from '../../model/season-outcomes.ts';
import { withDecision } from '../changed-decisions.ts';
import { lines, mass, money, percent, way } from './amounts.ts';
import { farmNamed, type Question } from './question.ts';

const roller = farmNamed('long-staple-valley');
const saw = withDecision(
  withDecision(roller, { station: 'ginning', key: 'stand' }, 'saw'),
  { station: 'ginning', key: 'lintCleaner' },
  'saw',
);

const sure = (outcomes: SeasonOutcomes, key: keyof SeasonOutcomes): number => outcomes[key] ?? 0;

/** Saw or roller for long staple? One crop of Pima through either gin. */
export const sawOrRoller: Question = {
  id: 'saw-or-roller',
  runs: [
    { scenario: saw, seed: 1 },
    { scenario: roller, seed: 1 },
  ],
  answer: (seasons) => {
    const [sawn, rolled] = [seasonOutcomes(seasons[0]!), seasonOutcomes(seasons[1]!)];
    const gain = (key: keyof SeasonOutcomes) => sure(rolled, key) - sure(sawn, key);
    const longer = gain('lengthMm') > 0;
    return {
      verdict: longer === gain('leftToFarmUsd') > 0 ? (longer ? 'roller' : 'saw') : 'mixed',
      said: {
        sawLength: { as: 'fibreLength', value: sure(sawn, 'lengthMm') },
        rollerLength: { as: 'fibreLength', value: sure(rolled, 'lengthMm') },
        sawShort: percent(sure(sawn, 'shortFibrePercent')),
        rollerShort: percent(sure(rolled, 'shortFibrePercent')),
        lengthWay: way(gain('lengthMm'), 'length'),
        lint: mass(Math.abs(gain('lintKg'))),
        lintWay: way(gain('lintKg'), 'amount'),
        money: money(Math.abs(gain('leftToFarmUsd'))),
        moneyWay: way(gain('leftToFarmUsd'), 'amount'),
        loanYear: { as: 'text', text: String(presentMoney.pimaLoanYear.value) },
      },
      sides: seasons,
      compare: { before: { scenario: saw, seed: 1 }, after: { scenario: roller, seed: 1 } },
      shown: [
        lines.length(seasons),
        lines.shortFibre(seasons),
        lines.turnout(seasons),
        lines.leaf(seasons),
        lines.lintPerBale(seasons),
        lines.left(seasons),
      ],
    };
  },
  decidedBy: [
    { name: 'sawBreaks', fact: machineBreakagePerMm.sawStand },
    { name: 'rollerBreaks', fact: machineBreakagePerMm.rollerStand },
  ],
  station: 'ginning',
};
