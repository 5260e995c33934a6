import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ClassingOutcome, classBales, type PressedBale } from '../../src/model/classing/class-bales.ts';
import { uplandColour } from '../../src/model/classing/colour.ts';
import { colourGrades } from '../../src/model/classing/colour-grade-facts.ts';
import { leafGrade } from '../../src/model/classing/leaf.ts';
import { stapleCode32nds } from '../../src/model/classing/staple.ts';
import { trashAreaPercent } from '../../src/model/classing/trash-area.ts';
import { decisionTable } from '../../src/model/decisions.ts';
import { closingErrorRelative } from '../../src/model/ledger.ts';
import { type Lot, totalKg } from '../../src/model/lot.ts';
import { openStream } from '../../src/model/random.ts';
import { kilogramsFromPounds } from '../../src/model/units.ts';
import { fibreOf, lintLot, pressedBales, southeast } from '../model/classing/lots.ts';
import { propertySeed, runs } from './runs.ts';

/** Scaled integers: fc.double spends its runs on values no cotton has. */
const thousandths = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map((n) => n / 1000);
const check = (property: fc.IProperty<unknown[]> | fc.IRawProperty<unknown>, full = 500) =>
  fc.assert(property as fc.IRawProperty<unknown>, { seed: propertySeed, numRuns: runs(full) });

const upland = fibreOf();
const pima = fibreOf({ kind: 'pima', lengthIn: 1.42, uniformityPercent: 86, micronaire: 3.9 });
const marketId = fc.constantFrom(...decisionTable.classing.market.options);
const seasons = fc.record({
  fibre: fc.constantFrom(upland, pima),
  baleCount: fc.integer({ min: 0, max: 30 }),
  leaf: thousandths(0, 40),
  sticks: thousandths(0, 6),
  motes: thousandths(0, 9),
  weight: thousandths(0.02, 1.2),
  seed: fc.integer({ min: 0, max: 2 ** 31 - 1 }),
  balesPerModule: thousandths(0.2, 17),
  era: fc.constantFrom('present', 'thirties'),
  market: marketId,
  moduleAveraging: fc.boolean(),
  stripped: fc.boolean(),
});
type SeasonInput = typeof seasons extends fc.Arbitrary<infer T> ? T : never;

function lotOf({ fibre, baleCount, leaf, sticks, motes, weight }: SeasonInput): Lot {
  const lot = lintLot(fibre, Math.max(1, baleCount) * weight, { leaf, sticks, motes, dirt: leaf / 30, burs: sticks });
  return baleCount === 0 ? { ...lintLot(fibre, 0), fibre } : lot;
}
const classed = (input: SeasonInput, lot = lotOf(input), bales = pressedBales(input.baleCount)): ClassingOutcome =>
  classBales(lot, bales, { market: input.market, moduleAveraging: input.moduleAveraging }, input);

describe('mass', () => {
  const closes = (run: (input: SeasonInput) => ClassingOutcome) =>
    fc.property(seasons, (input) => {
      const lot = lotOf(input);
      const outcome = run(input);
      expect(closingErrorRelative(outcome.ledger)).toBeLessThan(1e-9);
      const [sample, rest] = outcome.ledger.out;
      expect(sample!.account).toBe('classingSample');
      expect(outcome.lot.dryKg).toEqual(rest!.dryKg);
      const wanted = Math.min(totalKg(lot), kilogramsFromPounds(input.baleCount / 2));
      expect(Math.abs(outcome.sample.kg - wanted)).toBeLessThanOrEqual(1e-9 * wanted);
      expect(Math.abs(totalKg(lot) - totalKg(outcome.lot) - outcome.sample.kg)).toBeLessThanOrEqual(
        1e-9 * totalKg(lot),
      );
    });
  test('half a pound a bale leaves, water in proportion, and the ledger closes', () => check(closes(classed)));
  test('a sample that is cut and not taken off is seen', () => {
    const forgetful = (input: SeasonInput) => ({ ...classed(input), lot: lotOf(input) });
    expect(() => check(closes(forgetful))).toThrow();
  });
  test('a sample taken dry is seen', () => {
    const dry = (input: SeasonInput): ClassingOutcome => {
      const outcome = classed(input);
      const out = outcome.ledger.out.map((entry, i) => (i === 0 ? { ...entry, waterKg: 0 } : entry));
      return { ...outcome, ledger: { ...outcome.ledger, out } };
    };
    expect(() => check(closes(dry))).toThrow();
  });
});

