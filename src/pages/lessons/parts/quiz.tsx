import { useId, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import type { QuizQuestion } from '../../../lessons/front-matter.ts';
import { useLesson } from '../lesson-frame.ts';
import { bothTexts, numberText } from '../number-text.ts';
import { computedNumber } from './num.tsx';
import { arrangedQuiz } from './quiz-order.ts';
import { Said } from './said.tsx';

type Option = QuizQuestion['options'][number];
const isRight = (option: Option): boolean => option.right === true || option.times === 1;

/** What an option says: its words, or the computed answer times its factor. */
function OptionText({ question, option }: { readonly question: QuizQuestion; readonly option: Option }) {
  const words = useWords();
  const { words: lessons, still } = useLesson();
  if (question.of === undefined || option.times === undefined) return <Said text={option.says ?? ''} />;
  const answer = computedNumber(question.of);
  const number = { ...answer, value: answer.value * option.times };
  return <span class="num">{still ? bothTexts(number, words, lessons) : numberText(number, words, lessons).text}</span>;
}

function LiveQuestion({ question, place }: { readonly question: QuizQuestion; readonly place: string }) {
  const { words: lessons } = useLesson();
  const id = useId();
  const [chosen, setChosen] = useState<Option | null>(null);
  return (
    <fieldset class="quiz-question">
      <legend>
        <span class="caption">{place}</span> <Said text={question.ask} />
      </legend>
      {question.options.map((option, index) => (
        <label key={index} class="quiz-option" data-right={chosen && isRight(option) ? '' : undefined}>
          <input type="radio" name={id} checked={chosen === option} onChange={() => setChosen(option)} />
          <span>
            <OptionText question={question} option={option} />
          </span>
        </label>
      ))}
      <p role="status" class="quiz-why">
        {chosen ? (
          <>
            <b>{isRight(chosen) ? lessons.sentence.right : lessons.sentence.wrong}</b> <Said text={chosen.why} />
          </>
        ) : null}
      </p>
    </fieldset>
  );
}

const letters = 'abcd';

/** Questions with an explanation for every option. Without scripts the answers lie in a fold below. */
export function Quiz() {
  const { formats } = useWords();
  const { name, matter, words: lessons, still } = useLesson();
  const quiz = arrangedQuiz(name, matter.quiz);
  const said = lessons.sentence;
  const id = useId();
  const place = (index: number) =>
    fill(said.question, { n: formats.count(index + 1), all: formats.count(quiz.length) });
  return (
    <section class="quiz" aria-labelledby={id}>
      <h2 id={id}>{said.quiz}</h2>
      {quiz.map((question, index) =>
        still ? (
          <div key={question.ask} class="quiz-question">
            <p>
              <span class="caption">{place(index)}</span> <Said text={question.ask} />
            </p>
            <ol type="a">
              {question.options.map((option, at) => (
                <li key={at}>
                  <OptionText question={question} option={option} />
                </li>
              ))}
            </ol>
          </div>
        ) : (
          <LiveQuestion key={question.ask} question={question} place={place(index)} />
        ),
      )}
      {still ? (
        <details class="answer-key">
          <summary>{said.key}</summary>
          {quiz.map((question, index) => (
            <div key={question.ask}>
              <p>{place(index)}</p>
              <ul>
                {question.options.map((option, at) => (
                  <li key={at}>
                    <b>
                      {letters[at]}. {isRight(option) ? said.right : said.wrong}
                    </b>{' '}
                    <Said text={option.why} />
                  </li>
                ))}
              </ul>
            </div>
          ))}
        </details>
      ) : null}
    </section>
  );
}
