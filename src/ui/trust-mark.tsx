import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { useWords } from '../language/words.ts';
import type { Mark } from '../model/fact.ts';

/** What a shown number rests on. */
export interface Trust {
  readonly mark: Mark;
  readonly source: string;
  readonly note?: string;
}

export interface TrustMarkProps {
  readonly trust: Trust;
  /** The name of the number it stands beside, for speech. */
  readonly label: string;
}

/**
 * How a number shows what it rests on: one cross-stitch beside it (a single bar where it is common practice), which opens
 * to the word, its meaning and the source. Numbers that are published or derived from print carry no mark.
 */
export function TrustMark({ trust, label }: TrustMarkProps) {
  const { messages } = useWords();
  const { marks } = messages;
  const [open, setOpen] = useState(false);
  const id = useId();
  const box = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    if (!open) return;
    const leave = (event: Event) => {
      if (!box.current?.contains(event.target as Node)) setOpen(false);
    };
    document.addEventListener('pointerdown', leave);
    return () => document.removeEventListener('pointerdown', leave);
  }, [open]);
  if (trust.mark === 'published' || trust.mark === 'derived') return null;
  return (
    <span class="trust" ref={box}>
      <button
        type="button"
        class="trust-button"
        aria-expanded={open}
        aria-controls={id}
        aria-label={`${label}: ${marks.names[trust.mark]}`}
        onClick={() => setOpen(!open)}
        onKeyDown={(event) => {
          if (event.key === 'Escape') setOpen(false);
        }}
      >
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
          <path d={trust.mark === 'common practice' ? 'M3 13 13 3' : 'M3 13 13 3M3 3l10 10'} />
          {trust.mark === 'assumption' ? <path d="M1 15.4h14" stroke-dasharray="3 2.4" /> : null}
        </svg>
        <span class="trust-word" aria-hidden="true">
          {marks.names[trust.mark]}
        </span>
      </button>
      <span id={id} class="patch trust-note" data-cut="2" hidden={!open}>
        <b>{marks.names[trust.mark]}</b> {marks.meaning[trust.mark]}
        <span class="trust-source">
          {marks.source}: {trust.source}
        </span>
        {trust.note ? <span class="trust-source">{trust.note}</span> : null}
      </span>
    </span>
  );
}
