// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { BEAT_MS, beatText, type KioskState, startHeartbeat } from '../../src/kiosk/heartbeat.ts';

beforeEach(() => void vi.useFakeTimers({ now: new Date('2026-11-27T09:00:00Z') }));
afterEach(() => void vi.useRealTimers());

test('the title and the attribute say the same, and change with every beat', () => {
  document.title = 'Seamfield';
  let state: KioskState = 'attract';
  const stop = startHeartbeat(() => state);
  const read = () => document.documentElement.dataset.heartbeat;
  expect(read()).toBe('Seamfield kiosk attract 2026-11-27T09:00:00Z');
  state = 'visit';
  vi.advanceTimersByTime(BEAT_MS);
  expect(read()).toBe(beatText('visit', new Date('2026-11-27T09:00:10Z')));
  expect(document.title).toBe(read());
  stop();
  vi.advanceTimersByTime(10 * BEAT_MS);
  expect([document.title, read()]).toEqual(['Seamfield', undefined]);
});

test('a launcher that waits a minute has missed at least five beats', () => {
  expect(60_000 / BEAT_MS).toBeGreaterThan(5);
});
