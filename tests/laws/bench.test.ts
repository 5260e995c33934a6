import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fibreLimits, limitsOf, setUpLimits } from '../../src/model/bench/check-set-up.ts';
import { colourCodesOf, stapleCodesOf } from '../../src/model/bench/printed-grades.ts';
import { benchFinishes, isKnit, type SetUp, withStructure } from '../../src/model/bench/set-up.ts';
import { workBench } from '../../src/model/bench/work-bench.ts';
import { type ClothName, catalogue } from '../../src/model/cloth/catalogue-facts.ts';
import { weaveIds } from '../../src/model/cloth/weaves.ts';
import { closingErrorRelative } from '../../src/model/ledger.ts';
import { type CottonName, cottons } from '../../src/model/mill/cotton-facts.ts';
import { spinningSystems } from '../../src/model/mill/facts.ts';
import { decodeBench, encodeBench, plainSetUp } from '../../src/statechart/saved-bench.ts';
import { propertySeed, runs } from './runs.ts';

const clothNames = Object.keys(catalogue) as ClothName[];
const cottonNames = Object.keys(cottons) as CottonName[];

/** A number inside its limits, in hundredths. */
const within = ({ low, high }: { readonly low: number; readonly high: number }) =>
  fc.integer({ min: Math.ceil(low * 100), max: Math.floor(high * 100) }).map((n) => n / 100);
const setUps: fc.Arbitrary<SetUp> = fc
  .record({
    cotton: fc.constantFrom(...cottonNames),
    cloth: fc.constantFrom(...clothNames),
    structure: fc.constantFrom(...weaveIds, 'jersey' as const, 'interlock' as const),
    lengthIn: within(fibreLimits.lengthIn),
    uniformityPercent: within(fibreLimits.uniformityPercent),
    micronaire: within(fibreLimits.micronaire),
    strengthGPerTex: within(fibreLimits.strengthGPerTex),
    trashAreaPercent: within(fibreLimits.trashAreaPercent),
    system: fc.constantFrom(...spinningSystems),
    ne: fc.integer({ min: 4, max: 120 }),
    plies: fc.integer({ min: 1, max: 4 }),
    picksPerInch: within(setUpLimits.picksPerInch),
    twist: fc.option(within(setUpLimits.twist)),
    finish: fc.constantFrom(...benchFinishes),
    preshrunk: fc.boolean(),
    isPima: fc.boolean(),
    grade: fc.option(fc.nat()),
    code: fc.option(fc.nat()),
  })
  .map(({ cotton, cloth, structure, ne, plies, isPima, picksPerInch, grade, code, ...rest }) => {
    const { system, twist, finish, preshrunk, ...numbers } = rest;
    const start = plainSetUp(cotton, cloth);
    const kind = isPima ? 'pima' : start.card.kind;
    const leaf = Math.min(start.card.leaf, limitsOf('leaf', kind).high);
    const [grades, codes] = [colourCodesOf(kind), stapleCodesOf(kind)];
    const printed = {
      color: grade === null ? null : grades[grade % grades.length]!,
      staple32nds: code === null ? null : codes[code % codes.length]!,
    };
    const changed = {
      ...start,
      card: { ...start.card, ...numbers, kind, leaf },
      printed,
      system,
      twist,
      finish,
      preshrunk,
    };
    const yarned = { ...changed, warp: `${ne}/${plies}Ne` };
    const made = structure === start.structure ? yarned : withStructure(yarned, structure, 20);
    return isKnit(made.structure) ? made : { ...made, picksPerInch };
  });

test('a link reopens the exact bench', () => {
  fc.assert(
    fc.property(setUps, setUps, (a, b) => {
      // A loop that was filled in goes into the link as it stands.
      expect(decodeBench(encodeBench({ a, b }))).toEqual({ saved: { a, b }, problems: [] });
    }),
    { seed: propertySeed, numRuns: runs(500) },
  );
});

test('no text whatever breaks the reading of a link', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 80 }), (text) => {
      const { saved } = decodeBench(text);
      expect(saved.a.card.lengthIn).toBeGreaterThan(0);
    }),
    { seed: propertySeed, numRuns: runs(1000) },
  );
});

