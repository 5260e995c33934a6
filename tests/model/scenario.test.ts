import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Decision, decisionTable } from '../../src/model/decisions.ts';
import { type Problem, problemLine } from '../../src/model/problem.ts';
import { checkScenario } from '../../src/model/scenario.ts';
import { stationIds } from '../../src/model/station.ts';

/** One of our own farms, as JSON from a file of unknown origin would come: fresh for every test. */
const farm = (): Record<string, unknown> =>
  JSON.parse(readFileSync(join(import.meta.dirname, '../../content/scenarios/coastal-plain.json'), 'utf8'));

/** The farm with one field changed, by its path. */
function changed(path: string, value: unknown): Record<string, unknown> {
  const whole = farm();
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  const holder = keys.reduce((node, key) => node[key] as Record<string, unknown>, whole);
  Object.defineProperty(holder, last, { value, enumerable: true, configurable: true, writable: true });
  return whole;
}

function problemsOf(input: unknown): readonly Problem[] {
  const result = checkScenario(input);
  return result.ok ? [] : result.problems;
}

test('our own farm is right, and comes back whole', () => {
  const result = checkScenario(farm());
  expect(result).toEqual({ ok: true, value: farm() });
});

describe('every decision, set to something it is not, is named with its value and what is allowed', () => {
  const everyDecision = stationIds.flatMap((station) =>
    Object.entries(decisionTable[station] as Record<string, Decision>).map(([key, decision]) => ({
      path: `decisions.${station}.${key}`,
      decision,
    })),
  );
  test('there are decisions at every station', () => {
    expect(everyDecision.length).toBeGreaterThan(stationIds.length);
  });
  test.each(everyDecision)('$path', ({ path, decision }) => {
    const wrong =
      decision.kind === 'number'
        ? [decision.low - decision.step, decision.high + decision.step, decision.low + decision.step / 3, '12', null]
        : ['nonsense', 7, null];
    for (const value of wrong) {
      const lines = new Set(problemsOf(changed(path, value)).map(problemLine));
      expect(lines.size).toBe(1);
      const [line] = lines;
      expect(line).toContain(path);
      expect(line).toContain(String(value));
      if (decision.kind === 'number') expect(line).toContain(`${decision.low} to ${decision.high}`);
      if (decision.kind === 'choice') expect(line).toContain(decision.options.join(', '));
      if (decision.kind === 'switch') expect(line).toContain('true or false');
    }
  });
  test.each(everyDecision)('$path left out', ({ path }) => {
    const keys = path.split('.');
    const whole = farm();
    const decisions = whole.decisions as Record<string, Record<string, unknown>>;
    delete decisions[keys[1]!]![keys[2]!];
    expect(problemsOf(whole).map(problemLine)).toEqual([expect.stringContaining(`${path}: nothing is not allowed`)]);
  });
  test.each(everyDecision.filter(({ decision }) => decision.kind === 'number'))(
    '$path may stand on its limits',
    (row) => {
      const { decision, path } = row;
      if (decision.kind !== 'number') throw new Error('filtered to numbers');
      expect(problemsOf(changed(path, decision.low))).toEqual([]);
      expect(problemsOf(changed(path, decision.high))).toEqual([]);
    },
  );
});

describe('every other field', () => {
  test.each([
    ['version', 2, '1'],
    ['version', '1', '1'],
    ['id', 'Coastal Plain', 'small letters, digits and hyphens'],
    ['id', '../../etc/passwd', 'small letters, digits and hyphens'],
    ['id', 'a'.repeat(41), 'at most 40'],
    ['climate', 'mars', 'coastalPlain, midSouth'],
    ['era', 'future', 'present, thirties'],
    ['acres', 0, '1 to 5000 acres'],
    ['acres', -3, '1 to 5000 acres'],
    ['acres', '40', '1 to 5000 acres'],
    ['acres', Number.NaN, '1 to 5000 acres'],
    ['acres', Number.POSITIVE_INFINITY, '1 to 5000 acres'],
    ['soilWaterMm', 1e9, '50 to 250 mm'],
    ['decisions', null, 'a group of decisions'],
    ['decisions.planting', 'all', 'a group of decisions'],
    ['decisions.gin', {}, 'nothing (unknown field)'],
    ['decisions.ginning.stnad', 'saw', 'nothing (unknown field)'],
    ['note', 'hello', 'nothing (unknown field)'],
    ['name.fr', 'Plaine', 'nothing (unknown field)'],
    ['name.en', 'x'.repeat(201), 'text of at most 200 characters'],
    ['name.en', 7, 'text of at most 200 characters'],
    ['story.es', 'x'.repeat(721), 'text of at most 720 characters'],
    ['name', 'Plain', 'a text in en and one in es'],
    ['name', undefined, 'a text in en and one in es'],
  ])('%s: %j', (path, value, allowed) => {
    const lines = problemsOf(changed(path, value)).map(problemLine);
    expect(lines.some((line) => line.startsWith(path) && line.includes(allowed))).toBe(true);
  });

  test.each([null, undefined, 7, 'text', [], true, () => 1])('a scenario that is %s is no scenario', (input) => {
    const problems = problemsOf(input);
    expect(problems.length).toBeGreaterThan(0);
    expect(problemLine(problems[0]!)).toMatch(/not allowed; allowed: (a group of fields|1)$/);
  });

  test('all wrong fields are told at once', () => {
    const whole = changed('acres', -1);
    (whole.decisions as Record<string, Record<string, unknown>>).planting!.rowInches = 900;
    (whole.decisions as Record<string, Record<string, unknown>>).classing!.market = 'moon';
    expect(
      problemsOf(whole)
        .map(({ field }) => field)
        .sort(),
    ).toEqual(['acres', 'decisions.classing.market', 'decisions.planting.rowInches']);
  });
});

describe('hostile files', () => {
  test('keys of the object prototype are never taken for decisions, and leave every object as it was', () => {
    for (const key of ['__proto__', 'constructor', 'prototype', 'toString']) {
      const text = JSON.stringify(farm()).replace('"acres"', `"${key}":{"polluted":true},"acres"`);
      const result = checkScenario(JSON.parse(text));
      expect(({} as Record<string, unknown>).polluted).toBeUndefined();
      expect(result.ok, key).toBe(false);
    }
  });
  test('a very long text is refused', () => {
    const problems = problemsOf(changed('story.en', 'x'.repeat(1_000_000)));
    expect(problems.map(({ field }) => field)).toEqual(['story.en']);
    expect(problemLine(problems[0]!).length).toBeLessThan(400);
  });
  test('a very long name of an unknown field is refused, and cut short in the message', () => {
    const problems = problemsOf(changed('x'.repeat(100_000), 1));
    expect(problems).toHaveLength(1);
    expect(problemLine(problems[0]!).length).toBeLessThan(300);
  });
  test('a value with line breaks is refused in one line', () => {
    const line = problemLine(problemsOf(changed('climate', 'a\nb\u0007c'))[0]!);
    expect(line.split('\n')).toHaveLength(1);
    expect(line).toContain('a b c');
  });
  test('a number off its range and its step is told once; a missing station is named', () => {
    expect(problemsOf(changed('decisions.planting.rowInches', 14.5))).toHaveLength(1);
    const [problem] = problemsOf(changed('decisions.planting', undefined));
    expect(problemLine(problem!)).toBe('decisions.planting: nothing is not allowed; allowed: a group of decisions');
  });
});
