import { describe, expect, test } from 'vitest';
import { allFacts, allTables } from '../../src/model/fact-list.ts';
import { stageFacts } from '../../src/model/field/facts.ts';

const texts = import.meta.glob<string>('../../src/model/**/*facts.ts', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const listed = [...allFacts(), ...allTables()];
const fileOf = (name: string): string => name.slice(0, name.indexOf('.'));

/** Facts files of which the list knows nothing. */
const missing = (paths: readonly string[], names: readonly string[]): string[] => {
  const known = new Set(names.map(fileOf));
  return paths
    .map((path) => path.replace('../../src/model/', '').replace(/\.ts$/, ''))
    .filter((file) => !known.has(file));
};

describe('the list of all facts', () => {
  test('knows every facts file there is', () => {
    expect(Object.keys(texts).length).toBeGreaterThan(40);
    expect(
      missing(
        Object.keys(texts),
        listed.map(({ name }) => name),
      ),
    ).toEqual([]);
  });
  test('a facts file left out is seen', () => {
    const names = listed.map(({ name }) => name).filter((name) => fileOf(name) !== 'mill/waste-facts');
    expect(missing(Object.keys(texts), names)).toEqual(['mill/waste-facts']);
  });
  test('names each once', () => {
    expect(new Set(listed.map(({ name }) => name)).size).toBe(listed.length);
  });
  test('hands out the facts themselves, under file and keys, with their link', () => {
    const days = allFacts().find(({ name }) => name === 'field/facts.stageFacts.squareDays');
    expect(days?.fact).toBe(stageFacts.squareDays);
    expect(days?.link).toBe('field');
    expect(allFacts().find(({ name }) => name === 'rounding-facts.roundingFacts.hair')?.link).toBe('core');
  });
  test('holds some hundreds of facts and some dozens of tables, none of them both', () => {
    expect(allFacts().length).toBeGreaterThan(600);
    expect(allTables().length).toBeGreaterThan(60);
    expect(allFacts().every(({ fact }) => Number.isFinite(fact.value))).toBe(true);
    expect(allTables().some(({ name }) => name === 'field/calendar-facts.monthLengths')).toBe(true);
  });
});
