import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chainLedger, closingErrorRelative, type MassLedger, massEntry } from '../../src/model/ledger.ts';
import {
  addMasses,
  type Lot,
  moistureFraction,
  type PartMasses,
  parts,
  scaleMasses,
  splitLot,
  waterGroups,
} from '../../src/model/lot.ts';
import { propertySeed, runs } from './runs.ts';

type Masses = Pick<Lot, 'dryKg' | 'waterKg'>;

const kg = fc.integer({ min: 0, max: 5_000_000 }).map((grams) => grams / 1000);
const fraction = fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000);
const record = <Key extends string, T>(keys: readonly Key[], value: fc.Arbitrary<T>) =>
  fc.record(Object.fromEntries(keys.map((key) => [key, value])) as Record<Key, fc.Arbitrary<T>>) as fc.Arbitrary<
    Record<Key, T>
  >;
/** Any masses. Water needs something to wet: a group without dry matter is dry. */
const masses: fc.Arbitrary<Masses> = fc
  .record({ dryKg: record(parts, kg), moisture: record(waterGroups, fraction) })
  .map(({ dryKg, moisture }) => ({
    dryKg,
    waterKg: {
      lint: (dryKg.lint + dryKg.size + dryKg.finish) * moisture.lint,
      seed: dryKg.seed * moisture.seed,
      trash: (dryKg.burs + dryKg.sticks + dryKg.leaf + dryKg.motes + dryKg.dirt) * moisture.trash,
    },
  }));
const fractions = record(parts, fraction);

type Split = (lot: Masses, removed: Partial<PartMasses>) => { kept: Masses; removed: Masses };
const relative = (a: number, b: number): number => (a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b)));

/** A split loses and makes nothing: each part and the water of each group add up again. */
const splitIsWhole = (split: Split) =>
  fc.assert(
    fc.property(masses, fractions, (lot, removedFraction) => {
      const { kept, removed } = split(lot, removedFraction);
      const sum = addMasses(kept, removed);
      for (const part of parts) expect(relative(sum.dryKg[part], lot.dryKg[part])).toBeLessThan(1e-12);
      for (const group of waterGroups) expect(relative(sum.waterKg[group], lot.waterKg[group])).toBeLessThan(1e-12);
      for (const side of [kept, removed]) {
        expect(Math.min(...Object.values(side.dryKg), ...Object.values(side.waterKg))).toBeGreaterThanOrEqual(0);
      }
    }),
    { seed: propertySeed, numRuns: runs(2000) },
  );

/** Both sides of a split are as damp as the lot was, wherever they have anything to be damp. */
const splitIsEvenlyDamp = (split: Split) =>
  fc.assert(
    fc.property(masses, fractions, (lot, removedFraction) => {
      for (const side of Object.values(split(lot, removedFraction))) {
        for (const group of waterGroups) {
          const moisture = moistureFraction(side, group);
          if (moisture > 0) expect(relative(moisture, moistureFraction(lot, group))).toBeLessThan(1e-9);
        }
      }
    }),
    { seed: propertySeed, numRuns: runs(2000) },
  );

/** A chain of splits, each handing what it kept to the next. */
function chainOf(
  start: Masses,
  steps: readonly Partial<PartMasses>[],
  spoil: (lot: Masses, step: number) => Masses,
): MassLedger[] {
  let lot = start;
  return steps.map((removedFraction, step) => {
    const before = spoil(lot, step);
    const { kept, removed } = splitLot(before, removedFraction);
    lot = kept;
    const entered = step === 0 ? massEntry('grown', before) : massEntry('lot', before);
    return { station: 'cleaning', in: [entered], out: [massEntry('ginTrash', removed), massEntry('lot', kept)] };
  });
}

describe('laws of mass', () => {
  test('what a split parts, adding puts together', () => splitIsWhole(splitLot));
  test('a split is evenly damp', () => splitIsEvenlyDamp(splitLot));
  test('a lot scaled and scaled back is the lot', () => {
    fc.assert(
      fc.property(masses, fc.integer({ min: 1, max: 9000 }), (lot, thousandths) => {
        const back = scaleMasses(scaleMasses(lot, thousandths / 1000), 1000 / thousandths);
        for (const part of parts) expect(relative(back.dryKg[part], lot.dryKg[part])).toBeLessThan(1e-12);
      }),
      { seed: propertySeed, numRuns: runs(2000) },
    );
  });
  test('a chain of any splits closes at every station and as a whole', () => {
    fc.assert(
      fc.property(masses, fc.array(fractions, { minLength: 1, maxLength: 8 }), (start, steps) => {
        const ledgers = chainOf(start, steps, (lot) => lot);
        for (const ledger of ledgers) expect(closingErrorRelative(ledger)).toBeLessThan(1e-9);
        expect(closingErrorRelative(chainLedger(ledgers))).toBeLessThan(1e-9);
      }),
      { seed: propertySeed, numRuns: runs(2000) },
    );
  });
  test('a lot that loses a millionth on its way between any two stations is seen, though each station closes', () => {
    const lint = fc.integer({ min: 1000, max: 5_000_000 }).map((grams) => grams / 1000);
    const few = fc.array(
      fractions.map((all) => ({ ...all, lint: all.lint / 100 })),
      { minLength: 3, maxLength: 6 },
    );
    fc.assert(
      fc.property(masses, lint, few, fc.nat({ max: 1 }), (start, lintKg, steps, place) => {
        const whole = { ...start, dryKg: { ...start.dryKg, lint: lintKg } };
        const ledgers = chainOf(whole, steps, (lot, step) => (step === place + 1 ? scaleMasses(lot, 1 - 1e-6) : lot));
        for (const ledger of ledgers) expect(closingErrorRelative(ledger)).toBeLessThan(1e-9);
        expect(closingErrorRelative(chainLedger(ledgers))).toBeGreaterThan(5e-7);
      }),
      { seed: propertySeed, numRuns: runs(2000) },
    );
  });
});

describe('each law is seen to fail', () => {
  test('on a split that adds what it should take away', () => {
    const wrong: Split = (lot, removedFraction) => {
      const { kept, removed } = splitLot(lot, removedFraction);
      return { kept: addMasses(kept, scaleMasses(removed, 1e-6)), removed };
    };
    expect(() => splitIsWhole(wrong)).toThrow();
  });
  test('on a split that forgets the water of what it removes', () => {
    const wrong: Split = (lot, removedFraction) => {
      const { kept, removed } = splitLot(lot, removedFraction);
      return { kept, removed: { ...removed, waterKg: { lint: 0, seed: 0, trash: 0 } } };
    };
    expect(() => splitIsWhole(wrong)).toThrow();
  });
  test('on a split that keeps all the water on one side', () => {
    const wrong: Split = (lot, removedFraction) => {
      const { kept, removed } = splitLot(lot, removedFraction);
      return {
        kept: { ...kept, waterKg: lot.waterKg },
        removed: { ...removed, waterKg: { lint: 0, seed: 0, trash: 0 } },
      };
    };
    expect(() => splitIsEvenlyDamp(wrong)).toThrow();
  });
});