describe('the same again', () => {
  const repeats = (run: (input: SeasonInput, bales: PressedBale[]) => ClassingOutcome) =>
    fc.property(seasons, fc.integer({ min: 1, max: 12 }), (input, more) => {
      const some = { ...input, baleCount: Math.max(1, input.baleCount), moduleAveraging: false };
      const lot = lotOf(some);
      // One lot, read as fewer and as more bales, and in the opposite order.
      const few = run(some, pressedBales(some.baleCount)).classed;
      const many = run(some, pressedBales(some.baleCount + more).reverse()).classed;
      expect(run(some, pressedBales(some.baleCount)).classed).toEqual(few);
      for (const bale of few) expect(many.find(({ number }) => number === bale.number)).toEqual(bale);
      expect(totalKg(lot)).toBeGreaterThan(0);
    });
  test('classing again gives every bale its record again, whatever follows it and in any order', () =>
    check(
      repeats((input, bales) => classed(input, lotOf(input), bales)),
      200,
    ));
  test('noise from one stream shared by all bales is seen', () => {
    const shared = (input: SeasonInput, bales: PressedBale[]): ClassingOutcome => {
      const random = openStream(input.seed, 'classing');
      const outcome = classed(input, lotOf(input), bales);
      return {
        ...outcome,
        classed: outcome.classed.map((bale) => ({
          ...bale,
          reading: { ...bale.reading, strengthGPerTex: bale.reading.strengthGPerTex + random.normal() },
        })),
      };
    };
    expect(() => check(repeats(shared), 200)).toThrow();
  });
  const moduleKeepsItsMean = (run: (input: SeasonInput, bales: PressedBale[]) => ClassingOutcome) =>
    fc.property(seasons, fc.integer({ min: 1, max: 9 }), (input, more) => {
      const present = { ...input, era: 'present' as const, moduleAveraging: true, baleCount: 4, balesPerModule: 4 };
      const first = run(present, pressedBales(4)).classed[0]!;
      expect(run(present, pressedBales(4 + more)).classed[0]).toEqual(first);
    });
  test('a full first module keeps its mean when more modules follow', () =>
    check(
      moduleKeepsItsMean((input, bales) => classed(input, lotOf(input), bales)),
      200,
    ));
  test('a mean taken over all modules is seen', () => {
    const overAll = (input: SeasonInput, bales: PressedBale[]): ClassingOutcome => {
      const outcome = classed(input, lotOf(input), bales);
      const all = outcome.classed.reduce((sum, { ownReading }) => sum + ownReading.lengthIn, 0) / bales.length;
      const reading = (bale: ClassingOutcome['classed'][number]) => ({ ...bale.reading, lengthIn: all });
      return { ...outcome, classed: outcome.classed.map((bale) => ({ ...bale, reading: reading(bale) })) };
    };
    expect(() => check(moduleKeepsItsMean(overAll), 200)).toThrow();
  });
});

