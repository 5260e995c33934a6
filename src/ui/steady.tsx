import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';

export interface SteadyProps {
  /** All that the children are made from. */
  readonly on: readonly unknown[];
  readonly children: ComponentChildren;
}

/** Children that are left alone while what they are made from stays the same, however often the page around them is drawn. */
export function Steady({ on, children }: SteadyProps) {
  return <>{useMemo(() => children, on)}</>;
}
