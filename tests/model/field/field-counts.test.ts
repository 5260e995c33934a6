import { expect, test } from 'vitest';
import { fieldCounts } from '../../../src/model/field/field-counts.ts';
import { rowFeetPerAcre } from '../../../src/model/field/stand.ts';
import { stepFruit, stepNodes } from '../../../src/model/field/step-fruit.ts';
import { countErrorRelative } from '../../../src/model/ledger.ts';
import { standingField } from './hand-made-field.ts';

const field = standingField();
for (let i = 0; i <= 90; i++) {
  stepNodes(field, i, 1);
  stepFruit(field, i, 1);
}
const count = (day: number, station: number, name: string) =>
  fieldCounts(field, day)[station]!.shares.find((share) => share.name === name)!.count;

test('the ledgers close on any day, looked back upon', () => {
  for (let day = 0; day <= 90; day++) {
    for (const ledger of fieldCounts(field, day)) expect(countErrorRelative(ledger)).toBeLessThan(1e-12);
  }
});
test('seeds are those of the rows of the whole field', () => {
  const { rowInches, seedsPerFoot, acres } = field.plan;
  expect(fieldCounts(field, 90)[0]!.whole.count).toBeCloseTo(rowFeetPerAcre(rowInches) * seedsPerFoot * acres, 6);
  expect(count(90, 0, 'plants')).toBe(40_000 * acres);
});
test('before the first square there is nothing to count', () => {
  expect(fieldCounts(field, 20)[1]!.whole.count).toBe(0);
  expect(fieldCounts(field, 20)[2]!.whole.count).toBe(0);
});
test('what is counted back agrees with what the season counted forward', () => {
  const plants = 40_000 * field.plan.acres;
  expect(count(90, 1, 'squaresShed')).toBeCloseTo(field.totals.squaresShed * plants, 3);
  expect(count(90, 2, 'bollsShed')).toBeCloseTo(field.totals.bollsShed * plants, 3);
  expect(count(90, 1, 'flowers')).toBeCloseTo(field.totals.flowers * plants, 3);
});
