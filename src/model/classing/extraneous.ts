import type { Lot } from '../lot.ts';
import type { Random } from '../random.ts';
import { extraneousChance } from './facts.ts';

/** Extraneous matter is the one call still made by hand. */
const extraneousKinds = ['bark', 'grass', 'prep', 'plastic', 'other'] as const;
export type ExtraneousKind = (typeof extraneousKinds)[number];
/** A call: the kind, and light (1) or heavy (2). */
export interface ExtraneousCall {
  readonly kind: ExtraneousKind;
  readonly level: 1 | 2;
}

/**
 * Share of bales called for bark. Strippers tear it off the stalks; it stays with the sticks, so the chance follows what is
 * left of those at the press, and an extra stick machine lowers it. In proportion: an assumption.
 * @param lot lint at the press
 */
export function barkChance(lot: Pick<Lot, 'dryKg'>, stripped: boolean): number {
  if (lot.dryKg.lint === 0) return 0;
  const { barkStripped, barkPicked, sticksStripped, sticksPicked, barkMost } = extraneousChance;
  const sticks = lot.dryKg.sticks / lot.dryKg.lint;
  const chance = stripped
    ? barkStripped.value * (sticks / sticksStripped.value)
    : barkPicked.value * (sticks / sticksPicked.value);
  return Math.min(barkMost.value, chance);
}

/** Chance of each call on a bale of a lot. */
export function callChances(lot: Pick<Lot, 'dryKg'>, stripped: boolean): Readonly<Record<ExtraneousKind, number>> {
  const { grass, prep, plastic, other } = extraneousChance;
  return {
    bark: barkChance(lot, stripped),
    grass: grass.value,
    prep: prep.value,
    plastic: plastic.value,
    other: other.value,
  };
}

/** Draws one bale's calls. Always uses the same count of draws, so one kind never moves another. */
export function callExtraneous(
  chances: Readonly<Record<ExtraneousKind, number>>,
  random: Random,
): readonly ExtraneousCall[] {
  const calls: ExtraneousCall[] = [];
  for (const kind of extraneousKinds) {
    const called = random.uniform() < chances[kind];
    const heavy = random.uniform() < extraneousChance.heavy.value;
    if (called) calls.push({ kind, level: heavy ? 2 : 1 });
  }
  return calls;
}
