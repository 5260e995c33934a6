import { useMemo } from 'preact/hooks';
import type { Language } from '../../language/language.ts';
import { loadMessages } from '../../language/load-messages.ts';
import type { kiosk } from '../../language/messages/en/kiosk.ts';
import { makeWords, type Words } from '../../language/words.ts';
import { useLoaded } from '../lessons/use-loaded.ts';

export type KioskWords = typeof kiosk;

/** The words of a language that the kiosk needs, its own among them. */
export async function loadKioskWords(
  language: Language,
): Promise<{ readonly words: Words; readonly said: KioskWords }> {
  const [messages, { kiosk: said }] = await Promise.all([
    loadMessages(language),
    language === 'es' ? import('../../language/messages/es/kiosk.ts') : import('../../language/messages/en/kiosk.ts'),
  ]);
  // Inches throughout: patches are cut by them in both languages here.
  return { words: makeWords(language, 'us', messages), said };
}

/** The words, or null until they have come; those of the language before stay until then. */
export function useKioskWords(language: Language) {
  const loaded = useLoaded(() => loadKioskWords(language), [language]);
  return useMemo(() => loaded, [loaded]);
}
