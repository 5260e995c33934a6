import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WovenConstruction } from '../../src/model/cloth/construction.ts';
import { relax } from '../../src/model/cloth/crimp.ts';
import { describeCloth } from '../../src/model/cloth/describe-cloth.ts';
import { clothFinishes } from '../../src/model/cloth/facts.ts';
import { sewingTable } from '../../src/model/cloth/sew.ts';
import { averageYarnNumber } from '../../src/model/cloth/tariff-class.ts';
import { weave } from '../../src/model/cloth/weave.ts';
import { weaveIds } from '../../src/model/cloth/weaves.ts';
import { yarnGramsPerSquareMetre } from '../../src/model/cloth/weight.ts';
import { closingErrorRelative } from '../../src/model/ledger.ts';
import { type Lot, partMasses, parts, totalKg } from '../../src/model/lot.ts';
import { yarnLot } from '../model/cloth/yarn-lot.ts';
import { propertySeed, runs } from './runs.ts';

const tolerance = 1e-9;
const scaled = (low: number, high: number, by = 1000) =>
  fc.integer({ min: Math.round(low * by), max: Math.round(high * by) }).map((n) => n / by);
const near = (a: number, b: number) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(tolerance * Math.max(Math.abs(a), Math.abs(b)));

const anyLot: fc.Arbitrary<Lot> = fc
  .record({ lint: scaled(0.001, 100_000), specks: scaled(0, 500), seed: scaled(0, 50), water: scaled(0, 20_000) })
  .map(({ lint, specks, seed, water }) => ({
    dryKg: partMasses({ lint, leaf: 0.7 * specks, motes: 0.3 * specks, seed }),
    waterKg: { lint: water, seed: 0.1 * seed, trash: 0.1 * specks },
    fibre: yarnLot.fibre,
  }));
const anyYarn = scaled(5, 150).map((tex) => ({
  tex,
  combed: false,
  fibreEndsPerCm: 100,
  shortFibrePercentByWeight: 8,
}));
const anyWeaving = fc.record({
  structure: fc.constantFrom('plain' as const, 'twill' as const, 'sateen' as const, 'jersey' as const),
  endsPerInch: fc.integer({ min: 20, max: 220 }),
  picksPerInch: fc.integer({ min: 20, max: 200 }),
  finish: fc.constantFrom(...clothFinishes),
});
const anySewing = fc.record({ prewash: fc.boolean(), seamInches: fc.constantFrom(0.25, 0.375, 0.5, 0.625) });
const anyConstruction: fc.Arbitrary<WovenConstruction> = fc.record({
  weave: fc.constantFrom(...weaveIds),
  warpTex: scaled(5, 150),
  weftTex: scaled(5, 150),
  endsPerInch: scaled(10, 220),
  picksPerInch: scaled(10, 200),
  warpCrimpPercent: scaled(0, 20),
  weftCrimpPercent: scaled(0, 20),
});

type Weave = typeof weave;
/** Every part and the water that comes to the loom leaves it, nothing is below zero, and the weight told is the weight on the scale. */
const weavingCloses = (make: Weave) =>
  fc.property(anyLot, anyYarn, anyWeaving, (lot, yarn, decisions) => {
    const { ledger, cloth, lot: made } = make(lot, yarn, decisions);
    expect(closingErrorRelative(ledger)).toBeLessThan(tolerance);
    for (const entry of [...ledger.in, ...ledger.out]) {
      expect(entry.waterKg).toBeGreaterThanOrEqual(0);
      for (const part of parts) expect(entry.dryKg[part]).toBeGreaterThanOrEqual(0);
    }
    if (cloth) near(cloth.gramsPerSquareMetre * cloth.squareMetres, totalKg(made) * 1000);
  });

