import { presentMoney } from '../../../src/model/classing/money-facts.ts';
import { oilMillFacts } from '../../../src/model/gin/facts.ts';
import type { LengthDistribution } from '../../../src/model/length/length-distribution.ts';
import type { Season } from '../../../src/model/season.ts';

/*
 * Sums over what a season holds: masses of its ledgers, weights of its bales, its fibres one length at a time. Constants of
 * the model come in as values; none of the functions that the answers are read with.
 */

/** Exact: the international pound of 1959. */
export const lbPerKg = 1 / 0.45359237;
export const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
export const mean = (values: readonly number[]): number => sum(values) / values.length;

type Heap = {
  readonly dryKg: Readonly<Record<string, number>>;
  readonly waterKg: number | Readonly<Record<string, number>>;
};
/** Water of a heap, kg, whether kept by group or in one. */
export const waterOf = ({ waterKg }: Heap): number =>
  sum(typeof waterKg === 'number' ? [waterKg] : Object.values(waterKg));
export const dryOf = ({ dryKg }: Heap): number => sum(Object.values(dryKg));
export const kgOf = (heap: Heap): number => dryOf(heap) + waterOf(heap);

/** The lines of one account of one station's ledger. */
export const entriesOf = ({ ledgers }: Season, station: string, side: 'in' | 'out', account: string): readonly Heap[] =>
  ledgers.find((ledger) => ledger.station === station)![side].filter((entry) => entry.account === account);
export const accountKg = (season: Season, station: string, account: string): number =>
  sum(entriesOf(season, station, 'out', account).map(kgOf));

/** Net lint of the bales, lb. */
export const netLb = ({ pressing }: Season): number => sum(pressing!.bales.map(({ netKg }) => netKg * lbPerKg));

/** What each bale was sold for, USD: pounds paid times base price and points, each ended at a hundredth of a cent. */
export const baleUsd = ({ classing }: Season): number[] =>
  classing!.classed.map(({ paidLb, baseCentsPerLb, points }) => {
    const cents = Math.max(0, Math.round(100 * baseCentsPerLb + sum(points.map((line) => line.points))) / 100);
    return Math.round(paidLb * cents) / 100;
  });

/** Gin-run seed that is paid for, lb: all its dry matter, and water up to a moisture of so much per cent. */
export function paidSeedLb(season: Season): number {
  const seed = entriesOf(season, 'ginning', 'out', 'seedHouse');
  const dryKg = sum(seed.map(dryOf));
  const moist = oilMillFacts.seedPaidToPercent.value / 100;
  return Math.min(sum(seed.map(kgOf)), dryKg / (1 - moist)) * lbPerKg;
}

/** A settlement of today, USD, line by line: lint and seed less ginning by the 480 lb and a fee for each bale. */
export function settlementUsd(season: Season) {
  const lint = sum(baleUsd(season));
  const seed = (paidSeedLb(season) * presentMoney.seedUsdPerTon.value) / 2000;
  const ginning = (netLb(season) / 480) * presentMoney.ginChargeUsdPer480Lb.value;
  const classing = season.pressing!.bales.length * presentMoney.classFeeUsdPerBale.value;
  return { lint, seed, ginning, classing, left: lint + seed - ginning - classing };
}
export const leftUsd = (season: Season): number => settlementUsd(season).left;
export const usdPerBale = (season: Season): number => mean(baleUsd(season));

/** Fibres shorter than half an inch, per cent by weight: a fibre kept at 12.5 mm stands for those from 12.25 to 12.75. */
export function shortPercent(lengths: LengthDistribution): number {
  const weights = [...lengths].map((fibres, i) => fibres * (i + 1) * 0.5);
  const short = weights.map((weight, i) => {
    const from = (i + 1) * 0.5 - 0.25;
    return weight * Math.min(1, Math.max(0, (12.7 - from) / 0.5));
  });
  return (100 * sum(short)) / sum(weights);
}
/** The fibre behind a place of the chain. */
export const fibreAfter = ({ fibreTrail }: Season, place: string) =>
  fibreTrail.find(({ after }) => after === place)!.fibre;

/** Micronaire by halving: the reading at which Lord's polynomial gives fineness times maturity (Lord 1956). */
export function micronaireByHalving(mtexTimesMaturity: number): number {
  let [low, high] = [0, 20];
  for (let i = 0; i < 60; i++) {
    const x = (low + high) / 2;
    if (3.86 * x * x + 18.16 * x + 13 < mtexTimesMaturity) low = x;
    else high = x;
  }
  return low;
}

/** How often something is so, as the answers name it. */
export const verdictOf = (wins: readonly boolean[]): 'always' | 'sometimes' | 'never' =>
  wins.every(Boolean) ? 'always' : wins.some(Boolean) ? 'sometimes' : 'never';
