import { describe, expect, test } from 'vitest';
import type { Fact } from '../../../src/model/fact.ts';
import { climateLevers, stationTables } from '../../../src/model/field/climate-facts.ts';
import * as plant from '../../../src/model/field/facts.ts';
import { positionTable, thirtiesFacts, varietyFacts } from '../../../src/model/field/variety-facts.ts';
import { generatorFacts, waterFacts } from '../../../src/model/field/water-facts.ts';

/** Every fact in a table of tables, with its path. */
function facts(table: unknown, path: string): [string, Fact][] {
  if (typeof table !== 'object' || table === null) return [];
  if ('mark' in table && 'value' in table) return [[path, table as Fact]];
  return Object.entries(table).flatMap(([key, value]) => facts(value, `${path}.${key}`));
}
const all = facts(
  { plant, climateLevers, positionTable, thirtiesFacts, varietyFacts, generatorFacts, waterFacts },
  'field',
);

describe('the facts of the field', () => {
  test('are all there', () => {
    expect(all.length).toBeGreaterThan(150);
  });
  test.each(all)('%s has a source and a unit, and lies inside its range', (_, fact) => {
    expect(fact.source.length).toBeGreaterThan(5);
    expect(fact.unit.length).toBeGreaterThan(0);
    const [low, high] = fact.range ?? [fact.value, fact.value];
    expect(fact.value).toBeGreaterThanOrEqual(low);
    expect(fact.value).toBeLessThanOrEqual(high);
  });
  test.each(Object.entries(stationTables))('%s: twelve months of everything, chances between 0 and 1', (_, table) => {
    const { station, latitudeDegrees, ...months } = table;
    expect(station).toMatch(/, /);
    expect(latitudeDegrees).toBeGreaterThan(30);
    for (const figures of Object.values(months)) expect(figures).toHaveLength(12);
    for (const chance of [...table.wetAfterWet, ...table.wetAfterDry]) expect(chance >= 0 && chance < 1).toBe(true);
    expect(table.maxF.every((high, month) => high > table.minF[month]!)).toBe(true);
  });
});
