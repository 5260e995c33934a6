// @vitest-environment happy-dom
import { expect, test, vi } from 'vitest';
import { pageClock } from '../../../src/pages/season/page-clock.ts';

function hide(hidden: boolean) {
  Object.defineProperty(document, 'hidden', { configurable: true, get: () => hidden });
  document.dispatchEvent(new Event('visibilitychange'));
}

test('a hidden page asks for no frame until it is seen again, and a cancelled wish is forgotten', () => {
  const ask = vi.spyOn(globalThis, 'requestAnimationFrame').mockReturnValue(7);
  const clock = pageClock();
  hide(true);
  clock.request(() => {});
  expect(ask).not.toHaveBeenCalled();
  hide(false);
  expect(ask).toHaveBeenCalledTimes(1);
  hide(true);
  const handle = clock.request(() => {});
  clock.cancel(handle);
  hide(false);
  expect(ask).toHaveBeenCalledTimes(1);
  clock.request(() => {});
  expect(ask).toHaveBeenCalledTimes(2);
});
