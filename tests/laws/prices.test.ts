import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classOne } from '../../src/model/classing/class-card.ts';
import { colourGrades } from '../../src/model/classing/colour-grade-facts.ts';
import { paidWeight } from '../../src/model/classing/damp.ts';
import { bandPoints, gradePoints, quotedPoints } from '../../src/model/classing/differences.ts';
import { markets } from '../../src/model/classing/markets.ts';
import { type Sale, settle } from '../../src/model/classing/payments.ts';
import { decisionTable } from '../../src/model/decisions.ts';
import { propertySeed, runs } from './runs.ts';

/** Scaled integers: fc.double spends its runs on values no cotton has. */
const thousandths = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map((n) => n / 1000);
const check = (property: fc.IProperty<unknown[]> | fc.IRawProperty<unknown>, full = 500) =>
  fc.assert(property as fc.IRawProperty<unknown>, { seed: propertySeed, numRuns: runs(full) });

const marketId = fc.constantFrom(...decisionTable.classing.market.options);

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
