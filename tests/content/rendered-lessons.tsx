import { renderToString } from 'preact-render-to-string';
import type { Language } from '../../src/language/language.ts';
import { languages } from '../../src/language/language.ts';
import { loadMessages } from '../../src/language/load-messages.ts';
import type { UnitSystem } from '../../src/language/unit-system.ts';
import { makeWords, WordsContext } from '../../src/language/words.ts';
import { LessonBody } from '../../src/pages/lessons/lesson-body.tsx';
import { type LessonFile, lessonNames, loadLesson } from '../../src/pages/lessons/lesson-file.ts';
import { lessonFrame } from '../../src/pages/lessons/lesson-frame.ts';
import { loadLessonWords } from '../../src/pages/lessons/lesson-words.ts';
import { loadGlossary } from '../../src/pages/lessons/load-glossary.ts';

/** A lesson of a language with the page it makes. */
export interface RenderedLesson {
  readonly name: string;
  readonly language: Language;
  readonly file: LessonFile;
  readonly html: string;
}

/** Renders a lesson with the real parts. @param still as the page without scripts has it */
export async function renderLesson(
  name: string,
  language: Language,
  still: boolean,
  unitSystem: UnitSystem = 'us',
): Promise<RenderedLesson> {
  const file = await loadLesson(language, name);
  if (!file) throw new Error(`no lesson ${name} in ${language}`);
  const frame = lessonFrame(name, file, await loadLessonWords(language), await loadGlossary(language), still);
  const words = makeWords(language, unitSystem, await loadMessages(language));
  const html = renderToString(
    <WordsContext.Provider value={words}>
      <LessonBody file={file} frame={frame} />
    </WordsContext.Provider>,
  );
  return { name, language, file, html };
}

/** Every lesson in every language, as the page without scripts shows it. */
export const allLessons = async (): Promise<readonly RenderedLesson[]> =>
  Promise.all(languages.flatMap((language) => lessonNames.map((name) => renderLesson(name, language, true))));
