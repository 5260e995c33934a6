import { useState } from 'preact/hooks';
import { usualPxPerMm } from '../../scene/bench/true-scale.ts';

const key = 'seamfield.pxPerMm';
/** No screen is finer or coarser, CSS pixels to the millimeter. */
export const scaleLimits = { low: 1.5, high: 12 } as const;

function kept(): number {
  try {
    const value = Number(localStorage.getItem(key));
    return value >= scaleLimits.low && value <= scaleLimits.high ? value : usualPxPerMm;
  } catch {
    return usualPxPerMm;
  }
}

/** How many px a millimeter is on this screen: the usual figure until a card was laid on it; kept on the device. */
export function usePxPerMm(): readonly [pxPerMm: number, set: (pxPerMm: number) => void] {
  const [pxPerMm, setPxPerMm] = useState(kept);
  return [
    pxPerMm,
    (value) => {
      setPxPerMm(value);
      try {
        localStorage.setItem(key, String(value));
      } catch {
        // Without storage it holds until the page is left.
      }
    },
  ];
}
