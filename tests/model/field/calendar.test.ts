import { expect, test } from 'vitest';
import { dateOfDay, readIsoDate } from '../../../src/model/field/calendar.ts';

test('every day of a year goes to its date and back', () => {
  for (let day = 1; day <= 365; day++)
    expect(readIsoDate(dateOfDay(2013, day))).toEqual({ year: 2013, dayOfYear: day });
});
test('the ends of months are where the wall calendar has them', () => {
  expect(dateOfDay(2013, 59)).toBe('2013-02-28');
  expect(dateOfDay(2012, 60)).toBe('2012-03-01');
  expect(dateOfDay(2013, 365)).toBe('2013-12-31');
});
test('29 February is known, in leap years only', () => {
  expect(readIsoDate('2012-02-29')).toEqual({ year: 2012, dayOfYear: 0 });
  expect(readIsoDate('2000-02-29')).toEqual({ year: 2000, dayOfYear: 0 });
  expect(readIsoDate('2013-02-29')).toBeNull();
  expect(readIsoDate('1900-02-29')).toBeNull();
});
test.each(['2013-13-01', '2013-04-31', '2013-00-10', '2013-01-00', '01/02/2013', '2013-1-2', ''])(
  '%s is no date',
  (text) => {
    expect(readIsoDate(text)).toBeNull();
  },
);
test('a time after the date is left aside', () => {
  expect(readIsoDate('2013-03-01T00:00:00')).toEqual({ year: 2013, dayOfYear: 60 });
});
