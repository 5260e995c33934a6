import { useEffect, useState } from 'preact/hooks';

/** True while the window is no wider than a phone, or than the query given allows; follows the window. */
export function useNarrow(query = '(max-width: 42rem)'): boolean {
  const [narrow, setNarrow] = useState(() => matchMedia(query).matches);
  useEffect(() => {
    const list = matchMedia(query);
    const follow = () => setNarrow(list.matches);
    follow();
    list.addEventListener('change', follow);
    return () => list.removeEventListener('change', follow);
  }, [query]);
  return narrow;
}
