import { describe, expect, test } from 'vitest';
import { settle } from '../../../src/model/classing/payments.ts';
import { kilogramsFromPounds } from '../../../src/model/units.ts';

const usd = (paid: ReturnType<typeof settle>, item: string) => paid.lines.find((line) => line.item === item)?.usd;

describe('a 1937 crop of two bales', () => {
  const paid = settle({
    era: 'thirties',
    bales: [
      { netLb: 480, valueUsd: 40.37, priceYear: 1937, paidLb: 480, waterRule: 'none' },
      { netLb: 480, valueUsd: 40.37, priceYear: 1937, paidLb: 480, waterRule: 'none' },
    ],
    seedKg: kilogramsFromPounds(1800),
    storageMonths: 0,
    handPickedSeedCottonKg: kilogramsFromPounds(2700),
  });
  test('seed at $19.50 a ton pays $17.55 (Walsh 1944) and covers the gin', () => {
    expect(usd(paid, 'seed')).toBeCloseTo(17.55, 6);
    expect(paid.seedAndGin.seedPaysGin).toBe(true);
  });
  test('pickers get at most a dollar a hundredweight', () => {
    expect(usd(paid, 'picking')).toBeLessThan(0);
    expect(usd(paid, 'picking')).toBeGreaterThanOrEqual(-27);
  });
  test('no class fee, and one year for all', () => {
    expect(usd(paid, 'classing')).toBeUndefined();
    expect(paid.mixedYears).toBe(false);
  });
});

describe('a present crop', () => {
  const sale = {
    era: 'present',
    bales: [{ netLb: 480, valueUsd: 400, priceYear: 2023, paidLb: 470, waterRule: 'refusedForLoan' }],
    seedKg: kilogramsFromPounds(672),
    storageMonths: 6,
    handPickedSeedCottonKg: null,
  } as const;
  test('says that its prices come from several years', () => {
    expect(settle(sale).mixedYears).toBe(true);
    expect(settle(sale).years).toEqual([1994, 2005, 2011, 2013, 2023]);
  });
  test('says how much water was taken off, and how many bales the loan refused', () => {
    expect(settle(sale)).toMatchObject({ waterDeductedLb: 10, balesRefusedForLoan: 1 });
  });
  test('charges one class fee and six months of storage', () => {
    expect(usd(settle(sale), 'classing')).toBe(-2.2);
    expect(usd(settle(sale), 'storage')).toBeCloseTo(-15.66, 9);
  });
  test('no seed leaves no break-even price, and the gin asks for its charge', () => {
    const { seedAndGin } = settle({ ...sale, seedKg: 0 });
    expect(seedAndGin).toMatchObject({ breakEvenUsdPerTon: null, seedPaysGin: false });
  });
  test('hand picking has no rate of today', () => {
    expect(usd(settle({ ...sale, handPickedSeedCottonKg: 500 }), 'picking')).toBeUndefined();
  });
});