type Sew = typeof sewingTable;
/** At the table the chain ends: all is cloth, offcuts or washed out. */
const sewingCloses = (sew: Sew) =>
  fc.property(anyLot, anyYarn, anyWeaving, anySewing, (lot, yarn, decisions, sewing) => {
    const woven = weave(lot, yarn, decisions);
    fc.pre(woven.cloth !== null);
    const { ledger } = sew(woven.lot, woven.cloth!, sewing, { bolls: 1000, baleNetKg: 200 });
    expect(closingErrorRelative(ledger)).toBeLessThan(tolerance);
    expect(ledger.out.map(({ account }) => account)).not.toContain('lot');
  });

type Relax = typeof relax;
/** Drawing in keeps every metre and gram of yarn: a piece of cloth holds as much after as before, on less ground. */
const yarnIsKept = (draw: Relax) =>
  fc.property(anyConstruction, scaled(0, 20), scaled(0, 20), (before, lengthPercent, widthPercent) => {
    const after = draw(before, lengthPercent, widthPercent);
    const length = 1 - lengthPercent / 100;
    const width = 1 - widthPercent / 100;
    // A piece one inch each way before: ends and picks are counted, each as long as the cloth and its crimp.
    near(after.endsPerInch * width, before.endsPerInch);
    near(after.picksPerInch * length, before.picksPerInch);
    near(length * (1 + after.warpCrimpPercent / 100), 1 + before.warpCrimpPercent / 100);
    near(width * (1 + after.weftCrimpPercent / 100), 1 + before.weftCrimpPercent / 100);
    const grams = (cloth: WovenConstruction) => {
      const { warp, weft } = yarnGramsPerSquareMetre(cloth);
      return warp + weft;
    };
    near(grams(after) * length * width, grams(before));
  });

type Describe = typeof describeCloth;
/** The four forms of the average yarn number in the tariff schedule give one number. */
const fourFormsAgree = (describeIt: Describe) =>
  fc.property(anyConstruction, fc.integer({ min: 1, max: 4 }), scaled(20, 110), (cloth, singles, widthInches) => {
    const { warpTex, weftTex, ...rest } = cloth;
    const found = describeIt({
      ...rest,
      warp: { singleTex: warpTex / singles, singles },
      weft: { singleTex: weftTex, singles: 1 },
      widthInches,
    });
    const {
      singlesPerSquareCm: t,
      gramsPerMetre,
      gramsPerSquareMetre,
      metresPerKilogram,
      squareMetresPerKilogram,
    } = found;
    const widthCm = widthInches * 2.54;
    const forms = [
      (100 * t) / gramsPerSquareMetre,
      (widthCm * t) / gramsPerMetre,
      (squareMetresPerKilogram * t) / 10,
      (widthCm * metresPerKilogram * t) / 1000,
    ];
    for (const form of forms) near(form, forms[0]!);
    // Whole numbers on paper may fall either side of a form's rounding.
    expect(Math.abs(found.averageYarnNumber - Math.floor(forms[3]! + tolerance))).toBeLessThanOrEqual(
      Math.abs(forms[3]! - Math.round(forms[3]!)) < 1e-6 ? 1 : 0,
    );
    expect(averageYarnNumber(t, gramsPerSquareMetre)).toBe(found.averageYarnNumber);
  });

/** A thread more, or a coarser one, is a heavier cloth with no less cover. */
const tighterIsHeavier = (describeIt: Describe) =>
  fc.property(anyConstruction, scaled(0.1, 20), scaled(0.1, 20), ({ warpTex, weftTex, ...rest }, ends, tex) => {
    const yarn = (singleTex: number) => ({ singleTex, singles: 1 });
    const base = describeIt({ ...rest, warp: yarn(warpTex), weft: yarn(weftTex) });
    const tighter = describeIt({
      ...rest,
      warp: yarn(warpTex + tex),
      weft: yarn(weftTex),
      endsPerInch: rest.endsPerInch + ends,
    });
    expect(tighter.gramsPerSquareMetre).toBeGreaterThan(base.gramsPerSquareMetre);
    expect(tighter.warpCover).toBeGreaterThan(base.warpCover);
    expect(tighter.coverFraction).toBeGreaterThanOrEqual(base.coverFraction - tolerance);
  });

