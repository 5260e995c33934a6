import { expect, test } from 'vitest';
import { decisionTable } from '../../src/model/decisions.ts';
import { stationIds } from '../../src/model/station.ts';

test('twelve stations, from the planter to the sewing table, each with decisions of its own', () => {
  expect(stationIds).toHaveLength(12);
  expect(new Set(stationIds).size).toBe(12);
  expect([stationIds[0], stationIds.at(-1)]).toEqual(['planting', 'sewing']);
  expect(Object.keys(decisionTable)).toEqual([...stationIds]);
});
