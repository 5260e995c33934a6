import { describe, expect, test } from 'vitest';
import { baleValueUsd, type ClassCard, classOne, flatPrice } from '../../../src/model/classing/class-card.ts';

const card: ClassCard = {
  kind: 'upland',
  lengthIn: 1.12,
  uniformityPercent: 84,
  strengthGPerTex: 31,
  micronaire: 3.4,
  reflectanceRd: 75.5,
  yellownessB: 8.5,
  leaf: 3,
  market: 'sanJoaquin',
  netLb: 500,
  extraneous: [{ kind: 'grass', level: 1 }],
};

describe('one bale in the San Joaquin Valley (AMS spot quotations, 28 March 2024)', () => {
  const bale = classOne(card);
  test('shows each line of the sum', () => {
    expect(bale.points.map(({ item, points }) => [item, points])).toEqual([
      ['grade', 1240],
      ['micronaire', -500],
      ['strength', 125],
      ['uniformity', 90],
      ['extraneous', -350],
    ]);
  });
  test('adds up to 82.38 c and 605 points: 88.43 c, $442.15 for 500 lb', () => {
    expect(bale).toMatchObject({ premiumPoints: 605, priceCentsPerLb: 88.43, valueUsd: 442.15, priceYear: 2024 });
    expect(bale.filled).toEqual([]);
  });
  test('carries its words', () => {
    expect(bale.words).toEqual({ uniformity: 'high', strength: 'veryStrong', micronaire: 'discountLow' });
  });
});

test('leaf may be given as trash area', () => {
  expect(classOne({ ...card, leaf: { trashAreaPercent: 0.5 } }).leaf).toBe(4);
});
test('what is filled is said once, however many lines it touches', () => {
  expect(classOne({ ...card, market: 'eastTexas' }).filled).toEqual(['otherMarket']);
});
test('discounts beyond the base price leave a bale worth nothing, and say so', () => {
  const worst: ClassCard = {
    ...card,
    market: 'westTexas',
    reflectanceRd: 55,
    yellownessB: 14,
    micronaire: 2.3,
    uniformityPercent: 75,
    strengthGPerTex: 22,
    lengthIn: 0.8,
    extraneous: [{ kind: 'plastic', level: 2 }],
  };
  const bale = classOne(worst);
  expect(bale.premiumPoints).toBeLessThan(-4543);
  expect(bale).toMatchObject({ priceCentsPerLb: 0, valueUsd: 0, heldAtZero: true });
  expect(classOne(card).heldAtZero).toBe(false);
});
test('a damp bale is paid on its weight at 7.5 %, upland and Pima alike, and the record says how — Hughs et al. 2004', () => {
  const damp = { ...card, netLb: 500, moisturePercent: 8 };
  const upland = classOne(damp);
  expect(upland.waterRule).toBe('waterDeducted');
  expect(upland.paidLb).toBeCloseTo((500 * 0.92) / 0.925, 9);
  expect(upland.valueUsd).toBeCloseTo((upland.paidLb * upland.priceCentsPerLb) / 100, 2);
  const pima = classOne({ ...damp, kind: 'pima' });
  expect(pima).toMatchObject({ basis: 'loanRate', waterRule: 'refusedForLoan', paidLb: upland.paidLb });
  expect(classOne({ ...card, moisturePercent: 7.5 })).toEqual(classOne(card));
});
test('Pima knows no market', () => {
  const [here, there] = (['southeast', 'westTexas'] as const).map((market) =>
    classOne({ ...card, kind: 'pima', market }),
  );
  expect(here).toEqual(there);
  expect(here!.points).toEqual([]);
});
test('value is to the cent', () => {
  expect(baleValueUsd(481.3, 82.35, 0)).toBe(396.35);
  expect(flatPrice({ netLb: 100 }, 9.46, 1930, 'seasonAverage').valueUsd).toBe(9.46);
});
