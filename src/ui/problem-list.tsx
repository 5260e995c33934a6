import { useId } from 'preact/hooks';
import { problemText } from '../language/problem-text.ts';
import { useWords } from '../language/words.ts';
import type { Problem } from '../model/problem.ts';

export interface ProblemListProps {
  readonly problems: readonly Problem[];
  /** Replaces the usual heading. */
  readonly heading?: string;
  /** Replaces the word that nothing was changed. */
  readonly untouched?: string;
}

/** What is wrong with an input, one line each: the field, the value, what is allowed. Nothing is drawn when all is well. */
export function ProblemList({ problems, heading, untouched }: ProblemListProps) {
  const { messages, formats } = useWords();
  const id = useId();
  if (problems.length === 0) return null;
  return (
    <section class="patch problem-list" data-state="basted" data-cut="2" role="alert" aria-labelledby={id}>
      <h3 id={id}>{heading ?? messages.problems.heading}</h3>
      <ul>
        {problems.map((problem) => (
          <li key={problem.field}>{problemText(problem, messages, formats)}</li>
        ))}
      </ul>
      <p>{untouched ?? messages.problems.untouched}</p>
    </section>
  );
}
