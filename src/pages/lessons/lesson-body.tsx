import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { variants } from '../../lessons/front-matter.ts';
import { lessonComponents } from './lesson-components.ts';
import type { LessonFile } from './lesson-file.ts';
import { LessonContext, type LessonFrame } from './lesson-frame.ts';
import { Said } from './parts/said.tsx';

/** The new words of a lesson, each with its meaning, so that the page is complete on paper. */
function NewWords({ frame }: { readonly frame: LessonFrame }) {
  return (
    <section class="new-words" aria-labelledby="new-words">
      <h2 id="new-words">{frame.words.newWords}</h2>
      <dl>
        {frame.matter.vocabulary.map((id) => {
          const entry = frame.glossary[id];
          if (!entry) throw new RangeError(`no term named ${id}`);
          return (
            <div key={id}>
              <dt>{entry.term}</dt>
              <dd>{entry.says}</dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}

/** What a teacher needs: aims, minutes step by step, things to have ready, talk, standards. */
function TeacherPart({ frame }: { readonly frame: LessonFrame }) {
  const { formats } = useWords();
  const { matter, words } = frame;
  const list = (heading: string, lines: readonly string[]) => (
    <>
      <h3>{heading}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>
            <Said text={line} />
          </li>
        ))}
      </ul>
    </>
  );
  return (
    <details class="for-teacher">
      <summary>
        <h2>{words.forTeacher}</h2>
      </summary>
      <p>{fill(words.grades, { grades: matter.grades })}</p>
      {list(words.objectives, matter.objectives)}
      {list(words.materials, matter.materials)}
      <h3>{words.plan}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.planStep}</th>
            {variants.map((variant) => (
              <th key={variant} scope="col" class="number">
                {words.variants[variant]}
                <br />
                {formats.plural(matter.minutes[variant], words.minutes)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {matter.plan.map((step) => (
            <tr key={step.do}>
              <th scope="row">{step.do}</th>
              {variants.map((variant) => (
                <td key={variant} class="number">
                  {formats.count(step[variant])}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {list(words.discussion, matter.discussion)}
      <h3>{words.standards}</h3>
      <ul>
        {matter.standards.map((code) => (
          <li key={code}>
            {code}: {words.standardsSay[code]}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** A whole lesson, live or still. */
export function LessonBody({ file, frame }: { readonly file: LessonFile; readonly frame: LessonFrame }) {
  const { matter, words } = frame;
  const Text = file.default;
  return (
    <LessonContext.Provider value={frame}>
      <h1>{matter.title}</h1>
      <p class="patch lesson-question" data-ink="indigo" data-cut="2">
        {matter.question}
      </p>
      <Text components={lessonComponents} />
      <NewWords frame={frame} />
      <TeacherPart frame={frame} />
      <p class="caption">
        {matter.credits} {words.license}
      </p>
    </LessonContext.Provider>
  );
}
