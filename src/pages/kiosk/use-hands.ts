import { useEffect } from 'preact/hooks';
import type { KioskEvent } from '../../statechart/kiosk.ts';

export interface HandsOptions {
  readonly send: (event: KioskEvent) => void;
  /** Whether a touch or a key now only says that somebody is there. */
  readonly isAsking: () => boolean;
  readonly isAttract: () => boolean;
}

const forth = ['ArrowRight', 'ArrowDown'];
const back = ['ArrowLeft', 'ArrowUp'];

/** Moves among the keys of the band, round and round. */
function moveFocus(by: 1 | -1) {
  const keys = [...document.querySelectorAll<HTMLElement>('.kiosk-band button')];
  const at = keys.indexOf(document.activeElement as HTMLElement);
  keys[(at + by + keys.length) % keys.length]?.focus({ preventScroll: true });
}

/** Fingers and a keypad: what they press, and that somebody is there. */
export function useHands({ send, isAsking, isAttract }: HandsOptions) {
  useEffect(() => {
    const fingers = new Set<number>();
    // The touch that answers the warning presses nothing below it, wherever its click lands.
    let swallow = false;
    const down = (event: PointerEvent) => {
      swallow = isAsking();
      fingers.add(event.pointerId);
      send({ type: 'DOWN' });
    };
    const up = (event: PointerEvent) => {
      fingers.delete(event.pointerId);
      if (fingers.size === 0) send({ type: 'UP' });
    };
    const click = (event: MouseEvent) => {
      if (swallow) {
        event.preventDefault();
        event.stopPropagation();
        swallow = false;
      } else if (isAttract()) send({ type: 'BEGIN' });
    };
    const key = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      const answers = isAsking();
      send({ type: 'KEY' });
      if (answers || isAttract()) {
        event.preventDefault();
        // Its click, if any, would press the key that has the focus.
        if (!answers) send({ type: 'BEGIN' });
        return;
      }
      if (forth.includes(event.key)) moveFocus(1);
      else if (back.includes(event.key)) moveFocus(-1);
      else if (event.key === 'Escape' || event.key === 'Backspace') send({ type: 'BACK' });
      else if (event.key === '+' || event.key === '=') send({ type: 'VOLUME', by: 1 });
      else if (event.key === '-') send({ type: 'VOLUME', by: -1 });
      else return;
      event.preventDefault();
    };
    window.addEventListener('pointerdown', down, true);
    window.addEventListener('pointerup', up, true);
    window.addEventListener('pointercancel', up, true);
    window.addEventListener('click', click, true);
    window.addEventListener('keydown', key);
    return () => {
      window.removeEventListener('pointerdown', down, true);
      window.removeEventListener('pointerup', up, true);
      window.removeEventListener('pointercancel', up, true);
      window.removeEventListener('click', click, true);
      window.removeEventListener('keydown', key);
    };
  }, []);
}
