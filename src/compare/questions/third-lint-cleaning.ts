import { lintCleanerStages } from '../../model/gin/machine-facts.ts';
import { withDecision } from '../changed-decisions.ts';
import { counted, lines, mass, money, points, way } from './amounts.ts';
import { howOften, pairedDifference, pairedRuns, type Spread } from './many-seasons.ts';
import { farmNamed, type Question } from './question.ts';

const two = farmNamed('coastal-plain');
const three = withDecision(two, { station: 'ginning', key: 'lintCleaners' }, 3);
const [, , third] = lintCleanerStages;

/** Would a third lint cleaning pay? The same crops cleaned twice and three times, over some seasons of weather. */
export const thirdLintCleaning: Question = {
  id: 'third-lint-cleaning',
  runs: pairedRuns((seed) => [
    { scenario: two, seed },
    { scenario: three, seed },
  ]),
  answer: (seasons) => {
    const [left, bale, lint, leaf, short] = (
      ['leftToFarmUsd', 'usdPerBale', 'lintKg', 'leafGrade', 'shortFibrePercent'] as const
    ).map((key) => pairedDifference(seasons, key)) as [Spread, Spread, Spread, Spread, Spread];
    const sides = seasons.slice(0, 2);
    return {
      verdict: howOften(left),
      said: {
        seasons: counted(left.count, 'season'),
        pays: counted(left.above, 'season'),
        money: money(Math.abs(left.mean)),
        moneyWay: way(left.mean, 'amount'),
        bale: money(Math.abs(bale.mean), 2),
        baleWay: way(bale.mean, 'amount'),
        lint: mass(Math.abs(lint.mean)),
        lintWay: way(lint.mean, 'amount'),
        leaf: counted(Math.abs(leaf.mean), 'leafGrade', 1),
        leafWay: way(-leaf.mean, 'grade'),
        short: points(Math.abs(short.mean)),
        shortWay: way(short.mean, 'move'),
      },
      sides,
      compare: { before: { scenario: two, seed: 1 }, after: { scenario: three, seed: 1 } },
      shown: [
        lines.left(sides),
        lines.lintPerBale(sides),
        lines.bales(sides),
        lines.leaf(sides),
        lines.staple(sides),
        lines.shortFibre(sides),
      ],
    };
  },
  decidedBy: [
    { name: 'lintLost', fact: third.lintLost },
    { name: 'trashTaken', fact: third.trashFactor },
  ],
  station: 'ginning',
};
