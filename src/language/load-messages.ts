import type { Language } from './language.ts';
import { en, type Messages } from './messages/en.ts';

/** The words of a language. English is always at hand; Spanish is fetched when first asked for. */
export async function loadMessages(language: Language): Promise<Messages> {
  if (language === 'en') return en;
  const { es } = await import('./messages/es.ts');
  return es;
}