describe('charts', () => {
  type Staple = (kind: 'upland' | 'pima', lengthIn: number) => number;
  const rises = (staple: Staple) =>
    fc.property(fc.constantFrom('upland', 'pima'), thousandths(0.5, 1.7), thousandths(0, 0.4), (kind, length, more) => {
      expect(staple(kind, length + more)).toBeGreaterThanOrEqual(staple(kind, length));
    });
  test('staple never falls with length', () => check(rises(stapleCode32nds)));
  test('one code too long for all short cotton is seen', () => {
    const slipped: Staple = (kind, length) => (length < 1.07 ? 52 : stapleCode32nds(kind, length));
    expect(() => check(rises(slipped))).toThrow();
  });
  const readsHundredths = (staple: Staple) =>
    fc.property(thousandths(0.5, 1.7), (length) => {
      expect(staple('upland', Math.round(length * 100) / 100)).toBe(staple('upland', length));
    });
  test('staple is read off the length in hundredths', () => check(readsHundredths(stapleCode32nds)));
  test('a staple read off the length in thousandths is seen', () => {
    expect(() => check(readsHundredths((kind, length) => stapleCode32nds(kind, length - 0.004)))).toThrow();
  });

  const codes = new Set(colourGrades.rows.map(({ code }) => code));
  const exists = (colour: (rd: number, b: number) => string) =>
    fc.property(thousandths(30, 95), thousandths(3, 22), (rd, b) => {
      expect(codes).toContain(colour(rd, b));
    });
  test('every Rd and +b has a colour grade that exists', () => check(exists(uplandColour), 2000));
  test('a grade that no group has is seen', () => {
    expect(() =>
      check(
        exists((rd, b) => uplandColour(rd, b).replace('8', '7')),
        2000,
      ),
    ).toThrow();
  });
  const brighterIsBetter = (colour: typeof uplandColour) =>
    fc.property(thousandths(45, 90), thousandths(0, 8), thousandths(6, 12), (rd, more, b) => {
      const [darker, brighter] = [colour(rd, b), colour(rd + more, b)];
      if (darker[1] === brighter[1]) expect(Number(brighter[0])).toBeLessThanOrEqual(Number(darker[0]));
      else expect(Number(brighter[1])).toBeLessThan(Number(darker[1]));
    });
  test('brighter cotton of one yellowness never falls in grade inside a group', () =>
    check(brighterIsBetter(uplandColour)));
  test('a chart hung upside down is seen', () => {
    expect(() => check(brighterIsBetter((rd, b) => uplandColour(140 - rd, b)))).toThrow();
  });

  const leafRises = (grade: typeof leafGrade) =>
    fc.property(fc.constantFrom('upland', 'pima'), thousandths(0, 5), thousandths(0, 2), (kind, area, more) => {
      expect(grade(kind, area + more)).toBeGreaterThanOrEqual(grade(kind, area));
    });
  test('leaf grade never falls with trash area', () => check(leafRises(leafGrade)));
  test('a leaf grade that counts clean area is seen', () => {
    expect(() => check(leafRises((kind, area) => leafGrade(kind, Math.max(0, 5 - area))))).toThrow();
  });

  const areaIsAShare = (areaOf: typeof trashAreaPercent) =>
    fc.property(thousandths(0.1, 30), thousandths(0.01, 5), thousandths(0.01, 50), (leaf, sticks, bales) => {
      const area = (trash: object, count = 1) => areaOf(lintLot(upland, count, trash));
      expect(area({ leaf, sticks }, bales) / area({ leaf, sticks })).toBeCloseTo(1, 9);
      expect(area({ leaf, sticks })).toBeGreaterThan(area({ leaf }));
    });
  test('trash area does not hang on the size of the lot, and each kind of trash adds to it', () =>
    check(areaIsAShare(trashAreaPercent), 200));
  test('a trash area that grows with the lot is seen', () => {
    expect(() =>
      check(
        areaIsAShare((lot) => trashAreaPercent(lot) * lot.dryKg.lint),
        200,
      ),
    ).toThrow();
  });
});

/** The record of each bale in each market: all the same. */
function marketMovesPriceOnly(run: typeof classBales): void {
  const bales = pressedBales(6);
  const lot = lintLot(upland, 6);
  const context = { era: 'present', seed: 3, balesPerModule: 4, stripped: false } as const;
  const records = decisionTable.classing.market.options.map((market) =>
    run(lot, bales, { ...southeast, market }, context).classed.map(({ color, leaf, staple32nds, reading }) => ({
      color,
      leaf,
      staple32nds,
      reading,
    })),
  );
  for (const record of records) expect(record).toEqual(records[0]);
}
test('the market moves the price of a bale and nothing else of its record', () => marketMovesPriceOnly(classBales));
test('a record that hangs on the market is seen', () => {
  const biased: typeof classBales = (lot, bales, decisions, context) => {
    const outcome = classBales(lot, bales, decisions, context);
    const graded = (leaf: number) => (decisions.market === southeast.market ? leaf + 1 : leaf);
    return { ...outcome, classed: outcome.classed.map((bale) => ({ ...bale, leaf: graded(bale.leaf) })) };
  };
  expect(() => marketMovesPriceOnly(biased)).toThrow();
});
