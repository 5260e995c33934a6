import { randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { checkSize } from '../../src/cli/size-budget.mjs';

let box;
beforeEach(() => {
  box = mkdtempSync(join(tmpdir(), 'seamfield-'));
  mkdirSync(join(box, 'site'));
});
afterEach(() => rmSync(box, { recursive: true }));

/** A built site of chunks with so many bytes that do not compress. */
function problemsOf(chunks) {
  for (const { file, bytes } of chunks) writeFileSync(join(box, 'site', file), randomBytes(bytes));
  const list = chunks.map(({ file, entry = false, imports = [], modules = [] }) => ({ file, entry, imports, modules }));
  writeFileSync(join(box, 'chunks.json'), JSON.stringify(list));
  return checkSize(join(box, 'site'), join(box, 'chunks.json')).problems;
}
const pixi = ['node_modules/pixi.js/lib/index.mjs'];

describe('a site inside its budgets passes', () => {
  test('with pixi.js in a chunk that nothing loads at once', () => {
    const entry = { file: 'a.js', bytes: 30_000, entry: true, imports: ['b.js'] };
    expect(
      problemsOf([entry, { file: 'b.js', bytes: 10_000 }, { file: 'c.js', bytes: 170_000, modules: pixi }]),
    ).toEqual([]);
  });
});

describe('each budget is seen to break', () => {
  test('the entry together with what it imports, over two steps', () => {
    const [problem] = problemsOf([
      { file: 'a.js', bytes: 20_000, entry: true, imports: ['b.js'] },
      { file: 'b.js', bytes: 20_000, imports: ['c.js'] },
      { file: 'c.js', bytes: 6_000, imports: ['a.js'] },
    ]);
    expect(problem).toMatch(/static imports take \d+ bytes gzipped; allowed: 45000/);
  });
  test('the whole site', () => {
    expect(
      problemsOf([
        { file: 'a.js', bytes: 10, entry: true },
        { file: 'big.bin', bytes: 2_600_000 },
      ])[0],
    ).toMatch(/the site takes/);
  });
  test('pixi.js behind the entry', () => {
    const entry = { file: 'a.js', bytes: 10, entry: true, imports: ['b.js'] };
    expect(problemsOf([entry, { file: 'b.js', bytes: 10, modules: pixi }])[0]).toMatch(
      /pixi.js loads with the entry, in b.js/,
    );
  });
  test('a build without an entry', () => {
    expect(problemsOf([{ file: 'a.js', bytes: 10 }])[0]).toMatch(/no entry/);
  });
});
