import { expect, test } from 'vitest';
import { needleFor } from '../../../src/model/cloth/needle.ts';

test.each([
  [70, 'light', '70/10'],
  [99.9, 'light', '70/10'],
  [100, 'medium', '75/11'],
  [250, 'heavy', '90/14'],
  [600, 'heavy', '90/14'],
])('%f g/m2 is %s', (grams, weight, needle) => {
  expect(needleFor(grams)).toMatchObject({ weight, needles: [needle, expect.any(String)] });
});
