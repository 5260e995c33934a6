import { foreignMatterFacts, harvestFacts } from '../../model/harvest/facts.ts';
import { withDecision } from '../changed-decisions.ts';
import { counted, lines, mass, money, percent, way } from './amounts.ts';
import { howOften, pairedDifference, pairedRuns, spreadOf } from './many-seasons.ts';
import { farmNamed, type Question } from './question.ts';

const stripped = farmNamed('high-plains-dryland');
const picked = withDecision(stripped, { station: 'harvest', key: 'method' }, 'spindle');

/** Stripper or picker on a poor crop? The same dryland crops taken by spindles and by a stripper with a field cleaner. */
export const stripperOrPicker: Question = {
  id: 'stripper-or-picker',
  runs: pairedRuns((seed) => [
    { scenario: picked, seed },
    { scenario: stripped, seed },
  ]),
  answer: (seasons) => {
    const left = pairedDifference(seasons, 'leftToFarmUsd');
    const lint = pairedDifference(seasons, 'lintKg');
    const bale = pairedDifference(seasons, 'usdPerBale');
    const sides = seasons.slice(0, 2);
    const dirt = (parity: number) =>
      spreadOf(seasons.filter((_, i) => i % 2 === parity).map(({ harvest }) => harvest?.foreignMatterPercent ?? 0))
        .mean;
    return {
      verdict: howOften(left),
      said: {
        seasons: counted(left.count, 'season'),
        stripper: counted(left.above, 'season'),
        money: money(Math.abs(left.mean)),
        moneyWay: way(left.mean, 'amount'),
        lint: mass(Math.abs(lint.mean)),
        lintWay: way(lint.mean, 'amount'),
        bale: money(Math.abs(bale.mean), 2),
        baleWay: way(bale.mean, 'amount'),
        pickedDirt: percent(dirt(0), 0),
        strippedDirt: percent(dirt(1), 0),
        lintPerAcre: {
          as: 'fieldYield',
          value: spreadOf(seasons.map(({ field }) => field.crop?.lintLbPerAcre ?? 0)).mean,
        },
      },
      sides,
      compare: { before: { scenario: picked, seed: 1 }, after: { scenario: stripped, seed: 1 } },
      shown: [
        lines.left(sides),
        lines.bales(sides),
        lines.lintPerBale(sides),
        lines.foreignMatter(sides),
        lines.leftInField(sides),
        lines.staple(sides),
      ],
    };
  },
  decidedBy: [
    { name: 'hardLocks', fact: harvestFacts.hardLockFraction },
    { name: 'strippersTake', fact: harvestFacts.stripperEfficiency },
    { name: 'strippedTrash', fact: foreignMatterFacts.stripper.base },
  ],
  station: 'harvest',
};
