import { type BenchQuestionId, benchQuestionIds, benchQuestionOf } from '../../compare/bench-questions.ts';
import { useWords } from '../../language/words.ts';
import { benchOutcome } from '../../model/bench/outcomes.ts';
import { encodeBench } from '../../statechart/saved-bench.ts';
import { threadReadings } from '../../workings/bench/thread-readings.ts';
import { hashOf } from '../route.ts';
import { benchWords } from './bench-words.ts';
import { type BothViews, OutcomeLine } from './difference-lines.tsx';
import { ReadingsTable } from './readings-table.tsx';

/** The questions as doors. Each link opens the benches that answer it. */
export function QuestionDoors({ open }: { readonly open: BenchQuestionId | null }) {
  const { language } = useWords();
  const { questions } = benchWords(language);
  return (
    <nav class="bench-doors" aria-label={questions.heading}>
      <ul>
        {benchQuestionIds.map((id, at) => {
          const { a, b } = benchQuestionOf[id];
          return (
            <li key={id}>
              <a
                class="patch bench-door"
                data-cut={String((at % 3) + 1)}
                data-state={open === id ? 'sewn' : undefined}
                aria-current={open === id ? 'true' : undefined}
                href={hashOf({ page: 'bench', query: `${encodeBench({ a, b })}&ask=${id}` })}
              >
                {questions[id].name}
              </a>
            </li>
          );
        })}
      </ul>
    </nav>
  );
}

export interface QuestionAnswerProps extends BothViews {
  readonly id: BenchQuestionId;
  readonly onClose: () => void;
}

/** The answer to a question, from the two benches as they stand: the numbers, the reason and what it rests on. */
export function QuestionAnswer({ id, a, b, onClose }: QuestionAnswerProps) {
  const { language, messages } = useWords();
  const { questions } = benchWords(language);
  const { name, answer, why } = questions[id];
  const { looksAt, decidedBy } = benchQuestionOf[id];
  const shareOf = (key: (typeof looksAt)[number]) => {
    const [one, other] = [benchOutcome(key, a.bench), benchOutcome(key, b.bench)];
    return one === null || other === null || one === other ? 0 : other / one - 1;
  };
  return (
    <section class="patch bench-answer" data-ink="lint" data-cut="1" aria-labelledby="bench-answer">
      <h2 id="bench-answer">{name}</h2>
      <p class="bench-headline">{answer}</p>
      {id === 'thread' ? (
        <ReadingsTable readings={threadReadings()} where="answer/thread" caption={name} captionUnseen />
      ) : null}
      <ul class="bench-lines">
        {looksAt.map((key) => (
          <OutcomeLine key={key} a={a} b={b} outcome={key} share={shareOf(key)} where="answer" />
        ))}
      </ul>
      <h3>{questions.why}</h3>
      {why.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <h3>{questions.rests}</h3>
      <ul class="bench-sources">
        {decidedBy.map(({ mark, source }) => (
          <li key={source}>
            <b>{messages.marks.names[mark]}</b>: <span lang="en">{source}</span>
          </li>
        ))}
      </ul>
      <button type="button" class="bench-link" onClick={onClose}>
        {questions.close}
      </button>
    </section>
  );
}
