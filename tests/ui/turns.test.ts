// @vitest-environment happy-dom
import { afterEach, expect, test, vi } from 'vitest';
import { takeTurn } from '../../src/ui/turns.ts';

/** Frames drawn by hand, each with the tasks that follow it. */
function framesByHand() {
  let asked: FrameRequestCallback[] = [];
  vi.spyOn(globalThis, 'requestAnimationFrame').mockImplementation((callback) => asked.push(callback));
  return async () => {
    const now = asked;
    asked = [];
    for (const callback of now) callback(0);
    await new Promise((resolve) => setTimeout(resolve, 5));
  };
}
afterEach(() => vi.restoreAllMocks());

test('turns come in the order they were asked for, one after each frame', async () => {
  const frame = framesByHand();
  const came: string[] = [];
  for (const name of ['a', 'b', 'c']) takeTurn(() => came.push(name));
  expect(came).toEqual([]);
  await frame();
  expect(came).toEqual(['a']);
  await frame();
  expect(came).toEqual(['a', 'b']);
  await frame();
  expect(came).toEqual(['a', 'b', 'c']);
});

test('a hidden page draws no frames, and its turns come all the same', async () => {
  framesByHand();
  vi.spyOn(document, 'hidden', 'get').mockReturnValue(true);
  const came: string[] = [];
  for (const name of ['a', 'b']) takeTurn(() => came.push(name));
  expect(came).toEqual([]);
  await vi.waitFor(() => expect(came).toEqual(['a', 'b']));
});

test('a turn given up is passed over, and one asked for within a turn comes once', async () => {
  const came: string[] = [];
  takeTurn(() => {
    came.push('a');
    takeTurn(() => came.push('c'));
  });
  const giveUp = takeTurn(() => came.push('never'));
  takeTurn(() => came.push('b'));
  giveUp();
  await vi.waitFor(() => expect(came).toContain('c'));
  await new Promise((resolve) => setTimeout(resolve, 60));
  expect(came).toEqual(['a', 'b', 'c']);
});
