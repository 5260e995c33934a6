import { expect, test } from 'vitest';
import { checkCard, type TypedCard } from '../../../src/model/classing/check-card.ts';
import { problemLine } from '../../../src/model/problem.ts';

const good: TypedCard = {
  kind: 'upland',
  lengthIn: 1.12,
  uniformityPercent: 82,
  strengthGPerTex: 30,
  micronaire: 4.2,
  reflectanceRd: 76,
  yellownessB: 8.5,
  leaf: 3,
  market: 'southeast',
  netLb: 480,
};

test('a sound card passes', () => {
  expect(checkCard(good)).toEqual({ ok: true, value: good });
  expect(checkCard({ ...good, moisturePercent: 7.5 }).ok).toBe(true);
});
test.each([
  ['lengthIn', { lengthIn: 28.4 }, '0.5 to 1.8'],
  ['micronaire', { micronaire: Number.NaN }, '2 to 7'],
  ['leaf', { leaf: 3.5 }, '1 to 8'],
  ['leaf', { kind: 'pima' as const, leaf: 8 }, '1 to 7'],
  ['moisturePercent', { moisturePercent: 40 }, '0 to 25'],
  ['netLb', { netLb: undefined as never }, '200 to 700'],
  ['market', { market: 'moon' as never }, 'southeast, sanJoaquin, eastTexas, westTexas'],
  ['kind', { kind: 'wool' as never }, 'upland, pima'],
])('a wrong %s is named with what is allowed', (field, change, allowed) => {
  const result = checkCard({ ...good, ...change });
  expect(result.ok).toBe(false);
  if (result.ok) return;
  expect(result.problems.map((problem) => problem.field)).toEqual([field]);
  expect(problemLine(result.problems[0]!)).toContain(allowed);
});
