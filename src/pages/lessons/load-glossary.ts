import type { Language } from '../../language/language.ts';
import type { Glossary } from '../../lessons/glossary.ts';

/** Every term of a language by its id. */
export async function loadGlossary(language: Language): Promise<Glossary> {
  const { areas } = language === 'es' ? await import('./glossary-es.ts') : await import('./glossary-en.ts');
  return Object.assign({}, ...Object.values(areas));
}
