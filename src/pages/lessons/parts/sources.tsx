import { useId } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { computedOf } from '../../../lessons/computed/all-computed.ts';
import { factNumber } from '../../../lessons/fact-number.ts';
import { lessonFarm, lessonSeed } from '../../../lessons/lesson-season.ts';
import { encodeRun } from '../../../statechart/saved-run.ts';
import { hashOf } from '../../route.ts';
import { useLesson } from '../lesson-frame.ts';
import { bothTexts, numberText } from '../number-text.ts';
import { computedNumber } from './num.tsx';

/** Every number of the page with what it rests on, then what else was read. */
export function Sources() {
  const words = useWords();
  const { messages } = words;
  const frame = useLesson();
  const { facts, computed, matter, words: lessons, still } = frame;
  const said = lessons.sentence;
  const id = useId();
  const text = (number: ReturnType<typeof computedNumber>) =>
    still ? bothTexts(number, words, lessons) : numberText(number, words, lessons).text;
  /** Whether a number before has already named the same source. */
  const toldBefore = (index: number): boolean => {
    const source = computedOf(computed[index]!)?.restsOn?.source;
    return computed.slice(0, index).some((name) => computedOf(name)?.restsOn?.source === source);
  };
  const season = hashOf({
    page: 'season',
    station: 'sewing',
    query: encodeRun({ scenario: lessonFarm, seed: lessonSeed }),
  });
  return (
    <section class="lesson-sources" aria-labelledby={id}>
      <h2 id={id}>{said.sources}</h2>
      <ol>
        {facts.map((name, index) => {
          const known = factNumber(name);
          const { mark, source, note } = known.fact;
          return (
            <li key={name} id={`source-${index + 1}`}>
              <b class="num">{text(known)}</b> <i>{messages.marks.names[mark]}</i>. <span lang="en">{source}</span>
              {note ? <span lang="en">. {note}</span> : null} <code>{name}</code>
            </li>
          );
        })}
        {computed.map((name, index) => {
          const restsOn = computedOf(name)?.restsOn;
          return (
            <li key={name} id={`source-${facts.length + index + 1}`}>
              <b class="num">{text(computedNumber(name))}</b> <i>{said.worked}</i>. {lessons.computed[name]}
              {restsOn ? (
                <>
                  {' '}
                  {said.restsOn}: <i>{messages.marks.names[restsOn.mark]}</i>.
                  {toldBefore(index) ? null : (
                    <>
                      {' '}
                      <span lang="en">{restsOn.source}</span>
                    </>
                  )}
                </>
              ) : null}
            </li>
          );
        })}
      </ol>
      <p class="caption">
        {fill(said.example, { seed: String(lessonSeed) })} {still ? null : <a href={season}>{said.openSeason}</a>}
      </p>
      {matter.sources.length > 0 ? (
        <>
          <h3>{said.read}</h3>
          <ul>
            {matter.sources.map((source) => (
              <li key={source} lang="en">
                {source}
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </section>
  );
}
