import { climateLevers } from '../../model/field/climate-facts.ts';
import type { Season } from '../../model/season.ts';
import { rain as inches, lines, money, number, workedLine } from './amounts.ts';
import { farmNamed, type Question } from './question.ts';

const farm = farmNamed('high-plains-dryland');
/** Enough years for a good and a bad one, few enough to run at once. */
const years = 12;
const leftOf = ({ payments }: Season): number => payments?.netToFarmUsd ?? 0;

/** A good year and a bad one: one farm, nothing decided otherwise, twelve years of weather. */
export const goodAndBadYears: Question = {
  id: 'good-and-bad-years',
  runs: Array.from({ length: years }, (_, i) => ({ scenario: farm, seed: i + 1 })),
  answer: (seasons) => {
    const sorted = [...seasons].sort((a, b) => leftOf(a) - leftOf(b));
    const [worst, best] = [sorted[0]!, sorted.at(-1)!];
    const rainOn = (season: Season) => season.field.seasonWaterInches.rain;
    const times = leftOf(worst) > 0 ? leftOf(best) / leftOf(worst) : Number.NaN;
    const sides = [worst, best];
    return {
      verdict: worst.stopped?.station === 'boll' || leftOf(worst) <= 0 ? 'failed' : times >= 2 ? 'wide' : 'narrow',
      said: {
        years: number(years),
        worst: money(leftOf(worst)),
        best: money(leftOf(best)),
        middle: money((leftOf(sorted[years / 2 - 1]!) + leftOf(sorted[years / 2]!)) / 2),
        times: number(times, 1),
        worstRain: inches(rainOn(worst)),
        bestRain: inches(rainOn(best)),
        worstSeed: number(worst.seed),
        bestSeed: number(best.seed),
      },
      sides,
      compare: { before: { scenario: farm, seed: worst.seed }, after: { scenario: farm, seed: best.seed } },
      shown: [
        lines.left(sides),
        lines.bales(sides),
        workedLine('yield', sides, () => ({ topic: 'reading', station: 'boll', key: 'yield' })),
        lines.micronaire(sides),
        lines.colour(sides),
        lines.patch(sides),
      ],
    };
  },
  decidedBy: [{ name: 'thirst', fact: climateLevers.highPlains.yieldResponse }],
  station: 'planting',
};
