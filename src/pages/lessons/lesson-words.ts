import type { Language } from '../../language/language.ts';
import type { lessons } from '../../language/messages/en/lessons.ts';

export type LessonWords = typeof lessons;

/** The words of the lesson pages in a language, fetched with the page that shows them. */
export async function loadLessonWords(language: Language): Promise<LessonWords> {
  const loaded =
    language === 'es'
      ? await import('../../language/messages/es/lessons.ts')
      : await import('../../language/messages/en/lessons.ts');
  return loaded.lessons;
}
