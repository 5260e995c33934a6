import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { askUnits } from '../../src/cli/ask-units.ts';

const folder = mkdtempSync(join(tmpdir(), 'units-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A stand-in that answers and ends as told, so that this file needs no program. */
function program(name: string, says: string, code: number): string {
  const path = join(folder, name);
  writeFileSync(path, `#!/bin/sh\necho '${says}'\nexit ${code}\n`);
  chmodSync(path, 0o755);
  return path;
}

test('the number the program prints', () => {
  expect(askUnits('480 lb', 'kg', program('answers', '217.7243376', 0))).toBe(217.7243376);
});

test('what it cannot convert is no number', () => {
  expect(askUnits('lb', 'm', program('refuses', '0.45359237', 1))).toBeNaN();
});

test('a program that is not installed is null', () => {
  expect(askUnits('lb', 'kg', join(folder, 'absent'))).toBeNull();
});
