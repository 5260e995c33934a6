import { useEffect, useMemo } from 'preact/hooks';
import { type Question, runAsked } from '../../compare/questions/question.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { encodeComparison } from '../../statechart/saved-comparison.ts';
import { encodeRun } from '../../statechart/saved-run.ts';
import { OneWorkingOpen } from '../../ui/open-working.tsx';
import { useSeasons } from '../compare/use-seasons.ts';
import { hashOf } from '../route.ts';
import { answerText } from './answer-text.ts';
import { DecidingFacts } from './deciding-facts.tsx';
import { NumbersTable } from './numbers-table.tsx';
import { SeasonsTable } from './seasons-table.tsx';
import type { AskWords } from './use-ask-words.ts';

export interface QuestionViewProps {
  readonly question: Question;
  readonly asked: AskWords;
}

/** One question: the answer in words, the numbers behind it, what decides it and what it leaves out. */
export function QuestionView({ question, asked }: QuestionViewProps) {
  const words = useWords();
  const { messages, formats } = words;
  const said = asked.questions[question.id]!;
  const { seasons, done } = useSeasons(
    question.id,
    question.runs.map((run) => () => runAsked(run)),
  );
  const answer = useMemo(() => (seasons ? question.answer(seasons) : null), [seasons, question]);
  const first = question.runs[0]!;
  const text = answer ? answerText(answer, first, said, words, asked) : null;
  useEffect(() => {
    document.title = `${said.title} ${messages.common.product}`;
  }, [said, messages]);
  const opened = answer?.sides[0] ?? first;
  return (
    <OneWorkingOpen>
      <p class="ask-all">
        <a href={hashOf({ page: 'ask', id: '' })}>{asked.all}</a>
      </p>
      <h1>{said.title}</h1>
      {text && answer ? (
        <div class="ask-columns">
          <section class="ask-answer" aria-label={asked.answer}>
            <p class="patch ask-headline" data-ink="indigo" data-cut="2">
              {text.sentences[0]}
            </p>
            {text.sentences.slice(1).map((sentence) => (
              <p key={sentence} class="ask-because">
                {sentence}
              </p>
            ))}
            <p class="caption">
              {text.about} {asked.invented}
            </p>
            {said.compareNote ? <p class="caption">{said.compareNote}</p> : null}
            <p class="ask-links">
              {answer.compare ? (
                <a
                  class="patch side-link"
                  data-ink="weld"
                  data-cut="1"
                  href={hashOf({ page: 'compare', query: encodeComparison(answer.compare) })}
                >
                  {asked.compare}
                </a>
              ) : null}
              <a
                href={hashOf({
                  page: 'season',
                  station: question.station,
                  query: encodeRun({ scenario: opened.scenario, seed: opened.seed }),
                })}
              >
                {fill(asked.season, { station: messages.stations[question.station].name })}
              </a>
            </p>
          </section>
          <div class="ask-figures">
            <NumbersTable answer={answer} question={said} asked={asked} />
            {seasons && seasons.length > 2 ? <SeasonsTable seasons={seasons} question={said} asked={asked} /> : null}
          </div>
          <DecidingFacts facts={question.decidedBy} question={said} asked={asked} />
          <section class="ask-limits" aria-labelledby="ask-limits">
            <h2 id="ask-limits">{asked.limits}</h2>
            <ul>
              {text.limits.map((limit) => (
                <li key={limit}>{limit}</li>
              ))}
            </ul>
          </section>
        </div>
      ) : (
        <p role="status">
          {fill(asked.working, { done: formats.count(done), of: formats.count(question.runs.length) })}
        </p>
      )}
    </OneWorkingOpen>
  );
}
