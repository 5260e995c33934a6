import { useEffect, useRef } from 'preact/hooks';
import { pressOfKey, type ShowPress } from '../../../teach/show/show-state.ts';

/** Keys that a control under the focus keeps for itself. A clicker's two always turn the step. */
function isOwnKey(target: EventTarget | null, key: string): boolean {
  if (!(target instanceof HTMLElement) || /^Page/.test(key)) return false;
  if (target.closest('input, select, textarea')) return true;
  return key === ' ' && target.closest('button, a, summary') !== null;
}

/** Keys of a keyboard or a clicker, wherever the focus is. */
export function useShowKeys(press: (key: ShowPress) => void, onEscape: () => void): void {
  const now = useRef({ press, onEscape });
  now.current = { press, onEscape };
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      // In full screen the browser itself leaves it first.
      if (event.key === 'Escape' && !document.fullscreenElement) return now.current.onEscape();
      const key = isOwnKey(event.target, event.key) ? undefined : pressOfKey[event.key];
      if (!key) return;
      event.preventDefault();
      now.current.press(key);
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
}
