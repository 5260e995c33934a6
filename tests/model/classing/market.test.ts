import { expect, test } from 'vitest';
import { atPriceOf, lent, lentRows, quotedAs } from '../../../src/model/classing/market.ts';

const cents = (value: number) => ({ value, unit: 'cents/lb', source: 'a quotation', mark: 'published' }) as const;

test('a lent table is no longer published, and each of its rows says so', () => {
  const table = { rows: [{ from: 0, points: -5 }], unit: 'points', source: 'a quotation', mark: 'published' } as const;
  const { rows, mark, source } = lent(cents(60), cents(60), table);
  expect(rows).toEqual([{ from: 0, points: -5, filled: 'otherMarket' }]);
  expect([mark, source]).toEqual(['assumption', 'a quotation']);
});
test('lent points keep their share of the price, in whole points and without a minus nought', () => {
  expect(atPriceOf(cents(40), cents(80), -401)).toBe(-200);
  expect(lentRows(cents(40), cents(80), [{ from: 1, points: -0 }])[0]!.points).toBe(0);
  expect(lentRows(cents(40), cents(80), [{ from: 1, points: -400 }])).toEqual([
    { from: 1, points: -200, filled: 'otherMarket' },
  ]);
});
test('bark and grass are quoted under other', () => {
  expect((['bark', 'grass', 'prep', 'plastic', 'other'] as const).map(quotedAs)).toEqual([
    'other',
    'other',
    'prep',
    'plastic',
    'other',
  ]);
});
