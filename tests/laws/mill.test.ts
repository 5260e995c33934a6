import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Fibre } from '../../src/model/fibre.ts';
import { closingErrorRelative } from '../../src/model/ledger.ts';
import { readBeard } from '../../src/model/length/beard.ts';
import { breakAtRandom } from '../../src/model/length/breakage.ts';
import { gaussianByMass, totalLengthMm } from '../../src/model/length/length-distribution.ts';
import { removeByLength } from '../../src/model/length/removal.ts';
import { shortFibrePercent } from '../../src/model/length/statistics.ts';
import { type Lot, type Part, partMasses, parts } from '../../src/model/lot.ts';
import { card } from '../../src/model/mill/card.ts';
import { comb } from '../../src/model/mill/comber.ts';
import { judgeCount } from '../../src/model/mill/limits.ts';
import { spin } from '../../src/model/mill/spin.ts';
import { twistMultiplier } from '../../src/model/mill/twist.ts';
import { mediumFibre } from '../model/mill/lint-lot.ts';
import { propertySeed, runs } from './runs.ts';

const tolerance = 1e-9;
const scaled = (low: number, high: number, by = 1000) =>
  fc.integer({ min: Math.round(low * by), max: Math.round(high * by) }).map((n) => n / by);

const anyFibre: fc.Arbitrary<Fibre> = fc
  .record({
    centreMm: scaled(20, 42),
    spread: scaled(0.1, 0.2),
    theta: scaled(0.001, 0.03, 10_000),
    mtex: scaled(120, 230),
    strength: scaled(20, 45),
    tendency: scaled(0.6, 1.3),
  })
  .map(({ centreMm, spread, theta, mtex, strength, tendency }) => ({
    ...mediumFibre,
    lengths: breakAtRandom(gaussianByMass(centreMm, spread), theta),
    linearDensityMtex: mtex,
    strengthGPerTex: strength,
    breakTendency: tendency,
  }));

/** Any lot a bale could be, and worse: little lint, much trash, bone dry or dripping. */
const anyLot: fc.Arbitrary<Lot> = fc
  .record({
    fibre: anyFibre,
    lint: scaled(0.001, 500_000),
    trash: fc.array(scaled(0, 5000), { minLength: 6, maxLength: 6 }),
    water: fc.array(scaled(0, 50_000), { minLength: 3, maxLength: 3 }),
  })
  .map(({ fibre, lint, trash, water }) => ({
    dryKg: partMasses({
      lint,
      seed: trash[0]!,
      burs: trash[1]!,
      sticks: trash[2]!,
      leaf: trash[3]!,
      motes: trash[4]!,
      dirt: trash[5]!,
    }),
    waterKg: {
      lint: water[0]!,
      seed: trash[0] === 0 ? 0 : water[1]!,
      trash: trash.slice(1).every((kg) => kg === 0) ? 0 : water[2]!,
    },
    fibre,
  }));

const anySpinning = fc.record({
  system: fc.constantFrom('ringCarded' as const, 'ringCombed' as const, 'rotor' as const),
  countNe: fc.integer({ min: 4, max: 120 }),
  noilPercent: fc.integer({ min: 8, max: 20 }),
});

type Spin = typeof spin;

/** Every part and the water that comes into the mill leaves it, nothing is below zero. */
const spinningCloses = (make: Spin) =>
  fc.property(anyLot, anySpinning, (lot, decisions) => {
    const { ledger } = make(lot, decisions);
    expect(closingErrorRelative(ledger)).toBeLessThan(tolerance);
    for (const entry of [...ledger.in, ...ledger.out]) {
      expect(entry.waterKg).toBeGreaterThanOrEqual(0);
      for (const part of parts) expect(entry.dryKg[part]).toBeGreaterThanOrEqual(0);
    }
  });

/** The outgoing lot is what the ledger hands on. */
const lotIsInTheLedger = (make: Spin) =>
  fc.property(anyLot, anySpinning, (lot, decisions) => {
    const outcome = make(lot, decisions);
    const handed = outcome.ledger.out.find(({ account }) => account === (outcome.stopped ? 'bale' : 'lot'))!;
    for (const part of parts) expect(outcome.lot.dryKg[part]).toBe(handed.dryKg[part]);
  });

const sameTwice = (make: Spin) =>
  fc.property(anyLot, anySpinning, (lot, decisions) => {
    expect(make(lot, decisions)).toEqual(make(lot, decisions));
  });

type Draw = typeof comb;
/** Combing evens the lengths out: uniformity does not fall, the noil is what was set, and total length stays one. */
const combingEvens = (draw: Draw) =>
  fc.property(anyFibre, fc.integer({ min: 8, max: 20 }), (fibre, noilPercent) => {
    const carded = card(fibre).fibre;
    const { fibre: combed, removedFraction } = draw(carded, noilPercent);
    expect(Math.abs(removedFraction - noilPercent / 100)).toBeLessThan(tolerance);
    expect(Math.abs(totalLengthMm(combed.lengths) - 1)).toBeLessThan(tolerance);
    const before = readBeard(carded.lengths).uniformityPercent;
    expect(readBeard(combed.lengths).uniformityPercent).toBeGreaterThanOrEqual(before - tolerance);
  });

