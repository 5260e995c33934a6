import { fibreFacts } from '../../model/field/facts.ts';
import { withDecision } from '../changed-decisions.ts';
import { counted, lines, mass, money, number, way } from './amounts.ts';
import { howOften, pairedDifference, pairedRuns } from './many-seasons.ts';
import { farmNamed, type Question } from './question.ts';

const farm = farmNamed('coastal-plain');
const openPercent = { station: 'boll', key: 'openPercent' } as const;
const forty = withDecision(farm, openPercent, 40);
const eighty = withDecision(farm, openPercent, 80);

/** Pick at 40 or at 80 per cent open? The harvest aid given at either, over some seasons of weather. */
export const fortyOrEighty: Question = {
  id: 'forty-or-eighty',
  runs: pairedRuns((seed) => [
    { scenario: forty, seed },
    { scenario: eighty, seed },
  ]),
  answer: (seasons) => {
    const left = pairedDifference(seasons, 'leftToFarmUsd');
    const bale = pairedDifference(seasons, 'usdPerBale');
    const lint = pairedDifference(seasons, 'lintKg');
    const micronaire = pairedDifference(seasons, 'micronaire');
    const sides = seasons.slice(0, 2);
    return {
      verdict: howOften(left),
      said: {
        seasons: counted(left.count, 'season'),
        late: counted(left.above, 'season'),
        money: money(Math.abs(left.mean)),
        least: money(left.least),
        most: money(left.most),
        lint: mass(Math.abs(lint.mean)),
        lintWay: way(lint.mean, 'amount'),
        cheaper: counted(bale.count - bale.above, 'season'),
        micronaire: number(Math.abs(micronaire.mean), 1),
        micronaireWay: way(micronaire.mean, 'move'),
      },
      sides,
      compare: { before: { scenario: forty, seed: 1 }, after: { scenario: eighty, seed: 1 } },
      shown: [
        lines.left(sides),
        lines.bales(sides),
        lines.lintPerBale(sides),
        lines.micronaire(sides),
        lines.colour(sides),
      ],
    };
  },
  decidedBy: [{ name: 'graying', fact: fibreFacts.rdPerInchOfRain }],
  station: 'boll',
};
