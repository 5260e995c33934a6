import { useEffect, useState } from 'preact/hooks';
import type { Language } from '../../language/language.ts';
import type { trace } from '../../language/messages/en/trace.ts';

export type TraceWords = typeof trace;

/** The words of the trace in a language, fetched with the page that shows them. */
async function loadTraceWords(language: Language): Promise<TraceWords> {
  const loaded =
    language === 'es'
      ? await import('../../language/messages/es/trace.ts')
      : await import('../../language/messages/en/trace.ts');
  return loaded.trace;
}

/** The words, or null until they have come; those of the language before stay until then. */
export function useTraceWords(language: Language): TraceWords | null {
  const [words, setWords] = useState<TraceWords | null>(null);
  useEffect(() => {
    let left = false;
    void loadTraceWords(language).then((loaded) => {
      if (!left) setWords(loaded);
    });
    return () => {
      left = true;
    };
  }, [language]);
  return words;
}
