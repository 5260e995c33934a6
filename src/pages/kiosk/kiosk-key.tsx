import type { ComponentChildren } from 'preact';
import { cutOf, type PatchInk } from '../../ui/cut-of.ts';

export interface KioskKeyProps {
  readonly children: ComponentChildren;
  readonly onPress: () => void;
  readonly ink?: PatchInk;
  /** The one loud key of a screen; a keypad finds itself on it. */
  readonly primary?: boolean;
  readonly pressed?: boolean;
  /** Name for speech, where the key shows a sign only. */
  readonly label?: string;
  /** Seeds the cut, so that two keys side by side are not cut alike. */
  readonly cut: string;
}

/** A key of the kiosk: 20 mm at least, cut from cloth. */
export function KioskKey({ children, onPress, ink = 'paper', primary, pressed, label, cut }: KioskKeyProps) {
  return (
    <button
      type="button"
      class="patch kiosk-key"
      data-ink={ink}
      data-cut={cutOf(cut)}
      data-primary={primary ? '' : undefined}
      aria-pressed={pressed}
      aria-label={label}
      onClick={onPress}
    >
      {children}
    </button>
  );
}
