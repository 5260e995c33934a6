import { join } from 'node:path';
import { expect, test } from 'vitest';
import { factUses } from '../../src/cli/fact-uses.ts';

const uses = factUses(join(import.meta.dirname, '..', '..'));

test('a constant is found in the file that reads it', () => {
  expect(uses['module/facts.storageFacts.spoilingDays']).toEqual(['module/store']);
  expect(uses['module/facts.coverFacts.lostPerInch']).toContain('module/store');
});

test('a file that only shares a word, without importing the table, does not count', () => {
  expect(uses['module/facts.storageFacts.spoilingDays']).not.toContain('gin/press');
});
