import { useEffect, useState } from 'preact/hooks';
import type { Language } from '../../language/language.ts';
import type { ask } from '../../language/messages/en/ask.ts';

export type AskWords = typeof ask;

/** The words of the prepared questions in a language, fetched with the page that shows them. */
async function loadAskWords(language: Language): Promise<AskWords> {
  const loaded =
    language === 'es'
      ? await import('../../language/messages/es/ask.ts')
      : await import('../../language/messages/en/ask.ts');
  return loaded.ask;
}

/** The words, or null until they have come; those of the language before stay until then. */
export function useAskWords(language: Language): AskWords | null {
  const [words, setWords] = useState<AskWords | null>(null);
  useEffect(() => {
    let left = false;
    void loadAskWords(language).then((loaded) => {
      if (!left) setWords(loaded);
    });
    return () => {
      left = true;
    };
  }, [language]);
  return words;
}
