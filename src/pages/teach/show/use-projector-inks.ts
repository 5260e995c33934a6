import { useLayoutEffect } from 'preact/hooks';

/** The inks of the projector while a show is on, whatever the visitor likes elsewhere. */
export function useProjectorInks(): void {
  useLayoutEffect(() => {
    const { dataset } = document.documentElement;
    const before = dataset.theme;
    dataset.theme = 'projector';
    return () => {
      dataset.theme = before;
    };
  }, []);
}
