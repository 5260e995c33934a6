import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ClassingOutcome, classBales, type PressedBale } from '../../src/model/classing/class-bales.ts';
import { classOne } from '../../src/model/classing/class-card.ts';
import { uplandColour } from '../../src/model/classing/colour.ts';
import { colourGrades } from '../../src/model/classing/colour-grade-facts.ts';
import { paidWeight } from '../../src/model/classing/damp.ts';
import { bandPoints, gradePoints, quotedPoints } from '../../src/model/classing/differences.ts';
import { leafGrade } from '../../src/model/classing/leaf.ts';
import { markets } from '../../src/model/classing/markets.ts';
import { type Sale, settle } from '../../src/model/classing/payments.ts';
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

describe('prices', () => {
  const cards = fc.record({
    lengthIn: thousandths(0.75, 1.4),
    uniformityPercent: thousandths(74, 90),
    strengthGPerTex: thousandths(20, 38),
    micronaire: thousandths(2.2, 6),
    reflectanceRd: thousandths(50, 84),
    yellownessB: thousandths(6, 15),
    leaf: fc.integer({ min: 1, max: 8 }),
    market: marketId,
    netLb: thousandths(470, 510),
    extraneous: fc.constantFrom([], [], [{ kind: 'plastic', level: 2 } as const]),
  });
  type Price = typeof classOne;
  /** Net pounds times base and points, never below nothing; the points are the sum of their lines. */
  const priced = (price: Price) =>
    fc.property(cards, (card) => {
      const bale = price({ ...card, kind: 'upland' });
      expect(bale.points.reduce((sum, { points }) => sum + points, 0)).toBe(bale.premiumPoints);
      const cents = bale.baseCentsPerLb + bale.premiumPoints / 100;
      expect(bale.heldAtZero).toBe(cents < 0);
      expect(bale.valueUsd).toBeGreaterThanOrEqual(0);
      expect(Math.abs(bale.valueUsd - (card.netLb * Math.max(0, cents)) / 100)).toBeLessThanOrEqual(0.005 + 1e-9);
    });
  test('value is net pounds times base and points, to the cent and never negative', () =>
    check(priced(classOne), 2000));
  test('a bale that costs its seller money is seen', () => {
    const unbounded: Price = (card) => {
      const bale = classOne(card);
      const cents = bale.baseCentsPerLb + bale.premiumPoints / 100;
      return { ...bale, valueUsd: Math.round(card.netLb * cents) / 100 };
    };
    expect(() => check(priced(unbounded), 20000)).toThrow();
  });

  type Weight = typeof paidWeight;
  /** The same dry bale, damper: more pounds are paid only up to the limit, and never for more than what is on the scale. */
  const waterIsNotPaid = (weigh: Weight) =>
    fc.property(
      thousandths(300, 500),
      thousandths(3, 18),
      thousandths(0.1, 7),
      fc.boolean(),
      (dryLb, damp, more, loan) => {
        const at = (percent: number) => weigh((100 * dryLb) / (100 - percent), percent, loan, 2023);
        const [before, after] = [at(damp), at(damp + more)];
        const most = (100 * dryLb) / (100 - 7.5);
        expect(before.paidLb).toBeLessThanOrEqual(most * (1 + 1e-9));
        expect(after.paidLb).toBeGreaterThanOrEqual(before.paidLb * (1 - 1e-9));
        if (damp > 7.5) expect(Math.abs(after.paidLb / before.paidLb - 1)).toBeLessThan(1e-9);
        expect(after.paidLb).toBeLessThanOrEqual(((100 * dryLb) / (100 - damp - more)) * (1 + 1e-9));
        expect(before.waterRule === 'none').toBe(damp <= 7.5);
      },
    );
  test('nobody pays for water above 7.5 % — National Cotton Council policy in Hughs et al. 2004', () =>
    check(waterIsNotPaid(paidWeight)));
  test('a buyer who pays what the scale says is seen', () => {
    const trusting: Weight = (netLb, ...rest) => ({ ...paidWeight(netLb, ...rest), paidLb: netLb });
    expect(() => check(waterIsNotPaid(trusting))).toThrow();
  });

  type Points = typeof gradePoints;
  const ladder = [31, 32, 33, 34, 35, 36, 37, 38];
  /** Where a market quotes two neighbouring staples of one colour and leaf, the longer is never worth less. */
  const staplesRise = (points: Points) =>
    fc.property(
      marketId,
      fc.constantFrom(...colourGrades.rows.map(({ code }) => code)),
      fc.integer({ min: 1, max: 7 }),
      fc.integer({ min: 0, max: ladder.length - 2 }),
      (id, code, leaf, place) => {
        const market = markets[id];
        const [short, long] = [ladder[place]!, ladder[place + 1]!];
        if (quotedPoints(market, code, leaf, short) === null || quotedPoints(market, code, leaf, long) === null) return;
        expect(points(market, code, leaf, long).points).toBeGreaterThanOrEqual(
          points(market, code, leaf, short).points,
        );
      },
    );
  test('longer staple is never worth less where the market quotes it', () => check(staplesRise(gradePoints), 5000));
  test('a column taken from the wrong end is seen', () => {
    const mirrored: Points = (market, code, leaf, staple) => gradePoints(market, code, leaf, 69 - staple);
    expect(() => check(staplesRise(mirrored), 5000)).toThrow();
  });

  const quotesAreKept = (pointsOf: Points) => {
    for (const market of Object.values(markets)) {
      for (const { colours, leaf, points } of market.grades.rows) {
        for (const colour of colours) {
          for (let grade = leaf[0]; grade <= leaf[1]; grade++) {
            points.forEach((quoted, column) => {
              if (quoted === null) return;
              const found = pointsOf(market, colour, grade, market.staples[column]!);
              expect(found.points).toBe(quoted);
              expect(found.filled).toEqual(market.leafAxis ? [] : ['noLeafAxis']);
            });
          }
        }
      }
    }
  };
  test('quoted cells are passed on as they are', () => quotesAreKept(gradePoints));
  test('a quote read one staple off is seen', () => {
    expect(() =>
      quotesAreKept((market, colour, leaf, staple) => gradePoints(market, colour, leaf, staple + 1)),
    ).toThrow();
  });

  const gapsAreTold = (pointsOf: Points) => {
    for (const market of Object.values(markets)) {
      for (const { code } of colourGrades.rows) {
        for (let leaf = 1; leaf <= 8; leaf++) {
          for (const staple of [24, 26, 28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39, 44]) {
            const { points, filled } = pointsOf(market, code, leaf, staple);
            expect(Number.isFinite(points)).toBe(true);
            const column = market.staples.indexOf(Math.min(38, staple));
            const quoted = column < 0 ? null : quotedPoints(market, code, leaf, Math.min(38, staple));
            const sharesColumn = market.id === 'eastTexas' && staple >= 26 && staple <= 31;
            if (quoted === null && !sharesColumn) expect(filled.length).toBeGreaterThan(0);
          }
        }
      }
    }
  };
  test('every gap is filled with a finite number and says so', () => gapsAreTold(gradePoints));
  test('a gap filled without a word is seen', () => {
    expect(() => gapsAreTold((...asked) => ({ ...gradePoints(...asked), filled: [] }))).toThrow();
  });

  const strengthRises = (points: typeof bandPoints) =>
    fc.property(marketId, thousandths(18, 40), thousandths(0, 8), (id, strength, more) => {
      const { strength: table, uniformity } = markets[id];
      expect(points(table, strength + more).points).toBeGreaterThanOrEqual(points(table, strength).points);
      expect(points(uniformity, 3 * (strength + more)).points).toBeGreaterThanOrEqual(
        points(uniformity, 3 * strength).points,
      );
    });
  test('stronger and more uniform cotton is never worth less in these tables', () => check(strengthRises(bandPoints)));
  test('a table read upside down is seen', () => {
    expect(() => check(strengthRises((table, x) => bandPoints(table, 60 - x)))).toThrow();
  });
  const middleIsBest = (points: typeof bandPoints) => {
    for (const { micronaire } of Object.values(markets)) {
      const middle = points(micronaire, 4).points;
      expect(points(micronaire, 2.6).points).toBeLessThan(middle);
      expect(points(micronaire, 5.4).points).toBeLessThan(middle);
    }
  };
  test('micronaire has a best range: both ends are worth less in every market', () => middleIsBest(bandPoints));
  test('a table that likes coarse cotton is seen', () => {
    expect(() => middleIsBest((table, x) => bandPoints(table, Math.min(x, 4)))).toThrow();
  });
});

