import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import {
  type AverageName,
  averageFacts,
  type ChainAverages,
  statedAverages,
} from '../../src/model/trace/chain-averages.ts';
import type { Need } from '../../src/model/trace/need.ts';
import { seasonAverages, seasonClothOunces, seasonMasses } from '../../src/model/trace/season-chain.ts';
import { forwardFromBolls } from '../../src/model/trace/trace-forward.ts';
import { traceNeed } from '../../src/model/trace/trace-project.ts';
import { propertySeed, runs } from './runs.ts';

const within = 1e-9;
const apart = (one: number, other: number) => Math.abs(one / other - 1);

/** Every average somewhere in its stated range, in thousandths of it. */
const chains: fc.Arbitrary<ChainAverages> = fc
  .array(fc.integer({ min: 0, max: 1000 }), { minLength: 40, maxLength: 40 })
  .map((shares) => {
    const facts = Object.entries(averageFacts) as [AverageName, { value: number; range?: readonly [number, number] }][];
    const drawn = facts.map(([name, { value, range = [value, value] }], i) => {
      const share = shares[i % shares.length]! / 1000;
      return [name, range[0] + share * (range[1] - range[0])] as const;
    });
    return Object.fromEntries(drawn) as unknown as ChainAverages;
  });
const clothOf = (clothKg: number): Need => ({
  project: null,
  count: 1,
  clothSquareYards: 1,
  ouncesPerSquareYard: 4,
  clothKg,
  battingSquareYards: 0,
  battingOunces: 0,
  battingKg: 0,
  backingYards: null,
});

/** Back from cloth to bolls, and forward again to the same cloth, lint and field. */
function holdsThereAndBack(forward: typeof forwardFromBolls): void {
  fc.assert(
    fc.property(chains, fc.integer({ min: 1, max: 1_000_000 }), (chain, grams) => {
      const back = traceNeed(clothOf(grams / 1000), chain);
      const there = forward(back.bolls, 4, chain);
      for (const key of ['clothKg', 'lintKg', 'seedCottonKg', 'yarnKg', 'plants', 'squareMetres', 'seedKg'] as const) {
        expect(apart(there[key], back[key]), key).toBeLessThan(within);
      }
    }),
    { seed: propertySeed, numRuns: runs(500) },
  );
}

test('the way forward is the inverse of the way back', () => {
  holdsThereAndBack(forwardFromBolls);
});
test('a way forward that forgets the waste of the loom is seen', () => {
  const forgetful: typeof forwardFromBolls = (bolls, ounces, chain) =>
    forwardFromBolls(bolls, ounces, { ...chain, weavingYield: 1 });
  expect(() => holdsThereAndBack(forgetful)).toThrow();
});
test('a way forward that takes what reaches the gin for what grew is seen', () => {
  const forgetful: typeof forwardFromBolls = (bolls, ounces, chain) =>
    forwardFromBolls(bolls, ounces, { ...chain, deliveredPerGrown: 1 });
  expect(() => holdsThereAndBack(forgetful)).toThrow();
});

test.each(farms.map((farm) => [farm.id, farm] as const))(
  '%s: all bolls of a season go forward to the lint, yarn and cloth of its ledgers, and its cloth goes back to them',
  (_, farm) => {
    const season = runSeason(farm, 3, null);
    const masses = seasonMasses(season)!;
    const chain = { ...statedAverages('middle'), ...seasonAverages(season) };
    const there = forwardFromBolls(masses.bolls, seasonClothOunces(season)!, chain);
    expect(apart(there.seedCottonKg, masses.deliveredKg)).toBeLessThan(within);
    expect(apart(there.lintKg, masses.lintKg)).toBeLessThan(within);
    expect(apart(there.seedKg, masses.seedKg)).toBeLessThan(within);
    expect(apart(there.yarnKg, masses.yarnKg!)).toBeLessThan(within);
    expect(apart(there.clothKg, masses.clothKg!)).toBeLessThan(within);
    expect(apart(there.clothSquareYards * 0.83612736, masses.clothSquareMetres!)).toBeLessThan(within);
    const back = traceNeed(clothOf(masses.clothKg!), chain);
    expect(apart(back.bolls, masses.bolls)).toBeLessThan(within);
    expect(apart(back.squareMetres, farm.acres * 4046.8564224)).toBeLessThan(within);
  },
);
