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

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

/** Paths of numbers below a value that nobody published and that have no range of their own. */
function unbounded(value: unknown, path: string): string[] {
  if (!isRecord(value)) return [];
  if (!('value' in value)) return Object.entries(value).flatMap(([key, inner]) => unbounded(inner, `${path}.${key}`));
  const open = ['memory', 'assumption', 'common practice'].includes(String(value.mark));
  return open && value.range === undefined ? [path] : [];
}

const tables = import.meta.glob<Record<string, unknown>>(
  ['../../src/model/*-facts.ts', '../../src/model/{classing,cloth,length,mill}/*facts.ts'],
  { eager: true },
);
test.each(Object.entries(tables))(
  '%s: what was remembered, chosen or customary says how far it may be off',
  (_path, table) => {
    expect(unbounded(table, 'facts')).toEqual([]);
  },
);
test('a number from memory without a range is seen', () => {
  const remembered = { value: 13, unit: 'mtex', source: 'Lord 1956', mark: 'memory' };
  expect(unbounded({ lord: { constant: remembered } }, 'facts')).toEqual(['facts.lord.constant']);
  expect(unbounded({ constant: { ...remembered, range: [11, 15] } }, 'facts')).toEqual([]);
});
