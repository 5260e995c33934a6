import { expect, test } from 'vitest';
import { emptyCalendar, positionCount } from '../../../src/model/field/fruit-calendar.ts';

test('an empty calendar has room for every day and position, and no day that came', () => {
  const calendar = emptyCalendar(90);
  expect(calendar.nodes).toHaveLength(90);
  for (const days of [...calendar.squareDay, ...calendar.flowerDay, calendar.openDay]) {
    expect(days).toHaveLength(90);
    expect(days.every((day) => day === -1)).toBe(true);
  }
  for (const list of [calendar.squares, calendar.flowers, calendar.keptShare, calendar.sites]) {
    expect(list).toHaveLength(positionCount);
  }
});
test('positions do not share their numbers', () => {
  const calendar = emptyCalendar(3);
  calendar.flowers[0]![1] = 2;
  expect(calendar.flowers[1]![1]).toBe(0);
  expect(calendar.squares[0]![1]).toBe(0);
});
