import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { readAtLoad, sortUnsureFacts } from '../../src/doubt/uncertain-facts.ts';
import type { Fact } from '../../src/model/fact.ts';
import { allFacts } from '../../src/model/fact-list.ts';

const unsure = allFacts().filter(({ fact }) => ['assumption', 'memory', 'common practice'].includes(fact.mark));
const { moved, held } = sortUnsureFacts();

describe('the registry of unsure facts', () => {
  test('holds every fact that is an assumption, from memory or common practice once: moved, or held still for a reason', () => {
    const named = [...moved, ...held].flatMap(({ names }) => names);
    expect([...named].sort()).toEqual(unsure.map(({ name }) => name).sort());
    expect(moved.length).toBeGreaterThan(200);
  });
  test('moves no fact twice, whatever its names, and none that is published or derived', () => {
    expect(new Set(moved.map(({ fact }) => fact)).size).toBe(moved.length);
    expect(moved.filter(({ fact }) => fact.mark === 'published' || fact.mark === 'derived')).toEqual([]);
    const shared = moved.find(({ names }) =>
      names.includes('field/climate-facts.climateLevers.coastalPlain.farmNightF'),
    );
    expect(shared!.names.length).toBeGreaterThan(1);
  });
  test('moves each within a range that has a width and holds its value', () => {
    for (const { fact } of moved) {
      expect(fact.range[0]).toBeLessThan(fact.range[1]);
      expect(fact.range[0]).toBeLessThanOrEqual(fact.value);
      expect(fact.range[1]).toBeGreaterThanOrEqual(fact.value);
    }
  });
  test('keeps what counts whole things to whole numbers', () => {
    const wholeOf = (name: string) => moved.find(({ names }) => names.includes(name))?.whole;
    expect(wholeOf('classing/money-facts.thirtiesMoney.cropYear')).toBe(true);
    expect(wholeOf('field/facts.bollFacts.fillReferenceF')).toBe(false);
  });
});

test('the facts named as read at load are just those the model reads while it loads', async () => {
  // The facts are loaded and watched before any other part of the model is; what is read until all of it has loaded was
  // read too early to be moved. A facts file that reads another one's value as it loads is seen by its text.
  const tooEarly = new Set<Fact>();
  const values = new Map(unsure.map(({ fact }) => [fact, fact.value]));
  for (const [fact, value] of values) {
    const get = () => {
      tooEarly.add(fact);
      return value;
    };
    Object.defineProperty(fact, 'value', { get, configurable: true, enumerable: true });
  }
  const rest = import.meta.glob(['../../src/model/**/*.ts', '!**/*facts.ts']);
  expect(Object.keys(rest).length).toBeGreaterThan(100);
  await Promise.all(Object.values(rest).map((load) => load()));
  for (const [fact, value] of values)
    Object.defineProperty(fact, 'value', { value, writable: true, configurable: true, enumerable: true });
  const beforeTheBale = unsure
    .filter(({ fact }) => tooEarly.has(fact))
    .map(({ name }) => name)
    .filter((name) => !/^(mill|cloth|trace)\//.test(name));
  expect(beforeTheBale.sort()).toEqual([...readAtLoad].sort());
});

/** Whether a text works with the value of a fact outside every function, that is as it loads. */
function readsAsItLoads(text: string): boolean {
  const visit = (node: ts.Node): boolean => {
    if (ts.isFunctionLike(node)) return false;
    if (ts.isPropertyAccessExpression(node) && node.name.text === 'value') return true;
    return ts.forEachChild(node, visit) ?? false;
  };
  return visit(ts.createSourceFile('facts.ts', text, ts.ScriptTarget.ES2022, true));
}

test('no facts file before the bale works with the value of another fact as it loads: that number would not follow', () => {
  const texts = import.meta.glob<string>(['../../src/model/**/*facts.ts', '!**/{mill,cloth,trace}/*'], {
    query: '?raw',
    import: 'default',
    eager: true,
  });
  expect(Object.keys(texts).length).toBeGreaterThan(30);
  expect(Object.keys(texts).filter((path) => readsAsItLoads(texts[path]!))).toEqual([]);
  expect(readsAsItLoads("export const x = { twice: derived(2 * other.value, 'mm', null, 'twice the other') };")).toBe(
    true,
  );
  expect(readsAsItLoads('export const x = (other: Fact) => 2 * other.value;')).toBe(false);
});
