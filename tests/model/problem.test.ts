import { expect, test } from 'vitest';
import { type Problem, problemLine } from '../../src/model/problem.ts';

const cases: readonly (readonly [Problem, string])[] = [
  [
    { field: 'acres', value: '0', rule: { kind: 'range', low: 1, high: 5000, step: null, unit: 'acres' } },
    'acres: 0 is not allowed; allowed: 1 to 5000 acres',
  ],
  [
    { field: 'share', value: '2', rule: { kind: 'range', low: 0, high: 1, step: null, unit: '' } },
    'share: 2 is not allowed; allowed: 0 to 1',
  ],
  [
    { field: 'rowInches', value: '3', rule: { kind: 'range', low: 15, high: 40, step: 5, unit: 'inches' } },
    'rowInches: 3 is not allowed; allowed: 15 to 40 inches, in steps of 5',
  ],
  [
    { field: 'climate', value: '"mars"', rule: { kind: 'choice', options: ['coastalPlain', 'midSouth'] } },
    'climate: "mars" is not allowed; allowed: coastalPlain, midSouth',
  ],
  [
    { field: 'TMAX, line 7', value: '"hot"', rule: { kind: 'type', expected: 'a number' } },
    'TMAX, line 7: "hot" is not allowed; allowed: a number',
  ],
];

test.each(cases)('%j reads as one line', (problem, line) => {
  expect(problemLine(problem)).toBe(line);
});
