import { useEffect, useRef } from 'preact/hooks';

/** Style properties set one by one, not as an attribute, which the strict content policy refuses. */
export function useStyles<Host extends HTMLElement>(properties: Readonly<Record<string, string>>) {
  const host = useRef<Host>(null);
  const written = JSON.stringify(properties);
  useEffect(() => {
    const element = host.current;
    if (!element) return;
    for (const [name, value] of Object.entries(properties)) element.style.setProperty(name, value);
  }, [written]);
  return host;
}