describe('settlement', () => {
  const sales = fc.record({
    era: fc.constantFrom('present' as const, 'thirties' as const),
    bales: fc.array(
      fc.record({
        netLb: thousandths(450, 520),
        paidLb: thousandths(430, 450),
        waterRule: fc.constantFrom('none' as const, 'waterDeducted' as const, 'refusedForLoan' as const),
        valueUsd: thousandths(20, 600),
        priceYear: fc.constantFrom(1937, 2007, 2023),
      }),
      { maxLength: 12 },
    ),
    seedKg: thousandths(0, 9000),
    storageMonths: fc.integer({ min: 0, max: 12 }),
    handPickedSeedCottonKg: fc.option(thousandths(0, 20000)),
  });
  const adds = (run: typeof settle) =>
    fc.property(sales, (sale: Sale) => {
      const { lines, netToFarmUsd, seedAndGin, mixedYears, years } = run(sale);
      const sum = lines.reduce((total, { usd }) => total + usd, 0);
      const size = lines.reduce((total, { usd }) => total + Math.abs(usd), 0);
      expect(Math.abs(sum - netToFarmUsd)).toBeLessThanOrEqual(1e-9 * size);
      const of = (item: string) => lines.find((line) => line.item === item)!.usd;
      expect(of('seed') + of('ginning')).toBeCloseTo(seedAndGin.balanceUsd, 6);
      expect(seedAndGin.seedPaysGin).toBe(seedAndGin.balanceUsd >= 0);
      expect(mixedYears).toBe(new Set(lines.map(({ year }) => year)).size > 1);
      expect(new Set(years)).toEqual(new Set(lines.map(({ year }) => year)));
    });
  test('the lines add up to the net, and mixed years are said', () => check(adds(settle)));
  test('a ginning charge forgotten in the net is seen', () => {
    expect(() =>
      check(
        adds((sale) => {
          const paid = settle(sale);
          return { ...paid, netToFarmUsd: paid.netToFarmUsd + paid.seedAndGin.ginChargeUsd };
        }),
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
