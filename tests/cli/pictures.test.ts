import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { stationIds } from '../../src/model/station.ts';

test('the script that takes the pictures goes through every station in its order', () => {
  // A script without dependencies cannot import the model's TypeScript; what it lists is read.
  const [, listed] = /const stations = \[([^\]]*)\]/.exec(readFileSync('src/cli/pictures.mjs', 'utf8'))!;
  expect(listed!.match(/\w+/g)).toEqual([...stationIds]);
});
