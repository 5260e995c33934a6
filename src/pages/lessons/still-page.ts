import { type Language, languages, localeOf } from '../../language/language.ts';
import type { LessonWords } from './lesson-words.ts';

/** A page of the site that needs no script. */
export interface StillPage {
  /** From the site's folder. */
  readonly path: string;
  readonly html: string;
}

interface StillPageText {
  readonly language: Language;
  /** The file's name without its ending; the same in every language. */
  readonly name: string;
  readonly title: string;
  /** Markup of the main part. */
  readonly body: string;
  readonly styles: readonly string[];
  /** Hash of the same page in the app. */
  readonly live: string;
  readonly words: LessonWords;
  readonly languages: Readonly<Record<Language, string>>;
  readonly metadata?: object;
}

// As strict as the app's own, and stricter: nothing runs here.
const policy = [
  "default-src 'none'",
  "style-src 'self'",
  "img-src 'self'",
  "font-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** From lessons/<language>/ to the site's folder. */
const up = '../../';

/** The page around a still part: head, the way back, the other language, the live page. */
export function stillPage(page: StillPageText): string {
  const { language, name, title, body, styles, live, words, metadata } = page;
  const others = languages.filter((each) => each !== language);
  const data = metadata
    ? `<script type="application/ld+json">${JSON.stringify(metadata).replaceAll('<', '\\u003c')}</script>`
    : '';
  const otherLinks = others
    .map(
      (each) =>
        `<a href="../${each}/${name}.html" lang="${localeOf(each)}" hreflang="${localeOf(each)}">${page.languages[each]}</a>`,
    )
    .join(' ');
  return `<!doctype html>
<html lang="${localeOf(language)}" data-theme="day">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<title>${escaped(title)}</title>
<link rel="icon" href="${up}icons/seamfield.svg" type="image/svg+xml">
${styles.map((file) => `<link rel="stylesheet" href="${up}${file}">`).join('\n')}
${others.map((each) => `<link rel="alternate" hreflang="${localeOf(each)}" href="../${each}/${name}.html">`).join('\n')}
${data}
</head>
<body>
<header class="page-head">
<a class="brand" href="${up}index.html">${escaped(words.printed.home)}</a>
<nav class="still-way" aria-label="${escaped(words.title)}">
${name === 'index' ? '' : `<a href="index.html">${escaped(words.all)}</a>`}
${name === 'glossary' ? '' : `<a href="glossary.html">${escaped(words.glossary)}</a>`}
<a href="${up}index.html${live}">${escaped(words.printed.live)}</a>
${otherLinks}
</nav>
</header>
<main id="main" class="text-page lessons-page">
${body}
<p class="caption">${escaped(words.printed.model)}</p>
</main>
</body>
</html>
`;
}