const sameTwice = (make: Weave) =>
  fc.property(anyLot, anyYarn, anyWeaving, (lot, yarn, decisions) => {
    expect(make(lot, yarn, decisions)).toEqual(make(lot, yarn, decisions));
  });

const holds = <T>(property: fc.IPropertyWithHooks<T>, full = 1000) =>
  fc.assert(property, { seed: propertySeed, numRuns: runs(full) });

describe('laws of the cloth', () => {
  test('every part and the water close at weaving and finishing', () => holds(weavingCloses(weave), 2000));
  test('every part and the water close at the sewing table, with nothing left', () =>
    holds(sewingCloses(sewingTable), 2000));
  test('shrinkage keeps the length and the mass of the yarn', () => holds(yarnIsKept(relax), 2000));
  test('the four tariff forms of the average yarn number agree', () => holds(fourFormsAgree(describeCloth), 2000));
  test('tighter cloth is heavier', () => holds(tighterIsHeavier(describeCloth)));
  test('the same yarn and decisions give the same cloth', () => holds(sameTwice(weave), 300));
});

describe('each law is seen to fail', () => {
  const fails = <T>(property: fc.IPropertyWithHooks<T>) => expect(() => holds(property)).toThrow();
  const loomWithout =
    (side: 'in' | 'out', account: string): Weave =>
    (lot, yarn, decisions) => {
      const outcome = weave(lot, yarn, decisions);
      const ledger = { ...outcome.ledger, [side]: outcome.ledger[side].filter((entry) => entry.account !== account) };
      return { ...outcome, ledger };
    };
  test.each([
    ['out', 'hardWaste'],
    ['out', 'effluent'],
    ['out', 'evaporated'],
    ['out', 'lot'],
    ['out', 'yarn'],
    ['in', 'warpSize'],
    ['in', 'finish'],
    ['in', 'moistureTakenUp'],
  ] as const)('a loom that leaves %s %s out', (side, account) => fails(weavingCloses(loomWithout(side, account))));
  test('a cloth that weighs more than its label', () => {
    fails(
      weavingCloses((lot, yarn, decisions) => {
        const outcome = weave(lot, yarn, decisions);
        const { cloth } = outcome;
        return { ...outcome, cloth: cloth && { ...cloth, squareMetres: cloth.squareMetres * 1.001 } };
      }),
    );
  });
  test('a table that sweeps its offcuts under it', () => {
    fails(
      sewingCloses((...given) => {
        const outcome = sewingTable(...given);
        const out = outcome.ledger.out.filter(({ account }) => account !== 'offcuts');
        return { ...outcome, ledger: { ...outcome.ledger, out } };
      }),
    );
  });
  test('a cloth that draws in without more crimp', () => {
    fails(
      yarnIsKept((cloth, length, width) => ({
        ...relax(cloth, length, width),
        warpCrimpPercent: cloth.warpCrimpPercent,
      })),
    );
  });
  test('a cloth that draws in the wrong way round', () =>
    fails(yarnIsKept((cloth, length, width) => relax(cloth, width, length))));
  test('a width left out of the linear weight', () => {
    fails(
      fourFormsAgree((cloth) => ({ ...describeCloth(cloth), gramsPerMetre: describeCloth(cloth).gramsPerSquareMetre })),
    );
  });
  test('a plied yarn counted once', () => {
    fails(
      fourFormsAgree((cloth) => {
        const found = describeCloth(cloth);
        return { ...found, averageYarnNumber: Math.floor(found.averageYarnNumber / cloth.warp.singles) };
      }),
    );
  });
  test('a cloth that counts count for thickness', () => {
    fails(
      tighterIsHeavier((cloth) => ({
        ...describeCloth(cloth),
        gramsPerSquareMetre: 1 / describeCloth(cloth).gramsPerSquareMetre,
      })),
    );
  });
  test('a loom with a memory', () => {
    let calls = 0;
    fails(
      sameTwice((...given) => {
        calls++;
        const outcome = weave(...given);
        return { ...outcome, cloth: outcome.cloth && { ...outcome.cloth, runningYards: calls } };
      }),
    );
  });
});
