import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/model/fact.ts';

const marks = {
  published: true,
  derived: true,
  memory: true,
  'common practice': true,
  assumption: true,
} as const satisfies Record<Mark, true>;

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const filled = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';

/** What is wrong with the part that facts and tables share, in words. */
const faultsOfOrigin = (fact: Record<string, unknown>): string[] => [
  ...(filled(fact.unit) ? [] : ['no unit']),
  ...(filled(fact.source) ? [] : ['no source']),
  ...(typeof fact.mark === 'string' && fact.mark in marks ? [] : [`mark ${String(fact.mark)}`]),
];

function faultsOfFact(fact: Record<string, unknown>): string[] {
  const faults = faultsOfOrigin(fact);
  const { value, range } = fact;
  if (typeof value !== 'number' || !Number.isFinite(value)) return [...faults, `value ${String(value)}`];
  if (range === undefined) return faults;
  const [low, high] = Array.isArray(range) ? range : [];
  if (typeof low !== 'number' || typeof high !== 'number' || low > high) return [...faults, `range ${String(range)}`];
  return value < low || value > high ? [...faults, `value ${value} outside ${low} to ${high}`] : faults;
}

function faultsOfTable(table: Record<string, unknown>): string[] {
  const rows = Array.isArray(table.rows) ? table.rows : [];
  return [...faultsOfOrigin(table), ...(rows.length > 0 ? [] : ['no rows'])];
}

/** Faults of every fact below a value, and every number that is in no fact, one line each; counts the facts into `seen`. */
function faultsBelow(value: unknown, path: string, seen: string[]): string[] {
  if (typeof value === 'number') return [`${path}: a bare number without unit and source`];
  if (!isRecord(value)) return [];
  const named = (faults: string[]) => faults.map((fault) => `${path}: ${fault}`);
  const looksLikeFact = 'value' in value || 'mark' in value || 'source' in value;
  if (looksLikeFact) seen.push(path);
  if ('rows' in value && looksLikeFact) return named(faultsOfTable(value));
  if (looksLikeFact) return named(faultsOfFact(value));
  return Object.entries(value).flatMap(([key, inner]) => faultsBelow(inner, `${path}.${key}`, seen));
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
  const faults = (value: unknown) => faultsBelow({ group: { value } }, 'facts', []);
  test('a good fact and a good table pass', () => {
    expect(faultsBelow({ group: { good, table }, words: ['a'], run: () => 1 }, 'facts', [])).toEqual([]);
  });
  test.each([
    ['a bare number', 3],
    ['a bare number in a list', [3]],
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
    ['above its range', { ...good, value: 4 }],
    ['below its range', { ...good, value: 0 }],
    ['a range upside down', { ...good, range: [3, 1] }],
    ['a range with one end', { ...good, range: [1] }],
    ['a table without a source', { ...table, source: undefined }],
    ['a table without rows', { ...table, rows: [] }],
  ])('%s', (_name, value) => {
    const wrapped = faultsBelow({ planted: value }, 'facts', []);
    expect(wrapped.length).toBeGreaterThan(0);
    expect(faults(value).length).toBeGreaterThan(0);
  });
});
