import { expect, test } from 'vitest';
import { lent, quotedAs } from '../../../src/model/classing/market.ts';

test('a lent table is no longer published, and each of its rows says so', () => {
  const table = { rows: [{ from: 0, points: -5 }], unit: 'points', source: 'a quotation', mark: 'published' } as const;
  const { rows, mark, source } = lent(table);
  expect(rows).toEqual([{ from: 0, points: -5, filled: 'otherMarket' }]);
  expect([mark, source]).toEqual(['assumption', 'a quotation']);
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
