import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { cutOf, type PatchInk } from './cut-of.ts';

export interface PatchButtonProps {
  readonly children: ComponentChildren;
  readonly onPress: () => void;
  /** Ink of the cloth; the one loud button of a screen is weld or madder. */
  readonly ink?: PatchInk;
  /** Set on the one loud button of a screen. */
  readonly primary?: boolean;
  /** Name for speech, when the button shows a sign only. */
  readonly label?: string;
  /** Why the button does nothing now. It stays in its place and says so. */
  readonly refusal?: string | undefined;
  readonly pressed?: boolean;
}

/** A button cut from cloth. */
export function PatchButton({ children, onPress, ink = 'paper', primary, label, refusal, pressed }: PatchButtonProps) {
  const why = useId();
  return (
    <>
      <button
        type="button"
        class="patch patch-button"
        data-ink={ink}
        data-cut={cutOf(label ?? String(children))}
        data-primary={primary ? '' : undefined}
        aria-label={label}
        aria-pressed={pressed}
        aria-disabled={refusal ? true : undefined}
        aria-describedby={refusal ? why : undefined}
        onClick={() => {
          if (!refusal) onPress();
        }}
      >
        {children}
      </button>
      {refusal ? (
        <p id={why} class="caption refusal">
          {refusal}
        </p>
      ) : null}
    </>
  );
}
