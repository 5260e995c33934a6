// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { onGraphicsLost } from '../../src/kiosk/lost-graphics.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

/** A picture's canvas on the page, and how often it was told that graphics are lost. */
function watched() {
  const canvas = document.createElement('canvas');
  document.body.append(canvas);
  const told = vi.fn();
  const stop = onGraphicsLost(told);
  // As the WebGL specification has it (5.15): the events do not bubble.
  return { told, stop, happens: (name: 'lost' | 'restored') => canvas.dispatchEvent(new Event(`webglcontext${name}`)) };
}

test('one loss that comes back is the picture’s own affair, the second is not', () => {
  const { told, stop, happens } = watched();
  happens('lost');
  vi.advanceTimersByTime(1000);
  happens('restored');
  vi.advanceTimersByTime(60_000);
  expect(told).not.toHaveBeenCalled();
  happens('lost');
  expect(told).toHaveBeenCalledTimes(1);
  stop();
  happens('lost');
  expect(told).toHaveBeenCalledTimes(1);
});

test('a loss that does not come back is told', () => {
  const { told, stop, happens } = watched();
  happens('lost');
  vi.advanceTimersByTime(3900);
  expect(told).not.toHaveBeenCalled();
  vi.advanceTimersByTime(200);
  expect(told).toHaveBeenCalledTimes(1);
  stop();
});
