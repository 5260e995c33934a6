import { Fragment } from 'preact';
import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';
import { useOpenWorking, workingPanelId } from './open-working.tsx';
import type { WorkingSource } from './working-source.ts';

export interface WorkingNumberProps {
  /** The number as it is printed. */
  readonly text: string;
  /** Absent where the page has no working to show; then the number is plain text. */
  readonly source?: WorkingSource | undefined;
}

/** A number that opens its working: a button that looks like the number, with a dotted line under it. */
export function WorkingNumber({ text, source }: WorkingNumberProps) {
  const { messages } = useWords();
  const open = useOpenWorking();
  if (!source || !open) return <Fragment>{text}</Fragment>;
  const isOpen = open.key === source.key;
  return (
    <button
      type="button"
      class="working-number"
      data-working={source.key}
      aria-expanded={isOpen}
      aria-controls={isOpen ? workingPanelId : undefined}
      aria-label={fill(messages.workings.show, { value: text, name: source.name })}
      onClick={(event) => open.toggle(source.key, event.currentTarget)}
    >
      {text}
    </button>
  );
}
