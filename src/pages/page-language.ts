import { type Language, localeOf } from '../language/language.ts';

/**
 * Says which language the page is in. The root's own letters take part in no language's rules, the body's do: where the root's
 * font changes, every length in `ch` may be another, and the browser styles, lays out and paints all of the page in one task.
 */
export function setPageLanguage(language: Language): void {
  const { documentElement: root, body } = document;
  root.style.setProperty('-webkit-locale', 'auto');
  root.lang = localeOf(language);
  body.lang = root.lang;
}
