import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** The first view and its scene come first: the copy for use offline is as large as everything together. */
const AFTER_LOAD_MS = 2000;

/** What keeps the site for use offline, fetched once the page stands; nothing is missed where it does not come. */
export function NewVersionLater() {
  const [Part, setPart] = useState<ComponentType | null>(null);
  useEffect(() => {
    let timer = 0;
    const fetchPart = () => {
      timer = window.setTimeout(
        () =>
          import('./new-version.tsx').then(
            ({ NewVersion }) => setPart(() => NewVersion),
            () => {},
          ),
        AFTER_LOAD_MS,
      );
    };
    if (document.readyState === 'complete') fetchPart();
    else addEventListener('load', fetchPart, { once: true });
    return () => {
      removeEventListener('load', fetchPart);
      clearTimeout(timer);
    };
  }, []);
  return Part ? <Part /> : null;
}
