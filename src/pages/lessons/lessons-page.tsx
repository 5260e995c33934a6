import { useEffect } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { Route } from '../route.ts';
import { AuthorsPage } from './authors-page.tsx';
import { GlossaryPage } from './glossary-page.tsx';
import { LessonPage } from './lesson-page.tsx';
import { loadLessonWords } from './lesson-words.ts';
import { useLoaded } from './use-loaded.ts';
import '../text-page.css';
import './lessons.css';

export interface LessonsPageProps {
  readonly route: Extract<Route, { page: 'lessons' | 'glossary' }>;
}

/** Everything that is read: lessons, the glossary, the page for authors. */
export default function LessonsPage({ route }: LessonsPageProps) {
  const { language, messages } = useWords();
  const lessons = useLoaded(() => loadLessonWords(language), [language]);
  const { page, id } = route;
  // Whoever comes from another page of these begins at the top.
  useEffect(() => {
    if (page === 'lessons' || id === '') window.scrollTo(0, 0);
    if (document.activeElement === document.body) document.getElementById('main')?.focus({ preventScroll: true });
  }, [page, id]);
  return (
    <main id="main" class="text-page lessons-page" tabIndex={-1}>
      {lessons === null ? <p role="status">{messages.common.loading}</p> : null}
      {lessons && page === 'lessons' && id !== 'authors' ? <LessonPage name={id} lessons={lessons} /> : null}
      {lessons && page === 'lessons' && id === 'authors' ? <AuthorsPage lessons={lessons} /> : null}
      {lessons && page === 'glossary' ? <GlossaryPage id={id} lessons={lessons} /> : null}
    </main>
  );
}
