import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openStream, type Random, type StreamName, streamNames } from '../../src/model/random.ts';
import { propertySeed, runs } from './runs.ts';

type Open = (seed: number, stream: StreamName, substream?: number) => Random;
const settings = { seed: propertySeed, numRuns: runs(1000) };
const seeds = fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 });
const names = fc.constantFrom(...streamNames);
const substreams = fc.nat({ max: 5000 });
const first = (random: Random, count = 8) => Array.from({ length: count }, () => random.uniform());

/** A stream is a function of its seed, its name and its substream, and of nothing that was drawn elsewhere. */
const streamsStandAlone = (open: Open) =>
  fc.assert(
    fc.property(seeds, names, names, substreams, (seed, name, other, substream) => {
      const alone = first(open(seed, name, substream));
      const disturbed = open(seed, name, substream);
      const elsewhere = open(seed, other, substream + 1);
      const mixed = Array.from({ length: 8 }, () => {
        elsewhere.normal();
        return disturbed.uniform();
      });
      expect(mixed).toEqual(alone);
    }),
    settings,
  );

/** Another seed, name or substream is another stream. */
const streamsDiffer = (open: Open) =>
  fc.assert(
    fc.property(seeds, names, names, substreams, (seed, name, other, substream) => {
      const numbers = first(open(seed, name, substream));
      if (name !== other) expect(first(open(seed, other, substream))).not.toEqual(numbers);
      expect(first(open(seed + 1, name, substream))).not.toEqual(numbers);
      expect(first(open(seed, name, substream + 1))).not.toEqual(numbers);
    }),
    settings,
  );

/** Every kind of number keeps its limits. */
const numbersKeepLimits = (open: Open) =>
  fc.assert(
    fc.property(seeds, names, fc.integer({ min: -50, max: 50 }), fc.nat({ max: 100 }), (seed, name, low, span) => {
      const random = open(seed, name);
      for (let i = 0; i < 20; i++) {
        const uniform = random.uniform();
        expect(uniform).toBeGreaterThanOrEqual(0);
        expect(uniform).toBeLessThan(1);
        const integer = random.integer(low, low + span);
        expect(Number.isInteger(integer)).toBe(true);
        expect(integer).toBeGreaterThanOrEqual(low);
        expect(integer).toBeLessThanOrEqual(low + span);
        expect(Number.isFinite(random.normal())).toBe(true);
      }
    }),
    settings,
  );

describe('laws of chance', () => {
  test('a stream stands alone', () => streamsStandAlone(openStream));
  test('other seed, other name, other substream: other numbers', () => streamsDiffer(openStream));
  test('numbers keep their limits', () => numbersKeepLimits(openStream));
});

describe('each law is seen to fail', () => {
  test('on streams that share one generator', () => {
    const shared = openStream(1, 'weather');
    expect(() => streamsStandAlone(() => shared)).toThrow();
  });
  test('on streams that forget their name', () => {
    expect(() => streamsDiffer((seed, _name, substream) => openStream(seed, 'gin', substream))).toThrow();
  });
  test('on streams that forget their substream', () => {
    expect(() => streamsDiffer((seed, name) => openStream(seed, name))).toThrow();
  });
  test('on integers that leave the upper end out of their limits', () => {
    const wrong: Open = (seed, name) => {
      const random = openStream(seed, name);
      return { ...random, integer: (low, high) => random.integer(low, high + 1) };
    };
    expect(() => numbersKeepLimits(wrong)).toThrow();
  });
});
