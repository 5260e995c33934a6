import { expect, test } from 'vitest';
import type { RecordRow } from '../../../src/model/field/record-rows.ts';
import { chooseYear } from '../../../src/model/field/record-year.ts';

const row = (year: number, dayOfYear: number, over: Partial<RecordRow> = {}): RecordRow => ({
  line: 2,
  year,
  dayOfYear,
  max: 30,
  min: 20,
  rain: 0,
  latitude: null,
  ...over,
});
const whole = (year: number, upTo = 365) => Array.from({ length: upTo }, (_, i) => row(year, i + 1));
const choose = (rows: readonly RecordRow[], asked: number | null) => {
  const notes: string[] = [];
  return { result: chooseYear(rows, asked, 5, notes), notes };
};
const yearOf = (rows: readonly RecordRow[], asked: number | null) => {
  const { result } = choose(rows, asked);
  return result.ok ? result.value.year : null;
};
test('the first whole year, else the fullest', () => {
  expect(yearOf([...whole(2013), ...whole(2012, 100), ...whole(2011, 361)], null)).toBe(2011);
  expect(yearOf([...whole(2013, 90), ...whole(2012, 100), ...whole(2011, 80)], null)).toBe(2012);
});
test('the year that was asked for, even with gaps', () => {
  expect(yearOf([...whole(2013), ...whole(2012, 100)], 2012)).toBe(2012);
  expect(choose(whole(2013), 1999).result.ok).toBe(false);
});
test('several years are named with the one used; a single one needs no word', () => {
  expect(choose([...whole(2013), ...whole(2012)], null).notes).toEqual(['years in the record: 2012, 2013; used: 2012']);
  expect(choose(whole(2013), null).notes).toEqual([]);
});
test('a row with a value left empty is a missing day', () => {
  const { result } = choose([row(2013, 1, { rain: null }), ...whole(2013).slice(1)], null);
  expect(result.ok && result.value.days[0]).toBeNull();
});
test('29 February has no place', () => {
  const { result, notes } = choose([...whole(2012), row(2012, 0)], null);
  expect(result.ok && result.value.days.every((day) => day !== null && day.dayOfYear > 0)).toBe(true);
  expect(notes).toEqual(['29 February left out']);
});