/** Combing takes short fibre: by weight and by number no more of it is left than there was, however much noil is set. */
const combingTakesShortFibre = (draw: Draw) =>
  fc.property(anyFibre, scaled(5, 25), (fibre, noilPercent) => {
    const carded = card(fibre).fibre;
    const combed = draw(carded, noilPercent).fibre;
    for (const by of ['weight', 'number'] as const) {
      expect(shortFibrePercent(combed.lengths, by)).toBeLessThanOrEqual(
        shortFibrePercent(carded.lengths, by) + tolerance,
      );
    }
  });

type Judge = typeof judgeCount;
/** Finer or longer cotton never makes a count worse, and the named count can be spun. */
const finerIsNoWorse = (judge: Judge) =>
  fc.property(
    anySpinning,
    scaled(120, 230),
    scaled(0.6, 1.4),
    scaled(0, 30),
    scaled(0, 0.3),
    ({ system, countNe }, mtex, inches, finer, longer) => {
      const rank = { comfortable: 2, strained: 1, impossible: 0 };
      const base = judge(system, countNe, mtex, inches);
      expect(rank[judge(system, countNe, mtex - finer, inches + longer).status]).toBeGreaterThanOrEqual(
        rank[base.status],
      );
      expect(judge(system, base.nearestFeasibleNe, mtex, inches).status).not.toBe('impossible');
    },
  );

type Twist = typeof twistMultiplier;
const longerNeedsNoMoreTwist = (twist: Twist) =>
  fc.property(
    fc.constantFrom('knitting' as const, 'weft' as const, 'semiWarp' as const, 'warp' as const),
    scaled(0.7, 1.5),
    scaled(0, 0.4),
    (use, inches, longer) => {
      expect(twist(use, inches + longer, 'ringCarded')).toBeLessThanOrEqual(
        twist(use, inches, 'ringCarded') + tolerance,
      );
    },
  );

const holds = <T>(property: fc.IPropertyWithHooks<T>, full = 500) =>
  fc.assert(property, { seed: propertySeed, numRuns: runs(full) });

describe('laws of the mill', () => {
  test('every part and the water close at spinning', () => holds(spinningCloses(spin)));
  test('the lot that goes on is the one in the ledger', () => holds(lotIsInTheLedger(spin)));
  test('the same lot and decisions give the same yarn', () => holds(sameTwice(spin), 100));
  test('combing takes the noil set and raises uniformity', () => holds(combingEvens(comb)));
  test('combing never raises short fibre', () => holds(combingTakesShortFibre(comb)));
  test('finer and longer cotton spins no worse', () => holds(finerIsNoWorse(judgeCount), 2000));
  test('longer staple needs no more twist', () => holds(longerNeedsNoMoreTwist(twistMultiplier), 2000));
});

describe('each law is seen to fail', () => {
  const fails = <T>(property: fc.IPropertyWithHooks<T>) => expect(() => holds(property)).toThrow();
  const without =
    (account: string): Spin =>
    (lot, decisions, use) => {
      const outcome = spin(lot, decisions, use);
      const out = outcome.ledger.out.filter((entry) => entry.account !== account);
      return { ...outcome, ledger: { ...outcome.ledger, out } };
    };
  test.each(['millTrash', 'cardStrips', 'comberNoil', 'hardWaste', 'invisibleLoss', 'evaporated', 'lot'])(
    'a mill that loses its %s',
    (account) => fails(spinningCloses(without(account))),
  );
  test('a mill that hands on more than it enters', () => {
    fails(
      lotIsInTheLedger((lot, decisions) => {
        const outcome = spin(lot, decisions);
        const lint: Part = 'lint';
        return { ...outcome, lot: { ...outcome.lot, dryKg: { ...outcome.lot.dryKg, [lint]: lot.dryKg.lint * 2 } } };
      }),
    );
  });
  test('a mill with a memory', () => {
    let calls = 0;
    fails(
      sameTwice((lot, decisions) => {
        calls++;
        return { ...spin(lot, decisions), yarnKilometres: calls };
      }),
    );
  });
  test('a comber that takes the long fibre', () => {
    fails(
      combingEvens((fibre, noilPercent) => ({
        fibre: { ...fibre, lengths: breakAtRandom(fibre.lengths, 0.05) },
        removedFraction: noilPercent / 100,
      })),
    );
  });
  test('a comber that keeps the noil and sells the sliver', () => {
    fails(
      combingTakesShortFibre((fibre, noilPercent) => {
        const { removed, removedFraction } = removeByLength(fibre.lengths, (l) => noilPercent / 100 / (1 + l / 10));
        return { fibre: { ...fibre, lengths: removed }, removedFraction };
      }),
    );
  });
  test('a comber set one point too high', () =>
    fails(combingEvens((fibre, noilPercent) => comb(fibre, noilPercent + 1))));
  test('a judge who takes fineness the wrong way', () => {
    fails(finerIsNoWorse((system, ne, mtex, inches) => judgeCount(system, ne, 350 - mtex, inches)));
  });
  test('a twist table read backwards', () => {
    fails(longerNeedsNoMoreTwist((use, inches, system) => 10 - twistMultiplier(use, inches, system)));
  });
});
