import { classOne } from '../../model/classing/class-card.ts';
import { markets } from '../../model/classing/markets.ts';
import { limitFacts } from '../../model/mill/facts.ts';
import { stapleLimitNe } from '../../model/mill/limits.ts';
import type { Season } from '../../model/season.ts';
import { POUNDS_PER_STATISTICAL_BALE, THIRTY_SECONDS_PER_INCH } from '../../model/units.ts';
import { withDecision } from '../changed-decisions.ts';
import { counted, lines, money, number, workedLine } from './amounts.ts';
import { farmNamed, type Question } from './question.ts';

const farm = farmNamed('coastal-plain');
const longer = withDecision(farm, { station: 'planting', key: 'variety' }, 'uplandLong');

/**
 * What one staple more is worth on a statistical bale of a season's mean cotton, USD, in each market.
 * @throws RangeError where no bale was classed
 */
function worthUsd({ classing }: Season): { readonly market: string; readonly usd: number }[] {
  if (!classing) throw new RangeError('no bale was classed');
  const { lotReading } = classing;
  return Object.values(markets).map(({ id }) => {
    const value = (lengthIn: number) =>
      classOne({
        ...lotReading,
        lengthIn,
        kind: 'upland',
        leaf: lotReading,
        market: id,
        netLb: POUNDS_PER_STATISTICAL_BALE,
      }).valueUsd;
    return { market: id, usd: value(lotReading.lengthIn + 1 / THIRTY_SECONDS_PER_INCH) - value(lotReading.lengthIn) };
  });
}

/** One staple longer, so what? A bale of this season's cotton, and the same a thirty-second of an inch longer. */
export const oneStaple: Question = {
  id: 'one-staple',
  runs: [
    { scenario: farm, seed: 1 },
    { scenario: longer, seed: 1 },
  ],
  answer: (seasons) => {
    const season = seasons[0]!;
    const worth = worthUsd(season).map(({ usd }) => usd);
    const [least, most] = [Math.min(...worth), Math.max(...worth)];
    const reading = season.classing!.lotReading;
    const fibre = season.classing!.lot.fibre;
    const finest = (lengthIn: number) =>
      stapleLimitNe((lengthIn * reading.uniformityPercent) / 100, fibre.linearDensityMtex);
    const now = finest(reading.lengthIn);
    return {
      verdict: most < 1 ? 'nothing' : least < 1 ? 'somewhere' : 'everywhere',
      said: {
        staple: {
          as: 'text',
          text: `${Math.round(reading.lengthIn * THIRTY_SECONDS_PER_INCH)}/${THIRTY_SECONDS_PER_INCH}`,
        },
        least: money(least, 2),
        most: money(most, 2),
        markets: number(worth.length),
        none: counted(worth.filter((usd) => usd < 1).length, 'market'),
        finestNow: { as: 'yarnCount', value: Math.round(now) },
        finestThen: { as: 'yarnCount', value: Math.round(finest(reading.lengthIn + 1 / THIRTY_SECONDS_PER_INCH)) },
      },
      sides: seasons,
      compare: { before: { scenario: farm, seed: 1 }, after: { scenario: longer, seed: 1 } },
      shown: [
        lines.staple(seasons),
        lines.length(seasons),
        lines.lintPerBale(seasons),
        workedLine('limit', seasons, () => ({ topic: 'reading', station: 'spinning', key: 'limit' })),
        lines.turnout(seasons),
      ],
    };
  },
  decidedBy: [{ name: 'stapleSlope', fact: limitFacts.stapleSlopePerInch }],
  station: 'classing',
};
