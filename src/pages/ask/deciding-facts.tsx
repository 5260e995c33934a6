import type { DecidingFact } from '../../compare/questions/question.ts';
import { fill } from '../../language/fill.ts';
import type { QuestionWords } from '../../language/messages/en/ask/question-words.ts';
import { useWords } from '../../language/words.ts';
import type { Fact } from '../../model/fact.ts';
import type { AskWords } from './use-ask-words.ts';

export interface DecidingFactsProps {
  readonly facts: readonly DecidingFact[];
  readonly question: QuestionWords;
  readonly asked: AskWords;
}

/** Units that say no more than that the number is a pure one. */
const pureUnits: readonly string[] = ['fraction', 'ratio'];

/** As many decimals as a fact is written with, to four. */
const decimalsOf = (value: number): number => Math.min(4, (String(value).split('.')[1] ?? '').length);

/** The numbers of the model that an answer hangs on: value, range, mark and source. */
export function DecidingFacts({ facts, question, asked }: DecidingFactsProps) {
  const { formats, messages, language } = useWords();
  const own = language === 'en' ? undefined : 'en';
  const plain = (value: number) => formats.number(value, decimalsOf(value));
  const rangeOf = ({ range }: Fact) =>
    range ? `, ${fill(asked.range, { low: plain(range[0]), high: plain(range[1]) })}` : '';
  return (
    <section class="ask-decides" aria-labelledby="ask-decides">
      <h2 id="ask-decides">{asked.decides}</h2>
      <p class="caption">{asked.decidesNote}</p>
      <dl>
        {facts.map(({ name, fact }) => (
          <div key={name}>
            <dt>{question.decides[name]}</dt>
            <dd>
              <b>
                {plain(fact.value)}
                {pureUnits.includes(fact.unit) ? null : <span lang={own}> {fact.unit}</span>}
              </b>
              {rangeOf(fact)}. <span class="fact-mark">{messages.marks.names[fact.mark]}</span>{' '}
              <span class="caption" lang={own}>
                {fact.source}
              </span>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
