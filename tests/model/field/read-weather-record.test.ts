import { describe, expect, test } from 'vitest';
import { dateOfDay } from '../../../src/model/field/calendar.ts';
import { type RecordOptions, readWeatherRecord } from '../../../src/model/field/read-weather-record.ts';

const asIs: RecordOptions = { units: null, latitudeDegrees: 33, fallbackLatitudeDegrees: 31.35, year: null };
const line = (year: number, day: number, max = 30, min = 20, rain = 0) =>
  `${dateOfDay(year, day)},${max},${min},${rain}`;
const yearLines = (year: number, leave: (day: number) => boolean = () => false) =>
  Array.from({ length: 365 }, (_, i) => i + 1)
    .filter((day) => !leave(day))
    .map((day) => line(year, day));
const header = 'DATE,TMAX,TMIN,PRCP';
const file = (lines: readonly string[], head = header) => [head, ...lines].join('\n');

const read = (csv: string, options: Partial<RecordOptions> = {}) => readWeatherRecord(csv, { ...asIs, ...options });
function good(csv: string, options: Partial<RecordOptions> = {}) {
  const result = read(csv, options);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result;
}
function problems(csv: string, options: Partial<RecordOptions> = {}) {
  const result = read(csv, options);
  if (result.ok) throw new Error('read without a problem');
  return result.problems;
}

describe('a good record', () => {
  test('metric values become °F and inches', () => {
    const { value } = good(file([...yearLines(2013).slice(0, 364), line(2013, 365, 30, 20, 25.4)]), {
      units: 'metric',
    });
    expect(value.days).toHaveLength(365);
    expect(value.days[364]).toEqual({ dayOfYear: 365, maxF: 86, minF: 68, rainInches: 1 });
    expect(value).toMatchObject({ year: 2013, origin: 'record', latitudeDegrees: 33 });
  });
  test('any order and case of columns, other columns, quotes, semicolons, windows line ends and a byte-order mark', () => {
    const lines = Array.from({ length: 365 }, (_, i) => `"X1";0;20;30;"${dateOfDay(2013, i + 1)}"`);
    const { value } = good(`\uFEFF"station";prcp;TMin;Tmax;Date\r\n${lines.join('\r\n')}\r\n`);
    expect(value.days[100]).toEqual({ dayOfYear: 101, maxF: 86, minF: 68, rainInches: 0 });
  });
  test('the units are guessed from the middle high, and said', () => {
    expect(good(file(yearLines(2013))).notes).toContain('units taken as °C and mm (half the highs are below 45)');
    const us = Array.from({ length: 365 }, (_, i) => line(2013, i + 1, 86, 68, 1));
    const result = good(file(us));
    expect(result.notes?.[0]).toMatch(/°F and inches/);
    expect(result.value.days[0]).toEqual({ dayOfYear: 1, maxF: 86, minF: 68, rainInches: 1 });
  });
  test.each(['1e308', '9999', '-9999'])('one wild high of %s does not change the guess: it is named, in °C', (wild) => {
    const [first] = problems(file([`2013-01-01,${wild},2,0`, ...yearLines(2013, (day) => day === 1)]));
    expect(first).toMatchObject({ field: 'TMAX, line 2', rule: { low: -60, high: 60, unit: '°C' } });
  });
  test('a cool city in °F is not taken for a hot one in °C', () => {
    const us = Array.from({ length: 365 }, (_, i) => line(2013, i + 1, 59, 45, 0.1));
    expect(good(file(us)).value.days[0]!.maxF).toBe(59);
  });
  test('units that are given are not guessed', () => {
    expect(good(file(yearLines(2013)), { units: 'us' }).value.days[0]!.maxF).toBe(30);
    expect(good(file(yearLines(2013)), { units: 'us' }).notes?.join()).not.toMatch(/units/);
  });
  test('up to five missing days lie between their neighbours, dry, and are named', () => {
    const lines = yearLines(2013, (day) => day === 100).map((each) =>
      each.replace(/^2013-04-11,30,20/, '2013-04-11,34,20'),
    );
    const { value, notes } = good(file(lines));
    expect(value.days[99]!.maxF).toBeCloseTo(32 * 1.8 + 32, 10);
    expect(notes?.join()).toMatch(/2013-04-10/);
    expect(good(file(yearLines(2013, (day) => day < 3 || day > 363))).value.days).toHaveLength(365);
  });
  test('an empty value makes its day a missing one', () => {
    const lines = yearLines(2013).map((each, i) => (i === 9 ? '2013-01-10,30,20,' : each));
    expect(good(file(lines)).notes?.join()).toMatch(/filled.*2013-01-10/);
  });
  test('29 February is left out, and said', () => {
    const { value, notes } = good(file([...yearLines(2012), '2012-02-29,30,20,0']));
    expect(value.days).toHaveLength(365);
    expect(notes).toContain('29 February left out');
  });
  test('of several years the first whole one, or the one asked for', () => {
    const lines = [...yearLines(2011, (day) => day > 200), ...yearLines(2012), ...yearLines(2013)];
    const first = good(file(lines));
    expect(first.value.year).toBe(2012);
    expect(first.notes?.join()).toMatch(/2011, 2012, 2013; used: 2012/);
    expect(good(file(lines), { year: 2013 }).value.year).toBe(2013);
  });
  test('the latitude asked for, else the record’s own, else the farm’s; always said, and never as asked when nobody asked', () => {
    const own = yearLines(2013).map((each) => `${each},31.4`);
    const head = `${header},LATITUDE`;
    expect(good(file(own, head), { latitudeDegrees: 35 }).value.latitudeDegrees).toBe(35);
    const written = good(file(own, head), { latitudeDegrees: null });
    expect(written.value.latitudeDegrees).toBe(31.4);
    expect(written.notes).toContain('latitude 31.4 (from the LATITUDE column)');
    const none = good(file(yearLines(2013)), { latitudeDegrees: null });
    expect(none.value.latitudeDegrees).toBe(31.35);
    expect(none.notes).toContain('latitude 31.35 (none given, so that of the farm)');
    expect(good(file(yearLines(2013))).notes).toContain('latitude 33 (as asked)');
  });
});

