import { expect, expectTypeOf, test } from 'vitest';
import type { Fact, FactTable, Mark } from '../../src/model/fact.ts';
import { machineBreakagePerMm } from '../../src/model/length/facts.ts';

test('there are five marks, and no sixth gets past the compiler', () => {
  expectTypeOf<Mark>().toEqualTypeOf<'published' | 'derived' | 'memory' | 'common practice' | 'assumption'>();
  // @ts-expect-error no such mark
  const certain: Mark = 'certain';
  expect(certain).toBe('certain');
});

test('a fact without source or unit does not compile', () => {
  // @ts-expect-error no source
  const unsourced: Fact = { value: 1, unit: 'mm', mark: 'published' };
  // @ts-expect-error no unit
  const unitless: Fact = { value: 1, source: 'Mangialardi 1989', mark: 'published' };
  // @ts-expect-error a table has one mark for all its rows
  const table: FactTable<number> = { rows: [1], unit: 'mm', source: 'Mangialardi 1989' };
  expect([unsourced.source, unitless.unit, table.mark]).toEqual([undefined, undefined, undefined]);
});

test('a facts file keeps its literal values and still is a table of facts', () => {
  expectTypeOf(machineBreakagePerMm).toExtend<Readonly<Record<string, Fact>>>();
  expect(machineBreakagePerMm.sawStand.range[0]).toBeLessThanOrEqual(machineBreakagePerMm.sawStand.value);
});
