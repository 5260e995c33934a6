import type { Language } from '../../language/language.ts';
import type { LessonMatter } from '../../lessons/front-matter.ts';
import { lessonName } from './lesson-file.ts';

/** A lesson as the index shows it. */
export interface LessonCard {
  readonly name: string;
  readonly matter: LessonMatter;
}

/** All lessons of a language in the order of teaching. */
export async function loadLessonCards(language: Language): Promise<readonly LessonCard[]> {
  const { heads } = language === 'es' ? await import('./cards-es.ts') : await import('./cards-en.ts');
  return Object.entries(heads)
    .map(([path, matter]) => ({ name: lessonName(path), matter }))
    .sort((a, b) => a.matter.number - b.matter.number);
}
