import type { Language } from '../../language/language.ts';
import type { benchQuestions } from '../../language/messages/en/bench-questions.ts';
import type { predict } from '../../language/messages/en/predict.ts';
import type { teach } from '../../language/messages/en/teach.ts';
import type { AskWords } from '../ask/use-ask-words.ts';
import { useLoaded } from '../lessons/use-loaded.ts';

/** The words of the teacher's pages, and of the pages a plan leads to. */
export interface TeachWords {
  readonly said: typeof teach;
  readonly asked: AskWords;
  readonly bench: typeof benchQuestions;
  readonly predict: typeof predict;
}

/** Every word of a language that a plan needs, fetched with the page that shows it. */
export async function loadTeachWords(language: Language): Promise<TeachWords> {
  const [said, asked, bench, predict] =
    language === 'es'
      ? await Promise.all([
          import('../../language/messages/es/teach.ts'),
          import('../../language/messages/es/ask.ts'),
          import('../../language/messages/es/bench-questions.ts'),
          import('../../language/messages/es/predict.ts'),
        ])
      : await Promise.all([
          import('../../language/messages/en/teach.ts'),
          import('../../language/messages/en/ask.ts'),
          import('../../language/messages/en/bench-questions.ts'),
          import('../../language/messages/en/predict.ts'),
        ]);
  return { said: said.teach, asked: asked.ask, bench: bench.benchQuestions, predict: predict.predict };
}

/** The words, or null until they have come; those of the language before stay until then. */
export const useTeachWords = (language: Language): TeachWords | null =>
  useLoaded(() => loadTeachWords(language), [language]);
