import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { findChromium, findOnPath } from '../../src/cli/find-chromium.mjs';

let box;
beforeEach(() => {
  box = mkdtempSync(join(tmpdir(), 'seamfield-'));
});
afterEach(() => rmSync(box, { recursive: true }));

const program = (name, mode = 0o755) => {
  const path = join(box, name);
  writeFileSync(path, '#!/bin/sh\n');
  chmodSync(path, mode);
  return path;
};

test('the variable comes first', () => {
  program('chromium');
  const own = program('my-browser');
  expect(findChromium({ SEAMFIELD_CHROMIUM: own, PATH: box })).toBe(own);
});

test('a variable that names no program finds nothing, not another browser', () => {
  program('chromium');
  expect(findChromium({ SEAMFIELD_CHROMIUM: join(box, 'missing'), PATH: box })).toBeUndefined();
  expect(findChromium({ SEAMFIELD_CHROMIUM: box, PATH: box })).toBeUndefined();
});

test('the usual names on the PATH, in order', () => {
  const second = program('google-chrome');
  expect(findChromium({ PATH: `/nowhere:${box}` })).toBe(second);
  const first = program('chromium-browser');
  expect(findChromium({ PATH: box })).toBe(first);
});

test('what cannot be run is not found, nor a folder of that name', () => {
  const file = program('plain', 0o644);
  mkdirSync(join(box, 'folder'));
  expect(findOnPath('plain', { PATH: box })).toBeUndefined();
  expect(findOnPath('folder', { PATH: box })).toBeUndefined();
  expect(findOnPath('plain', {})).toBeUndefined();
  chmodSync(file, 0o755);
  expect(findOnPath('plain', { PATH: box })).toBe(file);
});
