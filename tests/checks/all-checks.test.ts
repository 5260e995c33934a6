import { expect, test } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.ts';
import type { Check } from '../../src/checks/check.ts';
import { judgeCheck } from '../../src/checks/judge-check.ts';

test('at least 160 checks count against the outside', () => {
  const counted = allChecks.filter(({ kind }) => kind === 'exact' || kind === 'calibrated' || kind === 'notTuned');
  expect(counted.length).toBeGreaterThanOrEqual(160);
});

test('every id stands once', () => {
  const ids = allChecks.map(({ id }) => id);
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
});

test('every row says what is checked, where the figure was read, and in what unit', () => {
  for (const { id, what, source, unit, expected } of allChecks) {
    expect(what.length, id).toBeGreaterThan(5);
    expect(source.length, id).toBeGreaterThan(3);
    // A word has no unit, and a number is never without one: a pure number is a ratio, a fraction, an index.
    if (expected.kind === 'is') expect(unit, id).toBe('');
    else expect(unit, id).not.toBe('');
  }
});

test('every known miss has a reason, and a recorded figure that the source’s own would not pass for', () => {
  for (const check of allChecks) {
    if (check.kind !== 'knownMiss') continue;
    expect(check.reason.length, check.id).toBeGreaterThan(10);
    const { recorded, expected } = check;
    if (expected.kind === 'near')
      expect(Math.abs(recorded.value - expected.value), check.id).toBeGreaterThan(expected.tolerance);
  }
});

test('every band has width, and every tolerance is a number', () => {
  for (const { id, expected } of allChecks) {
    if (expected.kind === 'near') expect(expected.tolerance, id).toBeGreaterThanOrEqual(0);
    if (expected.kind === 'between') expect(expected.high, id).toBeGreaterThan(expected.low);
  }
});

/** The row with its published figure moved by more than its tolerance, or its word changed. */
function planted(check: Check): Check {
  const { expected } = check;
  if (expected.kind === 'is') return { ...check, expected: { kind: 'is', word: `${expected.word} and more` } };
  if (expected.kind === 'near')
    return { ...check, expected: { ...expected, value: expected.value + 2.01 * expected.tolerance + 1e-12 } };
  const { low, high } = expected;
  const width =
    Number.isFinite(low) && Number.isFinite(high) ? high - low : Math.abs(Number.isFinite(low) ? low : high) + 1;
  return Number.isFinite(high)
    ? { ...check, expected: { kind: 'between', low: high + 1e-12 + width, high: high + 2 * width } }
    : { ...check, expected: { kind: 'between', low: Number.NEGATIVE_INFINITY, high: low - width } };
}

test('a wrong figure planted in any row of the quick links fails', () => {
  const quick = allChecks.filter(
    ({ kind, link }) => kind !== 'knownMiss' && ['units', 'classing', 'cloth', 'mill', 'trace'].includes(link),
  );
  expect(quick.length).toBeGreaterThan(100);
  const passing = quick.filter((check) => judgeCheck(planted(check)).passed).map(({ id }) => id);
  expect(passing).toEqual([]);
});
