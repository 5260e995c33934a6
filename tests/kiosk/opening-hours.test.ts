import { describe, expect, test } from 'vitest';
import { isOpen, lastNight, nightMinute } from '../../src/kiosk/opening-hours.ts';

const always = { from: 0, to: 24 };
const shop = { from: 9, to: 17 };
const at = (day: number, hour: number, minute = 0) => new Date(2026, 10, day, hour, minute);

describe('the moment of the night', () => {
  test.each([
    [always, 4 * 60],
    [shop, 1 * 60],
    [{ from: 10, to: 22 }, 4 * 60],
    [{ from: 0, to: 1 }, 12 * 60 + 30],
    [{ from: 8, to: 23 }, 3 * 60 + 30],
  ])('with opening hours %j it is minute %i of the day', (hours, minute) => {
    expect(nightMinute(hours)).toBe(minute);
  });

  test('never falls into the opening hours, unless it never closes', () => {
    for (let from = 0; from < 24; from++)
      for (let to = from + 1; to <= 24; to++) {
        if (to - from === 24) continue;
        const minute = nightMinute({ from, to });
        expect(minute >= from * 60 && minute < to * 60).toBe(false);
        expect(minute).toBeGreaterThanOrEqual(0);
        expect(minute).toBeLessThan(24 * 60);
      }
  });
});

describe('the latest one that has passed', () => {
  test('is this day’s from its minute on, and the day before’s until then', () => {
    expect(lastNight(at(27, 3, 59), always)).toEqual(at(26, 4));
    expect(lastNight(at(27, 4), always)).toEqual(at(27, 4));
    expect(lastNight(at(27, 23, 59), always)).toEqual(at(27, 4));
    expect(lastNight(at(1, 0, 30), shop)).toEqual(new Date(2026, 9, 31, 1));
  });

  test('a page that has stood since the evening is due in the morning, one loaded after the moment is not', () => {
    expect(lastNight(at(27, 8), always) > at(26, 20)).toBe(true);
    expect(lastNight(at(27, 8), always) > at(27, 5)).toBe(false);
  });
});

test('open from the first hour on and until the last begins', () => {
  expect([8, 9, 16, 17].map((hour) => isOpen(at(27, hour, 59), shop))).toEqual([false, true, true, false]);
  expect([0, 23].map((hour) => isOpen(at(27, hour, 59), always))).toEqual([true, true]);
});
