import type { ComponentChildren } from 'preact';
import { useLesson } from '../lesson-frame.ts';

export interface TermProps {
  /** Id in the glossary. */
  readonly id: string;
  readonly children: ComponentChildren;
}

/** A word of the trade at its first use, linked to the glossary. */
export function Term({ id, children }: TermProps) {
  const { glossary, termHref } = useLesson();
  if (!glossary[id]) throw new RangeError(`no term named ${id}`);
  return (
    <a class="term" href={termHref(id)}>
      {children}
    </a>
  );
}
