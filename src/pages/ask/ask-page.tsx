import { useEffect } from 'preact/hooks';
import { allQuestions, questionOf } from '../../compare/questions/all-questions.ts';
import { useWords } from '../../language/words.ts';
import { hashOf, type Route } from '../route.ts';
import { QuestionView } from './question-view.tsx';
import { type AskWords, useAskWords } from './use-ask-words.ts';
import '../season/workings.css';
import './ask.css';
import './swatches.css';

export interface AskPageProps {
  readonly route: Extract<Route, { page: 'ask' }>;
}

/** The questions as swatches of cloth, each with its own print; the print says nothing, the slip on it does. */
function Swatches({ asked }: { readonly asked: AskWords }) {
  return (
    <ul class="swatches">
      {allQuestions.map(({ id }, index) => (
        <li key={id} data-turn={String(index % 5)}>
          <a class="swatch" data-print={id} href={hashOf({ page: 'ask', id })}>
            <span class="swatch-cloth" aria-hidden="true" />
            <span class="swatch-slip">{asked.questions[id]!.title}</span>
          </a>
        </li>
      ))}
    </ul>
  );
}

function AllQuestions({ asked, unknown }: { readonly asked: AskWords; readonly unknown: string | null }) {
  const { messages } = useWords();
  useEffect(() => {
    document.title = `${asked.title}: ${messages.common.product}`;
  }, [asked, messages]);
  return (
    <>
      <h1>{asked.title}</h1>
      {unknown === null ? (
        <p class="ask-lead">{asked.lead}</p>
      ) : (
        <p class="ask-lead" role="status">
          <code>{unknown}</code>: {asked.unknown}
        </p>
      )}
      <Swatches asked={asked} />
    </>
  );
}

/** Questions people ask: all of them, or one with its answer worked out. */
export default function AskPage({ route }: AskPageProps) {
  const { language, messages } = useWords();
  const asked = useAskWords(language);
  const question = questionOf(route.id);
  // Whoever came through a swatch begins at the top of its answer.
  useEffect(() => {
    window.scrollTo(0, 0);
    if (document.activeElement === document.body) document.getElementById('main')?.focus({ preventScroll: true });
  }, [route.id]);
  return (
    <main id="main" class="ask-page" tabIndex={-1}>
      {asked === null ? <p role="status">{messages.common.loading}</p> : null}
      {asked && question ? <QuestionView key={question.id} question={question} asked={asked} /> : null}
      {asked && !question ? (
        <AllQuestions asked={asked} unknown={route.id === '' ? null : route.id.slice(0, 40)} />
      ) : null}
    </main>
  );
}
