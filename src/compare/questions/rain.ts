import { climateOf } from '../../model/field/climates.ts';
import { fibreFacts, pickingFacts } from '../../model/field/facts.ts';
import { generateWeather } from '../../model/field/generate-weather.ts';
import { growSeason } from '../../model/field/grow-season.ts';
import type { WeatherYear } from '../../model/field/weather.ts';
import { openStream } from '../../model/random.ts';
import type { Scenario } from '../../model/scenario.ts';
import { withDecision } from '../changed-decisions.ts';
import type { Run } from '../what-made-the-difference.ts';
import { counted, rain as inches, lines, money, way } from './amounts.ts';
import { fewSeeds, howOften, pairedDifference, spreadOf } from './many-seasons.ts';
import { farmNamed, type Question } from './question.ts';

const farm = farmNamed('coastal-plain');
const waiting = withDecision(farm, { station: 'harvest', key: 'daysToHarvest' }, 35);

/** The weather of a season number on a farm, as the season itself makes it. */
const weatherOf = ({ climate }: Scenario, seed: number): WeatherYear =>
  generateWeather(climateOf(climate), openStream(seed, 'weather'));

/** The first day on which some boll is open, and so can be rained on; the year's end where none opens. */
function firstOpenDay({ climate, era, acres, soilWaterMm, decisions }: Scenario, weather: WeatherYear): number {
  const { planting, bloom, boll, harvest } = decisions;
  const { events } = growSeason(
    { climate, era, acres, soilWaterMm, ...planting, ...bloom, ...boll, ...harvest },
    weather,
  );
  return events.firstOpenBoll ?? weather.days.length;
}

/** The same year without a drop from the day on which the first boll opens. */
export function dryAfterOpening(scenario: Scenario, weather: WeatherYear): WeatherYear {
  const from = firstOpenDay(scenario, weather);
  return {
    ...weather,
    days: weather.days.map((day) => (day.dayOfYear < from ? day : { ...day, rainInches: 0 })),
  };
}

/** What did the rain cost? Each season beside itself, dry from the first open boll on. */
export const rain: Question = {
  id: 'rain',
  runs: fewSeeds.flatMap((seed): Run[] => [
    { scenario: farm, seed, record: dryAfterOpening(farm, weatherOf(farm, seed)) },
    { scenario: farm, seed },
  ]),
  answer: (seasons) => {
    const left = pairedDifference(seasons, 'leftToFarmUsd');
    const bale = pairedDifference(seasons, 'usdPerBale');
    const fallen = spreadOf(
      seasons.filter((_, i) => i % 2 === 1).map((s) => s.field.crop?.rainAfterOpeningInches ?? 0),
    );
    const dryLeft = seasons.filter((_, i) => i % 2 === 0).map(({ payments }) => payments?.netToFarmUsd ?? 0);
    const sides = seasons.slice(0, 2);
    const share = (-100 * left.mean * left.count) / dryLeft.reduce((sum, usd) => sum + usd, 0);
    return {
      // It cost in every season where the difference is never above nought.
      verdict: { never: 'always', sometimes: 'sometimes', always: 'never' }[howOften(left)],
      said: {
        seasons: counted(left.count, 'season'),
        rain: inches(fallen.mean),
        cost: money(-left.mean),
        least: money(-left.most),
        most: money(-left.least),
        share: { as: 'percent', value: share, decimals: 1 },
        bale: money(Math.abs(bale.mean), 2),
        baleWay: way(bale.mean, 'amount'),
      },
      sides,
      // No decision makes the sky dry; the nearest is to leave the open bolls standing in it longer.
      compare: { before: { scenario: farm, seed: 1 }, after: { scenario: waiting, seed: 1 } },
      shown: [
        lines.left(sides),
        lines.lintPerBale(sides),
        lines.colour(sides),
        lines.weathered(sides),
        lines.bales(sides),
      ],
    };
  },
  decidedBy: [
    { name: 'graying', fact: fibreFacts.rdPerInchOfRain },
    { name: 'washedOut', fact: pickingFacts.lintLostPerInchOfRain },
  ],
  station: 'harvest',
};
