import type { Words } from '../../language/words.ts';
import { oneBoll } from '../../lessons/one-boll.ts';
import { totalKg } from '../../model/lot.ts';
import type { Season } from '../../model/season.ts';
import { seasonOutcomes } from '../../model/season-outcomes.ts';
import { MM_PER_INCH } from '../../model/units.ts';

/** The six stops of the guided two minutes, in order; each is shown at its station. */
export const guidedOrder = ['boll', 'harvest', 'ginning', 'pressing', 'spinning', 'sewing'] as const;

/** What comes off the saw, kg, and the bales it makes. */
export const ginned = (season: Season) => {
  const { lintKg, seedKg, bales } = seasonOutcomes(season);
  return { lintKg: lintKg ?? 0, seedKg: seedKg ?? 0, bales: Math.max(1, bales ?? 0) };
};

const hundred = 100;

/** A count that nobody could make is said in round figures: two of them. */
const round = (value: number): number => {
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(1, value))) - 1);
  return Math.round(value / unit) * unit;
};

/** Bolls picked in the whole field: as many as share out its cloth in patches of one boll. */
const bollsPicked = (season: Season): number => {
  const { squareMetres, patchInchesPerBoll } = season.sewing!;
  return squareMetres / ((patchInchesPerBoll! * MM_PER_INCH) / 1000) ** 2;
};

/**
 * The numbers a stop's sentence names, written out.
 * @throws Error where the season made no cloth: such a season is not shown
 */
export function stopFigures(season: Season, { formats }: Words): Readonly<Record<string, string>> {
  const boll = oneBoll(season);
  const { lintKg, seedKg, bales } = ginned(season);
  const { seedsPerBoll } = season.field.variety;
  const loadKg = season.harvest ? totalKg(season.harvest.lot) : 0;
  return {
    seeds: formats.plain(seedsPerBoll).text,
    fibers: formats.plain(round(boll.fibres / seedsPerBoll)).text,
    mass: formats.mass(loadKg / season.scenario.acres, 0).text,
    lintOf: formats.pounds((hundred * lintKg) / seedKg).text,
    seedOf: formats.pounds(hundred).text,
    seed: formats.mass(round(seedKg / bales), 0).text,
    bolls: formats.plain(round(bollsPicked(season) / bales)).text,
    bales: formats.plain(bales).text,
    yards: formats.clothLength(boll.yarnYards, 0).text,
    size: formats.length(boll.patchInches, 1).text,
  };
}
