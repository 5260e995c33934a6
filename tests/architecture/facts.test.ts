import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/model/fact.ts';

const marks = {
  published: true,
  derived: true,
  memory: true,
  'common practice': true,
  assumption: true,
} as const satisfies Record<Mark, true>;

/** Marks of numbers that were not read or worked out: how far they might be off must be said. */
const unread: readonly string[] = ['memory', 'common practice', 'assumption'];

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const filled = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';

/** What is wrong with where a number comes from, in words. */
const faultsOfOrigin = (fact: Record<string, unknown>): string[] => [
  ...(filled(fact.source) ? [] : ['no source']),
  ...(typeof fact.mark === 'string' && Object.hasOwn(marks, fact.mark) ? [] : [`mark ${String(fact.mark)}`]),
];

const faultsOfUnit = ({ unit }: Record<string, unknown>): string[] => (filled(unit) ? [] : ['no unit']);

function faultsOfFact(fact: Record<string, unknown>): string[] {
  const faults = [...faultsOfOrigin(fact), ...faultsOfUnit(fact)];
  const { value, range } = fact;
  if (typeof value !== 'number' || !Number.isFinite(value)) return [...faults, `value ${String(value)}`];
  if (range === undefined)
    return unread.includes(String(fact.mark)) ? [...faults, `no range for ${String(fact.mark)}`] : faults;
  const [low, high] = Array.isArray(range) ? range : [];
  if (typeof low !== 'number' || typeof high !== 'number' || low > high) return [...faults, `range ${String(range)}`];
  return value < low || value > high ? [...faults, `value ${value} outside ${low} to ${high}`] : faults;
}

/** Every number below a value, also in lists. */
function numbersBelow(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return isRecord(value) ? Object.values(value).flatMap(numbersBelow) : [];
}

/** A table keeps its numbers in rows or under names of their own, all with one unit, source and mark. */
function faultsOfTable(table: Record<string, unknown>): string[] {
  const holes = numbersBelow(table).filter((number) => !Number.isFinite(number));
  return [...faultsOfOrigin(table), ...faultsOfUnit(table), ...holes.map((number) => `number ${number}`)];
}

/** Faults of all that looks like a fact, a table or a citation below a value, one line each; puts each one's path into `seen`. */
function faultsBelow(value: unknown, path: string, seen: string[]): string[] {
  if (!isRecord(value)) return [];
  const cited = 'value' in value || 'mark' in value || 'source' in value;
  if (!cited) return Object.entries(value).flatMap(([key, inner]) => faultsBelow(inner, `${path}.${key}`, seen));
  seen.push(path);
  const check = 'value' in value ? faultsOfFact : numbersBelow(value).length > 0 ? faultsOfTable : faultsOfOrigin;
  return check(value).map((fault) => `${path}: ${fault}`);
}

const tables = import.meta.glob<Record<string, unknown>>('../../src/model/**/*facts.ts', { eager: true });

describe('every constant in a facts file of the model has value, unit, source, mark and a range it lies in', () => {
  test.each(Object.entries(tables))('%s', (path, table) => {
    const seen: string[] = [];
    expect(faultsBelow(table, path.replace('../../src/model/', ''), seen)).toEqual([]);
    expect(seen.length).toBeGreaterThan(0);
  });
  test('the fibre lengths have theirs', () => {
    expect(Object.keys(tables)).toContain('../../src/model/length/facts.ts');
  });
});

describe('each fault is seen', () => {
  const good = { value: 2, unit: 'mm', range: [1, 3], source: 'Mangialardi 1989', mark: 'published' };
  const table = { rows: [{ low: 1 }], unit: 'mm', source: '7 CFR 28.303', mark: 'published' };
  test('a good fact and a good table pass', () => {
    expect(faultsBelow({ group: { good, table }, words: ['a'], run: () => 1 }, 'facts', [])).toEqual([]);
  });
  test.each([
    ['no value', { ...good, value: undefined }],
    ['not a number', { ...good, value: Number.NaN }],
    ['a value in words', { ...good, value: '2' }],
    ['endless', { ...good, value: Number.POSITIVE_INFINITY }],
    ['no unit', { ...good, unit: undefined }],
    ['an empty source', { ...good, source: ' ' }],
    ['a mark of its own', { ...good, mark: 'certain' }],
    ['a mark every object has', { ...good, mark: 'toString' }],
    ['no mark', { value: 2, unit: 'mm', source: 'x' }],
    ['only a value', { value: 2 }],
    ['an assumption without a range', { value: 2, unit: 'mm', source: 'chosen', mark: 'assumption' }],
    ['a memory without a range', { value: 2, unit: 'mm', source: 'Handbook 503', mark: 'memory' }],
    ['a common practice without a range', { value: 2, unit: 'mm', source: 'ginners', mark: 'common practice' }],
    ['above its range', { ...good, value: 4 }],
    ['below its range', { ...good, value: 0 }],
    ['a range upside down', { ...good, range: [3, 1] }],
    ['a range with one end', { ...good, range: [1] }],
    ['a table without a source', { ...table, source: undefined }],
    ['a table without a unit', { ...table, unit: undefined }],
    ['a citation without a mark', { source: '7 CFR 28.303' }],
    ['a table with a hole', { ...table, rows: [{ low: Number.NaN }] }],
    ['a table without a mark', { share: { leaf: 0.1 }, unit: 'fraction', source: 'x' }],
  ])('%s', (_name, value) => {
    expect(faultsBelow({ group: { planted: value } }, 'facts', [])).not.toEqual([]);
  });
});
