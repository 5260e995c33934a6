import { csvParse } from 'd3-dsv';
import { expect, test } from 'vitest';
import { talliesCsv, tallyRows } from '../../src/kiosk/tallies-csv.ts';

const tallies = {
  'station:sewing': { count: 1, seconds: 9 },
  'language:es': { count: 3, seconds: 0 },
  'station:ginning': { count: 4, seconds: 50 },
  finished: { count: 2, seconds: 0 },
  visit: { count: 12, seconds: 0 },
  'language:en': { count: 9, seconds: 0 },
  // Put there by something else: as a formula it would run in a spreadsheet.
  '=HYPERLINK("x")': { count: 1, seconds: 0 },
  'station:nowhere': { count: 1, seconds: 0 },
};

test('a table that any reader of CSV takes (RFC 4180: commas, lines ended by CR LF): known counts alone, in a fixed order', () => {
  const text = talliesCsv(tallies);
  expect(text.endsWith('\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  expect([...csvParse(text)]).toEqual([
    { what: 'visit', count: '12', seconds: '0' },
    { what: 'finished', count: '2', seconds: '0' },
    { what: 'language:en', count: '9', seconds: '0' },
    { what: 'language:es', count: '3', seconds: '0' },
    { what: 'station:ginning', count: '4', seconds: '50' },
    { what: 'station:sewing', count: '1', seconds: '9' },
  ]);
  expect(talliesCsv({})).toBe('what,count,seconds\r\n');
});

test('a station’s mean is its seconds over its count; nothing else has one', () => {
  expect(tallyRows(tallies).map(({ meanSeconds }) => meanSeconds)).toEqual([null, null, null, null, 12.5, 9]);
});
