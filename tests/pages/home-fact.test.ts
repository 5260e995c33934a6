import { expect, test } from 'vitest';
import { en } from '../../src/language/messages/en.ts';
import { es } from '../../src/language/messages/es.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';

/** Side of the patch that the lint of one boll makes, inches; the mean of a few seasons of a farm. */
const seeds = [1, 2, 3, 4, 5];
const sideInches = (farm: (typeof farms)[number]): number =>
  seeds.reduce((sum, seed) => sum + runSeason(farm, seed, null).sewing!.patchInchesPerBoll!, 0) / seeds.length;

const numbers = { four: 4, cuatro: 4, ten: 10, diez: 10 };
const said = (heading: string): number => Object.entries(numbers).find(([word]) => heading.includes(` ${word} `))![1];

test('the first page says of the patch what the model gives for the first farm, in inches and in centimeters', () => {
  const side = sideInches(farms[0]!);
  for (const { heading } of [en.navigation.doors, es.navigation.doors]) {
    expect(Math.round(side)).toBe(said(heading.us));
    expect(Math.round(side * 2.54)).toBe(said(heading.metric));
  }
});

test('on every farm the patch is about that: within an inch of it', () => {
  for (const farm of farms) expect(Math.abs(sideInches(farm) - said(en.navigation.doors.heading.us))).toBeLessThan(1);
});
