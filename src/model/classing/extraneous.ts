import type { Lot } from '../lot.ts';
import type { Random } from '../random.ts';
import { extraneousChance } from './facts.ts';

/** Extraneous matter is the one call still made by hand. */
export const extraneousKinds = ['bark', 'grass', 'prep', 'plastic', 'other'] as const;
export type ExtraneousKind = (typeof extraneousKinds)[number];
/** A call: the kind, and light (1) or heavy (2). */
export interface ExtraneousCall {
  readonly kind: ExtraneousKind;
  readonly level: 1 | 2;
}

/**
 * Share of bales called for bark. Bark comes off the stalks that strippers break, and what is left of them at the press
 * is the sticks, so the chance follows those and an extra stick machine lowers it.
 * @param lot lint at the press
 */
export function barkChance(lot: Pick<Lot, 'dryKg'>): number {
  if (lot.dryKg.lint === 0) return 0;
  const { barkAtReference, barkReferenceSticks, barkPower, barkMost } = extraneousChance;
  const sticks = lot.dryKg.sticks / lot.dryKg.lint;
  return Math.min(barkMost.value, barkAtReference.value * (sticks / barkReferenceSticks.value) ** barkPower.value);
}

/** Chance of each call on a bale of a lot. */
export function callChances(lot: Pick<Lot, 'dryKg'>): Readonly<Record<ExtraneousKind, number>> {
  const { grass, prep, plastic, other } = extraneousChance;
  return {
    bark: barkChance(lot),
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