describe('a bad record', () => {
  test('missing columns are named', () => {
    expect(problems('DATE,TMAX\n2013-01-01,3').map((p) => p.field)).toEqual(['column TMIN', 'column PRCP']);
    expect(problems('')[0]!.field).toBe('column DATE');
  });
  test('a header alone is no record', () => {
    expect(problems(header)[0]).toMatchObject({ field: 'file', value: 'nothing' });
  });
  test('a latitude that is none, and a column that comes twice', () => {
    const far = yearLines(2013).map((each) => `${each},999`);
    expect(problems(file(far, `${header},LATITUDE`))[0]).toMatchObject({ field: 'LATITUDE, line 2', value: '999' });
    const twice = yearLines(2013).map((each) => `${each},31`);
    expect(problems(file(twice, `${header},TMAX`))).toEqual([
      { field: 'column TMAX', value: 'given twice', rule: { kind: 'type', expected: 'each column once' } },
    ]);
  });
  test.each(['0x10', 'Infinity', '1_0', '1 5'])('%s is not a number', (written) => {
    const lines = [`2013-01-01,${written},2,0`, ...yearLines(2013, (day) => day === 1)];
    expect(problems(file(lines))[0]).toMatchObject({ field: 'TMAX, line 2', value: written });
  });
  test('a number that is none, a date that is none, a date twice', () => {
    const change = (to: string) => file([to, ...yearLines(2013, (day) => day === 1)]);
    expect(problems(change('2013-01-01,warm,2,0'))[0]).toMatchObject({ field: 'TMAX, line 2', value: 'warm' });
    expect(problems(change('1 Jan 2013,3,2,0'))[0]).toMatchObject({ field: 'DATE, line 2', value: '1 Jan 2013' });
    expect(problems(change('2013-01-02,3,2,0'))[0]!.rule).toEqual({ kind: 'type', expected: 'each date once' });
  });
  test.each([
    ['2013-01-01,10,12,0', 'TMIN, line 2', '12'],
    ['2013-01-01,61,2,0', 'TMAX, line 2', '61'],
    ['2013-01-01,10,-61,0', 'TMIN, line 2', '-61'],
    ['2013-01-01,10,2,-1', 'PRCP, line 2', '-1'],
    ['2013-01-01,10,2,2001', 'PRCP, line 2', '2001'],
  ])('%s is not weather', (first, field, value) => {
    expect(problems(file([first, ...yearLines(2013, (day) => day === 1)]), { units: 'metric' })[0]).toMatchObject({
      field,
      value,
    });
  });
  test('more than five missing days: the dates are named', () => {
    const [problem] = problems(file(yearLines(2013, (day) => day >= 10 && day < 20)));
    expect(problem!.value).toBe(
      'missing 2013-01-10, 2013-01-11, 2013-01-12, 2013-01-13, 2013-01-14, 2013-01-15 and 4 more',
    );
  });
  test('a year that is not there: the years that are', () => {
    expect(problems(file(yearLines(2013)), { year: 2010 })).toEqual([
      { field: 'year', value: '2010', rule: { kind: 'choice', options: ['2013'] } },
    ]);
  });
});
