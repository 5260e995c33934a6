import { useEffect } from 'preact/hooks';
import { cameByGesture } from '../../../kiosk/installer-gesture.ts';

/** An installer's page left open is no kiosk. An assumption. */
const IDLE_MS = 600_000;

/** Goes back to the kiosk when nobody touches the page, if it was opened there: nothing on it waits to be kept. */
export function useIdleReturn(): void {
  useEffect(() => {
    if (!cameByGesture()) return;
    let timer = 0;
    const wait = () => {
      clearTimeout(timer);
      timer = window.setTimeout(() => {
        location.hash = '#/kiosk';
      }, IDLE_MS);
    };
    wait();
    const signs = ['pointerdown', 'keydown', 'scroll', 'input'] as const;
    for (const sign of signs) addEventListener(sign, wait, { passive: true });
    return () => {
      clearTimeout(timer);
      for (const sign of signs) removeEventListener(sign, wait);
    };
  }, []);
}
