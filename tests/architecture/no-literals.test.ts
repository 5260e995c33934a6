import { describe, expect, test } from 'vitest';
import { strayNumbers } from './literal-rules.ts';
import { readSources } from './source-files.ts';

const sources = readSources(['src/model'], /\.ts$/);
const found = (text: string, path = 'src/model/gin/planted.ts') => strayNumbers({ path, text });

test('No literal number in src/model outside facts, units, the table of decisions, and 0, 1, 2, 10, 100 with either sign', () => {
  expect(sources.length).toBeGreaterThan(100);
  expect(sources.flatMap(strayNumbers)).toEqual([]);
});

describe('a planted number is found', () => {
  test.each([
    ['a factor', 'export const f = (x: number) => x * 0.033;', '0.033'],
    ['a half written as a decimal', 'const half = 0.5;', '0.5'],
    ['an exponent', 'const cube = (x: number) => x ** 3;', '3'],
    ['a thousand', 'const grams = (kg: number) => kg * 1000;', '1000'],
    ['a thousand with its places marked', 'const grams = (kg: number) => kg * 1_000;', '1_000'],
    ['a negative number', 'const low = -60;', '60'],
    ['a power of ten', 'const hair = 1e-9;', '1e-9'],
    ['hexadecimal', 'const mix = 0x9e3779b1;', '0x9e3779b1'],
    ['a big number', 'const big = 7n;', '7n'],
    ['a list', 'const days = [31, 28];', '28'],
    ['an argument', "const wide = 'x'.padStart(7);", '7'],
    ['inside a template', `const text = \`\${5}\`;`, '5'],
    ['a default', 'function f(x = 4) { return x; }', '4'],
    ['the index of a computed place', 'const far = list[at + 3];', '3'],
    ['an enumeration', 'enum E { A = 5 }', '5'],
  ])('%s', (_name, text, number) => {
    const lines = found(text);
    expect(lines).toContain(`src/model/gin/planted.ts:1: ${number}`);
  });
  test('also in the generator of chance, outside the function that scatters its streams', () => {
    const text = 'export function openStream() { return 0x9e3779b1; }\nexport const other = 37;';
    expect(found(text, 'src/model/random.ts')).toEqual(['src/model/random.ts:2: 37']);
    expect(found(text)).toHaveLength(2);
  });
});

describe('what is allowed passes', () => {
  test.each([
    ['plain numbers', 'const f = (x: number) => -1 + 0 + 1 / 2 + (10 ** 2 * x) / 100;'],
    ['types', 'type Stage = 1 | 2 | 3; const x = y as 4 | -5; type Pair = [3, 4];'],
    ['the place of an item', 'const third = list[3];'],
    ['text', "const words = 'seven is 7'; const pattern = /^\\d{7}$/;"],
  ])('%s', (_name, text) => {
    expect(found(text)).toEqual([]);
  });
  test('numbers of facts, units and decisions, and of no file that is only named a little like them', () => {
    for (const path of ['src/model/gin/press-facts.ts', 'src/model/units.ts', 'src/model/decisions.ts'])
      expect(found('export const x = 17;', path)).toEqual([]);
    for (const path of ['src/model/gin/artefacts.ts', 'src/model/gin/units.ts', 'src/model/gin/decisions.ts'])
      expect(found('export const x = 17;', path)).toHaveLength(1);
  });
});
