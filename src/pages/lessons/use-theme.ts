import { useEffect, useState } from 'preact/hooks';
import type { Theme } from '../../style/inks.ts';

const shown = (): Theme =>
  typeof document !== 'undefined' && document.documentElement.dataset.theme === 'projector' ? 'projector' : 'day';

/** The theme of the page as it stands; day where there is no page. */
export function useTheme(): Theme {
  const [theme, setTheme] = useState(shown);
  useEffect(() => {
    const observer = new MutationObserver(() => setTheme(shown()));
    observer.observe(document.documentElement, { attributeFilter: ['data-theme'] });
    return () => observer.disconnect();
  }, []);
  return theme;
}
