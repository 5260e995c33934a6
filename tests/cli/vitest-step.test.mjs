import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { runVitest } from '../../src/cli/vitest-step.mjs';

let box;
beforeEach(() => {
  box = mkdtempSync(join(tmpdir(), 'seamfield-'));
  writeFileSync(
    join(box, 'vitest.config.mjs'),
    "export default { test: { globals: true, include: ['*.test.js'] } };\n",
  );
});
afterEach(() => rmSync(box, { recursive: true }));

/** Counts of a run over planted test files. */
async function countsOf(files) {
  for (const [name, text] of Object.entries(files)) writeFileSync(join(box, name), text);
  const args = ['--root', box, '--config', join(box, 'vitest.config.mjs')];
  const { passed, failed, detail } = await runVitest(`planted-${process.pid}`, args, { CI: 'true' });
  return { passed, failed, detail };
}

const good = "test('holds', () => expect(1).toBe(1));";
const fails = "test('breaks', () => expect('ne').toBe('tex'));";
const leftOut = `test.skip${"('left out', () => {});"}`;
const cannotLoad = "throw new Error('on loading');";
let counted;
/** One run of files that each fail in a way of their own, run once for the tests that read it: each run is a process of seconds. */
const mixedCounts = () => {
  counted ??= countsOf({ 'a.test.js': good, 'b.test.js': fails, 'c.test.js': leftOut, 'd.test.js': cannotLoad });
  return counted;
};

test('tests that pass are counted, and nothing is reported', async () => {
  expect(await countsOf({ 'a.test.js': good, 'b.test.js': `${good}\n${good}` })).toEqual({
    passed: 3,
    failed: 0,
    detail: '',
  });
});

test('a failing test, one that did not run and a file that cannot be loaded count as failed, and the rest as passed', async () => {
  const { passed, failed } = await mixedCounts();
  expect([passed, failed]).toEqual([1, 3]);
});

test('the reason of a failing test is reported', async () => {
  const { detail } = await mixedCounts();
  expect(detail).toMatch(/breaks/);
  expect(detail).toMatch(/tex/);
});

test('a test that did not run is named', async () => {
  expect((await mixedCounts()).detail).toMatch(/skipped, which counts as failed: .*left out/);
});

test('a file that cannot be loaded says why', async () => {
  expect((await mixedCounts()).detail).toMatch(/on loading/);
});

test('an error outside any test counts as failed', async () => {
  const late =
    "test('holds', async () => { setTimeout(() => { throw new Error('late'); }, 1); await new Promise((r) => setTimeout(r, 50)); });";
  expect((await countsOf({ 'a.test.js': late })).failed).toBeGreaterThan(0);
});

test('a run without any test counts as failed', async () => {
  expect(await countsOf({})).toMatchObject({ passed: 0, failed: 1 });
});
