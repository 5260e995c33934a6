import { expect, test } from 'vitest';
import { chartBorders, gradedSample, gradedSampleIds } from '../../src/lessons/graded-samples.ts';

test('7 CFR 28.525: each sample has a grade of the official list, the fresh one the best, the late one yellower', () => {
  const codes = gradedSampleIds.map((id) => gradedSample(id).code);
  for (const code of codes) expect(code).toMatch(/^[1-8][1-5]$/);
  const [fresh, , rained, spotted] = codes;
  expect(Number(fresh![0])).toBeLessThan(Number(rained![0]));
  expect(Number(spotted![1])).toBeGreaterThan(Number(fresh![1]));
});

test('more leaf on the face, a higher leaf grade', () => {
  const leaves = gradedSampleIds.map((id) => gradedSample(id).leaf);
  expect([...leaves].sort()).toEqual(leaves);
});

test('the chart has a border fewer than groups, and its grades fall', () => {
  expect(chartBorders.groups).toHaveLength(4);
  const { rd, codes } = chartBorders.steps;
  expect(codes).toHaveLength(rd.length);
  for (let i = 1; i < rd.length; i++) expect(rd[i]!).toBeLessThan(rd[i - 1]!);
});
