import { useEffect } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { hashOf } from '../route.ts';
import { LessonBody } from './lesson-body.tsx';
import { loadLessonCards } from './lesson-cards.ts';
import { loadLesson } from './lesson-file.ts';
import { lessonFrame } from './lesson-frame.ts';
import { LessonIndex } from './lesson-index.tsx';
import type { LessonWords } from './lesson-words.ts';
import { loadGlossary } from './load-glossary.ts';
import { useLoaded } from './use-loaded.ts';

interface LessonPageProps {
  readonly name: string;
  readonly lessons: LessonWords;
}

function OneLesson({ name, lessons }: LessonPageProps) {
  const { language, messages } = useWords();
  const loaded = useLoaded(
    async () => ({ file: await loadLesson(language, name), glossary: await loadGlossary(language) }),
    [language, name],
  );
  const title = loaded?.file?.frontmatter.title;
  useEffect(() => {
    if (title) document.title = `${title}: ${messages.common.product}`;
  }, [title, messages]);
  if (!loaded) return <p role="status">{messages.common.loading}</p>;
  if (!loaded.file) return <Index name={name} lessons={lessons} />;
  const { file, glossary } = loaded;
  return (
    <>
      <p class="lesson-way">
        <a href={hashOf({ page: 'lessons', id: '' })}>{lessons.all}</a>
      </p>
      <LessonBody key={language} file={file} frame={lessonFrame(name, file, lessons, glossary, false)} />
    </>
  );
}

function Index({ name, lessons }: LessonPageProps) {
  const { language, messages } = useWords();
  const cards = useLoaded(() => loadLessonCards(language), [language]);
  useEffect(() => {
    document.title = `${lessons.title}: ${messages.common.product}`;
  }, [lessons, messages]);
  return (
    <>
      <h1>{lessons.title}</h1>
      {name === '' ? (
        <p class="lesson-lead">{lessons.lead}</p>
      ) : (
        <p role="status">
          <code>{name.slice(0, 40)}</code>: {lessons.unknown}
        </p>
      )}
      {cards ? <LessonIndex cards={cards} lessons={lessons} /> : <p role="status">{messages.common.loading}</p>}
    </>
  );
}

/** The index of lessons, or one of them. */
export function LessonPage({ name, lessons }: LessonPageProps) {
  return name === '' ? <Index name="" lessons={lessons} /> : <OneLesson key={name} name={name} lessons={lessons} />;
}
