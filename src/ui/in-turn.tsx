import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { localeOf } from '../language/language.ts';
import { useWords, WordsContext } from '../language/words.ts';
import { takeTurn } from './turns.ts';

export interface InTurnProps {
  /** The part's element. */
  readonly as: 'div' | 'figure';
  readonly class: string;
  /** The screen the part is drawn for, and where it is another part altogether, which: for another one a curtain is down. */
  readonly scene: string;
  /** What else it is made from that takes its time. */
  readonly of?: unknown;
  readonly children: ComponentChildren;
}

/**
 * A part of a page that takes up other words, another screen or another of what it is made from after the parts before it, in a
 * task and a frame of its own: a whole page at once is a long task. Until then it keeps what it has. For another screen it is out
 * of sight meanwhile and keeps its place, since what is in sight follows the page's size of letters at once. Everything else it
 * takes up as it comes.
 */
export function InTurn({ as: Part, class: name, scene, of, children }: InTurnProps) {
  const words = useWords();
  const [shown, setShown] = useState({ words, scene, of });
  const waits = shown.words !== words || shown.scene !== scene || shown.of !== of;
  const held = useRef(children);
  if (!waits) held.current = children;
  useEffect(() => (waits ? takeTurn(() => setShown({ words, scene, of })) : undefined), [waits, words, scene, of]);
  return (
    <Part
      class={`in-turn ${name}`}
      lang={localeOf(shown.words.language)}
      aria-busy={waits}
      data-curtain={shown.scene === scene ? undefined : 'down'}
    >
      <WordsContext.Provider value={shown.words}>{held.current}</WordsContext.Provider>
    </Part>
  );
}
