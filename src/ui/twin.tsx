import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { useWords } from '../language/words.ts';

export interface TwinProps {
  /** The scene's name, for the region. */
  readonly name: string;
  /** What the picture shows, in sentences and numbers. */
  readonly see: ComponentChildren;
  /** The controls, or a list of them. */
  readonly change: ComponentChildren;
  /** What the last decision changed; absent before the first. */
  readonly changed?: ComponentChildren;
}

/** The words that stand for a scene, always under the same three headings and in this order. */
export function Twin({ name, see, change, changed }: TwinProps) {
  const { messages } = useWords();
  const { scenes: words } = messages;
  const id = useId();
  const part = (key: string, heading: string, children: ComponentChildren) => (
    <section aria-labelledby={`${id}-${key}`} class={`twin-${key}`}>
      <h2 id={`${id}-${key}`}>{heading}</h2>
      {children}
    </section>
  );
  return (
    <section class="twin" aria-label={name}>
      {part('see', words.see, see)}
      {part('change', words.change, change)}
      {part('changed', words.changed, changed ?? <p>{words.firstLook}</p>)}
    </section>
  );
}
