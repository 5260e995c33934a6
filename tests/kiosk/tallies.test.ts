// @vitest-environment happy-dom
import { beforeEach, expect, test } from 'vitest';
import { keptTallies, talliesPlace, tally } from '../../src/kiosk/tallies.ts';

beforeEach(() => localStorage.clear());

test('counts, adds up seconds, and holds nothing else', () => {
  tally('visit');
  tally('visit');
  tally('station:ginning', 12.4);
  tally('station:ginning', 3.2);
  expect(keptTallies()).toEqual({
    visit: { count: 2, seconds: 0 },
    'station:ginning': { count: 2, seconds: 15 },
  });
});

test('junk counts as nothing and is no error', () => {
  for (const junk of ['{', '[1]', 'null', '{"visit":{"count":-3}}', '{"visit":7}']) {
    localStorage.setItem(talliesPlace, junk);
    expect(keptTallies()).toEqual({});
    tally('visit');
    expect(keptTallies()).toEqual({ visit: { count: 1, seconds: 0 } });
  }
});
