import type { Language } from './language.ts';
import type { WorkingWords } from './messages/en/working-words.ts';

/** The words of the workings: many, and wanted only by a reader who opens one, so they are fetched then. */
export async function loadWorkingWords(language: Language): Promise<WorkingWords> {
  const { workingWords } =
    language === 'es' ? await import('./messages/es/working-words.ts') : await import('./messages/en/working-words.ts');
  return workingWords;
}