test('every legal bench is worked out in finite numbers, and its lint is all there', () => {
  fc.assert(
    fc.property(setUps, (setUp) => {
      const { warp, cloth, reading } = workBench(setUp);
      for (const value of [reading.upperHalfMeanMm, warp.turnsPerInch, cloth.drape.rigidity, cloth.gramsPerRunningYard])
        expect(Number.isFinite(value) && value > 0).toBe(true);
      expect(closingErrorRelative(warp.spinning.ledger)).toBeLessThan(1e-9);
    }),
    { seed: propertySeed, numRuns: runs(200) },
  );
});

const weightOf = (name: ClothName) => workBench(plainSetUp('uplandLong', name)).cloth.description.gramsPerSquareMetre;

describe('the cloths of the catalogue', () => {
  test('are at least twenty-two', () => {
    expect(clothNames.length).toBeGreaterThanOrEqual(22);
  });
  test.each(clothNames)('%s can be woven or knitted, and its yarn spun of some cotton', (name) => {
    const { cloth, warp, weft } = workBench(plainSetUp('pima', name));
    expect(cloth.tightness).not.toBe('jammed');
    for (const { spinning } of [warp, weft]) expect(spinning.verdict.status).not.toBe('impossible');
  });
  // A seller's chart of weights by end use (aaenterprises.in); quilting cotton of five sellers together.
  test.each([
    ['percale', 100, 150],
    ['percaleCombed', 100, 150],
    ['poplin', 110, 160],
    ['jersey', 140, 200],
    ['interlock', 200, 260],
    ['denim', 200, 400],
    ['quilting', 120, 170],
  ] as const)('%s weighs %i to %i g/m2, as it is sold', (name, low, high) => {
    expect(weightOf(name)).toBeGreaterThan(low);
    expect(weightOf(name)).toBeLessThan(high);
  });
  // sizes.com, citing the US Department of Commerce: No. n weighs 19 - n ounces for 36 x 22 in.
  test.each([
    ['duckTen', 10],
    ['duckEight', 8],
  ] as const)('%s comes within 5 %% of the weight of its number', (name, number) => {
    expect(weightOf(name) / 33.9057 / ((19 - number) * (36 / 22))).toBeGreaterThan(0.95);
    expect(weightOf(name) / 33.9057 / ((19 - number) * (36 / 22))).toBeLessThan(1.05);
  });
  test('shirting weighs the 91.15 g/m2 of GATE 2010', () => {
    expect(Math.abs(weightOf('shirting') - 91.15)).toBeLessThan(1);
  });
  test('80 square of 4.00 yd/lb and 64 x 60 of 5.35 yd/lb come out a tenth lighter at most: their size is not counted', () => {
    for (const [name, grams] of [
      ['printcloth', 125],
      ['printclothLight', 94.8],
    ] as const) {
      expect(weightOf(name) / grams).toBeGreaterThan(0.9);
      expect(weightOf(name) / grams).toBeLessThanOrEqual(1);
    }
  });
  // Harmonized Tariff Schedule of the US, chapter 52, Statistical Note 1.
  test.each([
    ['lawn', 'lawnVoileBatiste'],
    ['voile', 'lawnVoileBatiste'],
    ['batiste', 'lawnVoileBatiste'],
    ['printcloth', 'printcloth'],
    ['printclothLight', 'printcloth'],
    ['muslin', 'sheeting'],
    ['gauze', 'cheesecloth'],
    ['cheesecloth', 'cheesecloth'],
    ['poplin', 'poplinBroadcloth'],
    ['oxford', 'oxford'],
    ['osnaburg', 'osnaburg'],
    ['sateen', 'sateen'],
    ['denim', 'denim'],
    ['duckTen', 'duck'],
    ['duckEight', 'duck'],
  ] as const)('%s is %s at customs', (name, tariffClass) => {
    expect(workBench(plainSetUp('pima', name)).cloth.description.tariffClass).toBe(tariffClass);
  });
});
