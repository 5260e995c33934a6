import { type ComponentChildren, createContext } from 'preact';
import { useCallback, useContext, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Announcer } from './announcer.tsx';

/** Which working is open, and how to open another. */
export interface OpenWorking {
  readonly key: string | null;
  /** Opens the working of a number, or closes it where it is open. */
  readonly toggle: (key: string, opener: HTMLElement) => void;
  /** Closes it and goes back to its number. */
  readonly close: () => void;
  /** Closes it where its number is gone. */
  readonly leave: () => void;
  /** Says to those who listen what the working comes to. */
  readonly say: (words: string) => void;
}
const OpenWorkingContext = createContext<OpenWorking | null>(null);

/** The open working among the numbers around; null where the page shows no workings. */
export const useOpenWorking = (): OpenWorking | null => useContext(OpenWorkingContext);

/** Closes an open working when what the numbers belong to changes. */
export function useWorkingClosesOn(what: string): void {
  const open = useOpenWorking();
  useEffect(() => open?.leave(), [what]);
}

/** One working is open at a time, so one name is enough. */
export const workingPanelId = 'working-panel';

/** Keeps at most one working open among the numbers below it. Escape closes it and goes back to its number. */
export function OneWorkingOpen({ children }: { readonly children: ComponentChildren }) {
  const [key, setKey] = useState<string | null>(null);
  useEffect(() => {
    let left = false;
    let end = () => {};
    // Not needed for the first view.
    import('./number-stops.ts').then(({ keepNumberStops }) => {
      if (!left) end = keepNumberStops(document.body);
    });
    return () => {
      left = true;
      end();
    };
  }, []);
  const [said, setSaid] = useState('');
  const opener = useRef<HTMLElement | null>(null);
  const toggle = useCallback((asked: string, element: HTMLElement) => {
    opener.current = element;
    setSaid('');
    setKey((open) => (open === asked ? null : asked));
  }, []);
  const leave = useCallback(() => {
    setSaid('');
    setKey(null);
  }, []);
  const close = useCallback(() => {
    leave();
    opener.current?.focus({ preventScroll: true });
  }, [leave]);
  // Before the panel is painted: whoever sees it can close it.
  useLayoutEffect(() => {
    if (key === null) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented) close();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [key, close]);
  const open = useMemo(() => ({ key, toggle, close, leave, say: setSaid }), [key, toggle, close, leave]);
  return (
    <OpenWorkingContext.Provider value={open}>
      {children}
      <Announcer message={said} />
    </OpenWorkingContext.Provider>
  );
}
