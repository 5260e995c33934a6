/** The languages every word on screen is kept in. */
export const languages = ['en', 'es'] as const;
export type Language = (typeof languages)[number];

const locales: Record<Language, string> = { en: 'en-US', es: 'es-US' };

/** The locale numbers, dates and lists are written in, and the value of the page's lang attribute. */
export const localeOf = (language: Language): string => locales[language];

/**
 * The language to open in.
 * @param preferred the reader's languages, best first, as navigator.languages gives them
 */
export function detectLanguage(preferred: readonly string[]): Language {
  for (const tag of preferred) {
    const base = tag.toLowerCase().split('-')[0];
    if (base === 'en' || base === 'es') return base;
  }
  return 'en';
}
