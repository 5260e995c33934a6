import type { BollClock } from './climate-facts.ts';
import { bollFacts, fibreFacts, stageFacts } from './facts.ts';
import { dd60, hu8655 } from './heat.ts';
import type { WeatherYear } from './weather.ts';

/** Running sums of the weather since planting, by day since planting; each includes its own day. */
export interface SeasonHeat {
  readonly firstDay: number;
  readonly dd60: Float64Array;
  readonly hu8655: Float64Array;
  /** The clock of the boll, days: 45 from flower to opening. No day gives more than its share of the fewest days. */
  readonly bollAge: Float64Array;
  readonly meanF: Float64Array;
  /** Mean temperature's effect on filling, as a relative gain or loss. */
  readonly fillGain: Float64Array;
  readonly coldNights: Float64Array;
  readonly rainInches: Float64Array;
  /** Water stress, 0 to 1 a day, and water used and given, mm; filled as the season runs. */
  readonly stress: Float64Array;
  readonly usedMm: Float64Array;
  readonly irrigatedMm: Float64Array;
}

/** Gain in wall thickness that a day of this mean temperature brings, against the reference. */
function fillGainOf(meanF: number): number {
  const { fillReferenceF, fillPerF, fillBestF, fillLostHotPerF } = bollFacts;
  const warm = Math.min(meanF, fillBestF.value) - fillReferenceF.value;
  return fillPerF.value * warm - fillLostHotPerF.value * Math.max(0, meanF - fillBestF.value);
}

/** The sums of a season of `days` days from planting, bolls ripening by the heat unit of their region. */
export function seasonHeat(weather: WeatherYear, firstDay: number, days: number, clock: BollClock): SeasonHeat {
  const numbers = () => new Float64Array(days);
  const heat: SeasonHeat = {
    firstDay,
    dd60: numbers(),
    hu8655: numbers(),
    bollAge: numbers(),
    meanF: numbers(),
    fillGain: numbers(),
    coldNights: numbers(),
    rainInches: numbers(),
    stress: numbers(),
    usedMm: numbers(),
    irrigatedMm: numbers(),
  };
  const { openDd60, openHu8655, openDays, matureAgeDays } = stageFacts;
  for (let i = 0; i < days; i++) {
    const { maxF, minF, rainInches } = weather.days[firstDay - 1 + i]!;
    const today = dd60(maxF, minF);
    const add = (sums: Float64Array, amount: number) => {
      sums[i] = (i > 0 ? sums[i - 1]! : 0) + amount;
    };
    const meanF = (maxF + minF) / 2;
    add(heat.dd60, today);
    add(heat.hu8655, hu8655(maxF, minF));
    const done = clock === 'hu8655' ? hu8655(maxF, minF) / openHu8655.value : today / openDd60.value;
    add(heat.bollAge, matureAgeDays.value * Math.min(1 / openDays.value, done));
    add(heat.meanF, meanF);
    add(heat.fillGain, fillGainOf(meanF));
    add(heat.coldNights, minF < fibreFacts.coldNightF.value ? 1 : 0);
    add(heat.rainInches, rainInches);
  }
  return heat;
}

/** Sum over the days after `from` up to and including `to`. */
export const sumBetween = (sums: Float64Array, from: number, to: number): number =>
  sums[to]! - (from < 0 ? 0 : sums[from]!);

/** Share of days in a window, or its mean; 0 for an empty window. */
export const meanBetween = (sums: Float64Array, from: number, to: number): number =>
  to > from ? sumBetween(sums, from, to) / (to - from) : 0;
