import { describe, expect, test } from 'vitest';
import { bandPoints, extraneousPoints, gradePoints } from '../../../src/model/classing/differences.ts';
import { markets } from '../../../src/model/classing/markets.ts';
import { decisionTable } from '../../../src/model/decisions.ts';

test('every market of the decision is there under its own name', () => {
  expect(Object.keys(markets).sort()).toEqual([...decisionTable.classing.market.options].sort());
  for (const [id, market] of Object.entries(markets)) expect(market.id).toBe(id);
});

describe.each(Object.values(markets))('$id', (market) => {
  test('base quality (41-4-34, 3.5 to 3.6 and 4.3 to 4.9, 27.0 to 28.9 g/tex, 81; AMS weekly review 2017-18) is worth the base', () => {
    expect(gradePoints(market, '41', 4, 34).points).toBe(0);
    for (const micronaire of [3.5, 4.5]) expect(bandPoints(market.micronaire, micronaire).points).toBe(0);
    for (const strength of [27, 28.9]) expect(bandPoints(market.strength, strength).points).toBe(0);
    expect(bandPoints(market.uniformity, 81.5).points).toBe(0);
  });
  test('rows have a number for every quoted staple, and bands rise', () => {
    for (const { points } of market.grades.rows) expect(points).toHaveLength(market.staples.length);
    for (const { rows } of [market.micronaire, market.strength, market.uniformity]) {
      const starts = rows.map(({ from }) => from);
      expect(starts).toEqual([...starts].sort((a, b) => a - b));
      expect(starts[0]).toBe(0);
    }
  });
  test('each kind of extraneous matter costs, heavy at least as much as light', () => {
    for (const kind of ['prep', 'bark', 'plastic'] as const) {
      const [light, heavy] = ([1, 2] as const).map((level) => extraneousPoints(market, [{ kind, level }]).points);
      expect(light).toBeLessThan(0);
      expect(heavy).toBeLessThanOrEqual(light!);
    }
  });
});
