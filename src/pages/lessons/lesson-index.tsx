import { useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { variants } from '../../lessons/front-matter.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { hashOf } from '../route.ts';
import type { LessonCard } from './lesson-cards.ts';
import { LessonContext, lessonFrame } from './lesson-frame.ts';
import type { LessonWords } from './lesson-words.ts';
import { Said } from './parts/said.tsx';

const paths = ['quilter', 'teacher', 'minute'] as const;
type Path = (typeof paths)[number];

const noParts = { components: [], facts: [], computed: [], terms: [] };

/** One lesson on the way that was chosen: its question, its minutes and standards, or its one-minute version. */
function Entry({
  card,
  path,
  lessons,
}: {
  readonly card: LessonCard;
  readonly path: Path;
  readonly lessons: LessonWords;
}) {
  const { formats } = useWords();
  const { name, matter } = card;
  const title = (
    <a href={hashOf({ page: 'lessons', id: name })}>{path === 'quilter' ? matter.question : matter.title}</a>
  );
  return (
    <li class="lesson-entry">
      <h2>{title}</h2>
      {path === 'quilter' ? <p>{matter.title}</p> : null}
      {path === 'teacher' ? (
        <>
          <p>{variants.map((variant) => formats.plural(matter.minutes[variant], lessons.minutes)).join(' · ')}</p>
          <p class="caption">{matter.standards.map((code) => `${code}: ${lessons.standardsSay[code]}`).join('; ')}</p>
        </>
      ) : null}
      {path === 'minute' ? (
        <LessonContext.Provider value={lessonFrame(name, { frontmatter: matter, parts: noParts }, lessons, {}, false)}>
          {matter.minute.map((screen) => (
            <p key={screen}>
              <Said text={screen} />
            </p>
          ))}
        </LessonContext.Provider>
      ) : null}
    </li>
  );
}

/** All lessons, by the way the reader comes: a question, a class to fill, or one minute. */
export function LessonIndex({
  cards,
  lessons,
}: {
  readonly cards: readonly LessonCard[];
  readonly lessons: LessonWords;
}) {
  const [path, setPath] = useState<Path>('quilter');
  return (
    <>
      <ChoiceRow
        label={lessons.paths[path].lead}
        options={paths.map((value) => ({ value, label: lessons.paths[value].title }))}
        value={path}
        onChoose={setPath}
      />
      <ol class="lesson-list">
        {cards.map((card) => (
          <Entry key={card.name} card={card} path={path} lessons={lessons} />
        ))}
      </ol>
      <p>
        <a href={hashOf({ page: 'glossary', id: '' })}>{lessons.glossary}</a>
      </p>
    </>
  );
}
