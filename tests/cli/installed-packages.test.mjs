import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { packagesMatchLock } from '../../src/cli/installed-packages.mjs';

let box;
beforeEach(() => {
  box = mkdtempSync(join(tmpdir(), 'seamfield-'));
});
afterEach(() => rmSync(box, { recursive: true }));

const locked = {
  '': { name: 'seamfield' },
  'node_modules/a': { version: '1.0.0', integrity: 'sha512-a' },
  'node_modules/other-machine': { version: '2.0.0', integrity: 'sha512-o', optional: true },
};
const write = (folder, name, packages) => {
  mkdirSync(join(box, folder), { recursive: true });
  writeFileSync(join(box, folder, name), JSON.stringify({ packages }));
};
const installed = (packages) => write('node_modules', '.package-lock.json', packages);

test('a bare clone does not match', () => {
  write('.', 'package-lock.json', locked);
  expect(packagesMatchLock(box)).toBe(false);
});

test('what npm installed from the lock matches, with or without the packages of other machines', () => {
  write('.', 'package-lock.json', locked);
  installed({ 'node_modules/a': locked['node_modules/a'] });
  expect(packagesMatchLock(box)).toBe(true);
  installed({ ...locked });
  expect(packagesMatchLock(box)).toBe(true);
});

test.each([
  ['a package is missing', {}],
  ['a version differs', { 'node_modules/a': { version: '1.0.1', integrity: 'sha512-a' } }],
  ['the contents differ', { 'node_modules/a': { version: '1.0.0', integrity: 'sha512-b' } }],
  ['an optional package is of another version', { ...locked, 'node_modules/other-machine': { version: '1.0.0' } }],
])('%s: no match', (_name, packages) => {
  write('.', 'package-lock.json', locked);
  installed(packages);
  expect(packagesMatchLock(box)).toBe(false);
});

test('an install broken off half way, with a torn file, does not match', () => {
  write('.', 'package-lock.json', locked);
  mkdirSync(join(box, 'node_modules'));
  writeFileSync(join(box, 'node_modules', '.package-lock.json'), '{"packages": {');
  expect(packagesMatchLock(box)).toBe(false);
});
