import { expect, test } from 'vitest';
import { strengthCottons, threadStrength, threadSystems } from '../../src/lessons/thread-strength.ts';

test('Rieter encyclopaedia, count-related yarn tenacity: ring thread keeps 50 to 65 %, rotor 45 to 55 %', () => {
  for (const cotton of strengthCottons)
    for (const system of threadSystems) {
      const { share } = threadStrength(cotton, system);
      const [low, high] = system === 'rotor' ? [0.45, 0.55] : [0.5, 0.65];
      expect(share).toBeGreaterThanOrEqual(low);
      expect(share).toBeLessThanOrEqual(high);
    }
});

test('combed keeps more than carded, and carded more than rotor', () => {
  for (const cotton of strengthCottons) {
    const [carded, combed, rotor] = threadSystems.map((system) => threadStrength(cotton, system).share);
    expect(combed).toBeGreaterThan(carded!);
    expect(carded).toBeGreaterThan(rotor!);
  }
});

test('by hand: a 30 g/tex fiber in a thread of 19.685 tex would hold 590.5 g', () => {
  const { allFibersGrams, breaksAtGrams, share } = threadStrength('medium', 'ringCarded');
  expect(allFibersGrams).toBeCloseTo(30 * 19.685, 0);
  expect(breaksAtGrams).toBeCloseTo(allFibersGrams * share, 9);
});
