import type { Fact } from '../model/fact.ts';
import { harvestFacts } from '../model/harvest/facts.ts';
import type { Season } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import { poundsFromKilograms } from '../model/units.ts';

/** What people in the trade say, beside what is in print and what the model gives. */
export interface Practice {
  readonly id: PracticeId;
  readonly station: StationId;
  readonly unit:
    | 'lb'
    | 'lbPerDay'
    | 'usdPerHundredPounds'
    | 'shortTons'
    | 'bales'
    | 'dayOfYear'
    | 'usd'
    | 'cents'
    | 'sides'
    | 'none';
  /** Told, not printed: common practice without a source. Null where what they say is not a number. */
  readonly told: readonly [low: number, high: number] | null;
  /** The figure in print, where there is one; from memory where its mark says so. */
  readonly printed: Pick<Fact, 'range' | 'source' | 'mark'> | null;
  /** The model's figure of this season; null where it has none. */
  readonly ours: (season: Season) => number | null;
}

export type PracticeId =
  | 'grossBale'
  | 'sack'
  | 'pickingRate'
  | 'pickingPay'
  | 'seedTruck'
  | 'balesPerTruck'
  | 'plantingDate'
  | 'firstBloom'
  | 'lastPicking'
  | 'baleValue'
  | 'premium'
  | 'sampledSides'
  | 'seedBought';

/** What is told is round, so our figure beside it is given to a tenth. */
export const toldTenth = (value: number): number => Math.round(value * 10) / 10;

const mean = (values: readonly number[]): number | null =>
  values.length > 0 ? values.reduce((sum, value) => sum + value, 0) / values.length : null;
const none = () => null;
const day = (month: number, date: number): number => {
  const before = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
  return (before[month - 1] ?? 0) + date;
};
const midSouth = (season: Season) => season.scenario.climate === 'midSouth';

/** Good quality, as a practitioner would say it: the better quarter of the bales, in the market whose table is printed beside. */
const premiums = ({ classing, scenario }: Season): number | null => {
  if (scenario.decisions.classing.market !== 'southeast' || scenario.era !== 'present') return null;
  const points = (classing?.classed ?? []).map(({ premiumPoints }) => premiumPoints).sort((a, b) => b - a);
  const best = mean(points.slice(0, Math.ceil(points.length / 4)));
  return best === null ? null : best / 100;
};

export const practices: readonly Practice[] = [
  {
    id: 'seedBought',
    station: 'planting',
    unit: 'none',
    told: null,
    printed: null,
    ours: none,
  },
  {
    id: 'plantingDate',
    station: 'planting',
    unit: 'dayOfYear',
    told: [day(4, 20), day(5, 31)],
    printed: {
      range: [day(4, 15), day(5, 20)],
      source: 'half of Mississippi planted on 1 May, five-year average (Mississippi Crop Weather, 2005)',
      mark: 'published',
    },
    ours: (season) => (midSouth(season) ? season.field.plantedDay : null),
  },
  {
    id: 'firstBloom',
    station: 'bloom',
    unit: 'dayOfYear',
    told: [day(6, 15), day(7, 10)],
    printed: {
      range: [day(6, 15), day(7, 10)],
      source: '55 to 70 days after planting; bolls set on 8 % on 25 June (Mississippi Crop Weather, 2004-2006)',
      mark: 'derived',
    },
    ours: (season) => (midSouth(season) ? season.field.events.firstFlower : null),
  },
  {
    id: 'lastPicking',
    station: 'harvest',
    unit: 'dayOfYear',
    told: [day(9, 1), day(11, 10)],
    printed: {
      range: [day(9, 1), day(11, 15)],
      source: '18 % harvested on 19 September, five-year average (Mississippi Crop Weather, 2004)',
      mark: 'published',
    },
    ours: (season) => (midSouth(season) ? (season.field.harvestDays.at(-1) ?? null) : null),
  },
  {
    id: 'sack',
    station: 'harvest',
    unit: 'lb',
    told: [100, 100],
    printed: {
      range: [100, 100],
      source: 'about a hundred pounds a sack (pickers of Kentucky, in the Hickman County Gazette, 9 August 1990)',
      mark: 'published',
    },
    ours: none,
  },
  {
    id: 'pickingRate',
    station: 'harvest',
    unit: 'lbPerDay',
    told: [200, 300],
    printed: {
      range: [200, 500],
      source: harvestFacts.handPoundsPerDay.source,
      mark: 'published',
    },
    ours: ({ scenario }) => (scenario.decisions.harvest.method === 'hand' ? harvestFacts.handPoundsPerDay.value : null),
  },
  {
    id: 'pickingPay',
    station: 'harvest',
    unit: 'usdPerHundredPounds',
    told: [3, 3],
    printed: {
      range: [3, 3.2],
      source: '$45.00 a bale by hand in California, 1949, on 1,400 to 1,500 lb of seed cotton',
      mark: 'derived',
    },
    ours: none,
  },
  {
    id: 'seedTruck',
    station: 'ginning',
    unit: 'shortTons',
    told: [10, 12],
    printed: { range: [20, 25], source: 'a long trailer, 44,000 to 48,000 lb', mark: 'memory' },
    ours: none,
  },
  {
    id: 'grossBale',
    station: 'pressing',
    unit: 'lb',
    told: [489, 503],
    printed: {
      range: [480, 507],
      source:
        '480 to 500 lb net and 2 to 7 lb of wrap and ties (National Cotton Council, bale packaging specifications)',
      mark: 'published',
    },
    ours: ({ pressing, scenario }) =>
      scenario.era === 'present'
        ? mean((pressing?.bales ?? []).map(({ grossKg }) => poundsFromKilograms(grossKg)))
        : null,
  },
  {
    id: 'sampledSides',
    station: 'classing',
    unit: 'sides',
    told: [2, 2],
    printed: {
      range: [2, 2],
      source: 'at least 4 oz from each side (USDA AMS, Agricultural Handbook 566)',
      mark: 'published',
    },
    ours: none,
  },
  {
    id: 'balesPerTruck',
    station: 'pressing',
    unit: 'bales',
    told: [100, 100],
    printed: { range: [83, 96], source: '44,000 lb at about 504 lb gross is 87', mark: 'memory' },
    ours: none,
  },
  {
    id: 'premium',
    station: 'classing',
    unit: 'cents',
    told: [3, 4],
    printed: {
      range: [2.75, 3.25],
      source:
        '3.00 cents for 31-3-36, micronaire 4.4, strength 30.5 (USDA AMS spot quotations, Southeast, 26 May 2023)',
      mark: 'published',
    },
    ours: premiums,
  },
  {
    id: 'baleValue',
    station: 'classing',
    unit: 'usd',
    told: [300, 500],
    printed: {
      range: [298, 438],
      source:
        'upland averages, 62.10 cents for the crop of 2009 to June and 91.23 for that of 2011 to February (Plains Cotton Growers, cotton news, August 2010 and April 2012), on a 480-lb bale',
      mark: 'derived',
    },
    ours: ({ classing, scenario }) =>
      scenario.era === 'present' ? mean((classing?.classed ?? []).map(({ valueUsd }) => valueUsd)) : null,
  },
];
