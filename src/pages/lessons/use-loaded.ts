import { useEffect, useState } from 'preact/hooks';

/** What was loaded, or null until it has come. What was there before stays until then. */
export function useLoaded<Loaded>(load: () => Promise<Loaded>, inputs: readonly unknown[]): Loaded | null {
  const [loaded, setLoaded] = useState<Loaded | null>(null);
  const [failed, setFailed] = useState<unknown>(null);
  useEffect(() => {
    let left = false;
    load().then(
      (value) => !left && setLoaded(value),
      (error: unknown) => !left && setFailed(error),
    );
    return () => {
      left = true;
    };
  }, inputs);
  // The error boundary of the page tells what to do.
  if (failed) throw failed;
  return loaded;
}
