import type { Language } from '../../../language/language.ts';
import { useLoaded } from '../../lessons/use-loaded.ts';
import type { SheetWords } from './question-text.ts';

/** The words of the sheets in a language, fetched with the page that shows them. */
async function loadSheetWords(language: Language): Promise<SheetWords> {
  const [{ sheetQuestions }, { sheets }] =
    language === 'es'
      ? await Promise.all([
          import('../../../language/messages/es/sheet-questions.ts'),
          import('../../../language/messages/es/sheets.ts'),
        ])
      : await Promise.all([
          import('../../../language/messages/en/sheet-questions.ts'),
          import('../../../language/messages/en/sheets.ts'),
        ]);
  return { questions: sheetQuestions, page: sheets };
}

/** The words, or null until they have come. */
export const useSheetWords = (language: Language): SheetWords | null =>
  useLoaded(() => loadSheetWords(language), [language]);
