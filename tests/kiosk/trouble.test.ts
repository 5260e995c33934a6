// @vitest-environment happy-dom
import { beforeEach, describe, expect, test } from 'vitest';
import {
  calmMs,
  graphicsGone,
  keepTroubles,
  keptTroubles,
  readTroubles,
  type TroubleKind,
  waitMs,
  withTrouble,
} from '../../src/kiosk/trouble.ts';

beforeEach(() => sessionStorage.clear());

const none = readTroubles(null);
/** So many troubles, a minute apart, and when the last one was. */
function troubled(count: number, kind: TroubleKind) {
  let troubles = none;
  for (let i = 1; i <= count; i++) troubles = withTrouble(troubles, kind, i * 60_000);
  return { troubles, lastMs: count * 60_000 };
}

describe('the wait before the page is loaded anew', () => {
  test('grows from 5 to 30 to 120 s and stays there', () => {
    expect([1, 2, 3, 4, 9].map((count) => waitMs(troubled(count, 'error').troubles, 'error'))).toEqual([
      5000, 30_000, 120_000, 120_000, 120_000,
    ]);
  });

  test('begins anew after a calm stretch, and each kind counts for itself', () => {
    const { troubles, lastMs } = troubled(4, 'error');
    expect(waitMs(withTrouble(troubles, 'error', lastMs + calmMs), 'error')).toBe(120_000);
    expect(waitMs(withTrouble(troubles, 'error', lastMs + calmMs + 1), 'error')).toBe(5000);
    expect(waitMs(withTrouble(troubles, 'graphics', lastMs), 'graphics')).toBe(5000);
  });

  test('a clock that was set back starts nothing anew', () => {
    const { troubles } = troubled(3, 'error');
    expect(withTrouble(troubles, 'error', 0).error.count).toBe(4);
  });
});

test('the pictures stand still after more than three reloads for lost graphics, until a calm stretch has passed', () => {
  const three = troubled(3, 'graphics');
  expect(graphicsGone(three.troubles, three.lastMs)).toBe(false);
  const four = troubled(4, 'graphics');
  expect(graphicsGone(four.troubles, four.lastMs)).toBe(true);
  expect(graphicsGone(four.troubles, four.lastMs + calmMs + 1)).toBe(false);
  const errors = troubled(9, 'error');
  expect(graphicsGone(errors.troubles, errors.lastMs)).toBe(false);
});

test('what is kept comes back, and junk counts as no trouble', () => {
  const { troubles } = troubled(2, 'graphics');
  keepTroubles(troubles);
  expect(keptTroubles()).toEqual(troubles);
  for (const junk of ['', '{', 'null', '7', '[]', '{"error":{"count":-1,"lastMs":3}}', '{"error":{"count":"9"}}']) {
    expect(readTroubles(junk)).toEqual(none);
  }
});
