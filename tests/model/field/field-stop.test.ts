import { expect, test } from 'vitest';
import { fieldStop } from '../../../src/model/field/field-stop.ts';
import { standingField } from './hand-made-field.ts';

const stop = (stages: Partial<ReturnType<typeof standingField>['stages']>, killedYoung = false) => {
  const field = standingField();
  Object.assign(field.stages, stages);
  field.killedYoung = killedYoung;
  return fieldStop(field, 9);
};
test.each([
  [{ emerged: -1 }, 'planting', 'neverEmerged', 55],
  [{ firstSquare: -1 }, 'bloom', 'neverSquared', 505],
  [{}, 'bloom', 'neverFlowered', 830],
  [{ firstFlower: 52 }, 'boll', 'noBollOpened', 1730],
] as const)('%o: %s, %s, for want of %d DD60', (stages, station, reason, dd60Needed) => {
  expect(stop(stages)).toEqual({ station, reason, dd60: 200, dd60Needed });
});
test('a seedling that froze did not lack heat sums', () => {
  expect(stop({}, true)).toEqual({ station: 'planting', reason: 'killedByFrost', dd60: 200, dd60Needed: null });
});
