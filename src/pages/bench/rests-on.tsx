import { useWords } from '../../language/words.ts';
import type { Trust } from '../../ui/trust-mark.tsx';

/** What something rests on, in print: how far it can be trusted, and where it was read. */
export function RestsOn({ mark, source, note }: Trust) {
  const { messages } = useWords();
  return (
    <p class="caption bench-rests">
      <b>{messages.marks.names[mark]}</b>: <span lang="en">{note ? `${source}; ${note}` : source}</span>
    </p>
  );
}
