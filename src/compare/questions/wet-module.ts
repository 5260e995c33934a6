import { harvestFacts } from '../../model/harvest/facts.ts';
import { colourFacts } from '../../model/module/facts.ts';
import { usualColour } from '../../model/season-outcomes.ts';
import { withDecision } from '../changed-decisions.ts';
import { counted, lines, money, percent, way } from './amounts.ts';
import { howOften, pairedDifference, pairedRuns, spreadOf } from './many-seasons.ts';
import { farmNamed, type Question } from './question.ts';

const dry = farmNamed('coastal-plain');
const wet = withDecision(dry, { station: 'harvest', key: 'moisturePercent' }, 13);

/** What does a wet module cost? The same crops picked dry and picked in the dew, both stored as long under a sound cover. */
export const wetModule: Question = {
  id: 'wet-module',
  runs: pairedRuns((seed) => [
    { scenario: dry, seed },
    { scenario: wet, seed },
  ]),
  answer: (seasons) => {
    const left = pairedDifference(seasons, 'leftToFarmUsd');
    const bale = pairedDifference(seasons, 'usdPerBale');
    const sides = seasons.slice(0, 2);
    const wetOnes = seasons.filter((_, i) => i % 2 === 1);
    const moisture = (parity: number) =>
      spreadOf(seasons.filter((_, i) => i % 2 === parity).map(({ harvest }) => harvest?.moisturePercent ?? 0)).mean;
    return {
      verdict: { never: 'always', sometimes: 'sometimes', always: 'never' }[howOften(left)],
      said: {
        seasons: counted(left.count, 'season'),
        costs: counted(left.count - left.above, 'season'),
        dry: percent(moisture(0), 0),
        wet: percent(moisture(1), 0),
        days: { as: 'count', value: dry.decisions.module.storageDays },
        money: money(Math.abs(left.mean)),
        moneyWay: way(left.mean, 'amount'),
        bale: money(Math.abs(bale.mean), 2),
        baleWay: way(bale.mean, 'amount'),
        yellowing: percent(100 * spreadOf(wetOnes.map(({ module }) => module?.yellowing ?? 0)).mean, 0),
        dryColor: { as: 'text', text: usualColour(sides[0]!) ?? '' },
        wetColor: { as: 'text', text: usualColour(sides[1]!) ?? '' },
        limit: percent(harvestFacts.storableMoisturePercent.value, 0),
      },
      sides,
      compare: { before: { scenario: dry, seed: 1 }, after: { scenario: wet, seed: 1 } },
      shown: [
        lines.moisture(sides),
        lines.hottestCore(sides),
        lines.yellowing(sides),
        lines.colour(sides),
        lines.lintPerBale(sides),
        lines.left(sides),
      ],
    };
  },
  decidedBy: [
    { name: 'yellowsAbove', fact: colourFacts.yellowsAbovePercent },
    { name: 'yellowing', fact: colourFacts.yellowingPerPointDay },
    { name: 'spindleWater', fact: harvestFacts.spindleWettingPoints },
  ],
  station: 'module',
};
