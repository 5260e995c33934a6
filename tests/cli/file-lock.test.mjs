import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { withLock } from '../../src/cli/file-lock.mjs';
import { root } from '../../src/cli/project-root.mjs';

let box;
let lock;
beforeEach(() => {
  box = mkdtempSync(join(tmpdir(), 'seamfield-'));
  lock = join(box, 'deep', 'install.lock');
});
afterEach(() => rmSync(box, { recursive: true }));

test('the work runs, its value comes back, the lock is gone', async () => {
  const seen = await withLock(lock, async () => readFileSync(lock, 'utf8'));
  expect(seen).toBe(String(process.pid));
  expect(existsSync(lock)).toBe(false);
});

test('the lock is gone when the work fails', async () => {
  await expect(withLock(lock, () => Promise.reject(new Error('no network')))).rejects.toThrow('no network');
  expect(existsSync(lock)).toBe(false);
});

test('two pieces of work never run at once', async () => {
  let running = 0;
  let most = 0;
  const work = async () => {
    most = Math.max(most, ++running);
    await new Promise((resolve) => setTimeout(resolve, 50));
    running--;
  };
  let waited = 0;
  const onWait = () => waited++;
  await Promise.all([withLock(lock, work, onWait), withLock(lock, work, onWait), withLock(lock, work, onWait)]);
  expect(most).toBe(1);
  expect(waited).toBe(2);
});

test('processes keep out of each other’s way: each finds the count the one before left', async () => {
  const counter = join(box, 'count');
  writeFileSync(counter, '0');
  const module = pathToFileURL(join(root, 'src', 'cli', 'file-lock.mjs')).href;
  const script = `
    import { readFileSync, writeFileSync } from 'node:fs';
    const { withLock } = await import(${JSON.stringify(module)});
    await withLock(${JSON.stringify(lock)}, async () => {
      const before = Number(readFileSync(${JSON.stringify(counter)}, 'utf8'));
      await new Promise((resolve) => setTimeout(resolve, 60));
      writeFileSync(${JSON.stringify(counter)}, String(before + 1));
    });`;
  const run = () =>
    new Promise((resolve) => {
      spawn(process.execPath, ['--input-type=module', '--eval', script]).once('close', resolve);
    });
  expect(await Promise.all([run(), run(), run()])).toEqual([0, 0, 0]);
  expect(readFileSync(counter, 'utf8')).toBe('3');
});

test('a lock left by a process that died is taken over', async () => {
  await withLock(lock, async () => {});
  // Process numbers end well below this on every system.
  writeFileSync(lock, '999999999');
  expect(await withLock(lock, async () => 'done')).toBe('done');
});
