import { describe, expect, test } from 'vitest';
import {
  type Corner,
  cornerAt,
  GestureReader,
  HOLD_MS,
  TAPS_MS,
  tappedCorners,
} from '../../src/kiosk/installer-gesture.ts';

/** Holds the first corner, then taps; whether the gesture was read at the last tap. */
function read({
  holdMs = HOLD_MS,
  everyMs = 500,
  taps = tappedCorners as readonly (Corner | null)[],
  let: end = 'top-left' as Corner | null,
}) {
  const reader = new GestureReader();
  reader.down('top-left', 1000);
  let now = 1000 + holdMs;
  reader.up(end, now);
  return taps.map((corner) => {
    now += everyMs;
    const done = reader.down(corner, now);
    reader.up(corner, now);
    return done;
  });
}

describe('the gesture', () => {
  test('is a hold of five seconds in the top left corner and then the corners once round', () => {
    expect(HOLD_MS).toBe(5000);
    expect(read({})).toEqual([false, false, false, true]);
  });

  test.each([
    ['the hold was too short', { holdMs: HOLD_MS - 1 }],
    ['the finger left the corner', { let: null }],
    ['the taps came too late', { everyMs: TAPS_MS }],
    ['the order was another', { taps: ['top-right', 'bottom-left', 'bottom-right', 'top-left'] as const }],
    ['a tap went elsewhere', { taps: ['top-right', null, 'bottom-right', 'bottom-left', 'top-left'] as const }],
  ])('is not read where %s', (_why, how) => {
    expect(read(how)).not.toContain(true);
  });
});

test('a corner reaches as far as it is said to, on both axes', () => {
  const corner = (x: number, y: number) => cornerAt(x, y, 1080, 1920, 100);
  expect(corner(100, 100)).toBe('top-left');
  expect(corner(101, 100)).toBe(null);
  expect(corner(980, 0)).toBe('top-right');
  expect(corner(1080, 1820)).toBe('bottom-right');
  expect(corner(0, 1819)).toBe(null);
  expect(corner(0, 1920)).toBe('bottom-left');
});
