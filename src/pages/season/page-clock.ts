import type { Clock } from '../../statechart/runner.ts';

/** The browser's clock. A hidden page asks for no frames: what was asked for is asked again when the page is seen. */
export function pageClock(): Clock {
  let frame = 0;
  let waiting: (() => void) | null = null;
  const askAgain = () => {
    if (document.hidden || !waiting) return;
    document.removeEventListener('visibilitychange', askAgain);
    const callback = waiting;
    waiting = null;
    frame = requestAnimationFrame(callback);
  };
  return {
    now: () => performance.now(),
    request(callback) {
      if (document.hidden) {
        waiting = callback;
        document.addEventListener('visibilitychange', askAgain);
      } else frame = requestAnimationFrame(callback);
      return 1;
    },
    cancel() {
      cancelAnimationFrame(frame);
      waiting = null;
      document.removeEventListener('visibilitychange', askAgain);
    },
  };
}
