import type { ComponentChild } from 'preact';
import { renderToStaticMarkup } from 'preact-render-to-string';
import { type Language, languages, localeOf } from '../../language/language.ts';
import { loadMessages } from '../../language/load-messages.ts';
import { makeWords, type Words, WordsContext } from '../../language/words.ts';
import { hashOf } from '../route.ts';
import { GlossaryList } from './glossary-page.tsx';
import { LessonBody } from './lesson-body.tsx';
import { loadLessonCards } from './lesson-cards.ts';
import { loadLesson } from './lesson-file.ts';
import { lessonFrame } from './lesson-frame.ts';
import { lessonMetadata } from './lesson-metadata.ts';
import { type LessonWords, loadLessonWords } from './lesson-words.ts';
import { loadGlossary } from './load-glossary.ts';
import { type StillPage, stillPage } from './still-page.ts';

/** What the pages of one language share. */
interface Shared {
  readonly language: Language;
  readonly words: Words;
  readonly lessons: LessonWords;
  readonly styles: readonly string[];
}

const markup = ({ words }: Shared, part: ComponentChild): string =>
  renderToStaticMarkup(<WordsContext.Provider value={words}>{part}</WordsContext.Provider>);

/** One page: its part inside the frame that every still page has. */
function page(shared: Shared, name: string, title: string, part: ComponentChild, metadata?: object): StillPage {
  const { language, lessons, styles, words } = shared;
  const live =
    name === 'index'
      ? hashOf({ page: 'lessons', id: '' })
      : hashOf({ page: name === 'glossary' ? 'glossary' : 'lessons', id: name === 'glossary' ? '' : name });
  return {
    path: `lessons/${language}/${name}.html`,
    html: stillPage({
      language,
      name,
      title: `${title}: ${words.messages.common.product}`,
      body: markup(shared, part),
      styles,
      live,
      words: lessons,
      languages: words.messages.common.languages,
      ...(metadata ? { metadata } : {}),
    }),
  };
}

async function pagesOf(language: Language, styles: readonly string[]): Promise<StillPage[]> {
  const lessons = await loadLessonWords(language);
  const words = makeWords(language, 'us', await loadMessages(language));
  const glossary = await loadGlossary(language);
  const cards = await loadLessonCards(language);
  const shared = { language, words, lessons, styles };
  const each = await Promise.all(
    cards.map(async ({ name, matter }) => {
      const file = (await loadLesson(language, name))!;
      const frame = lessonFrame(name, file, lessons, glossary, true);
      return page(
        shared,
        name,
        matter.title,
        <LessonBody file={file} frame={frame} />,
        lessonMetadata(language, matter),
      );
    }),
  );
  const index = (
    <>
      <h1>{lessons.title}</h1>
      <p class="lesson-lead">{lessons.lead}</p>
      <ol class="lesson-list">
        {cards.map(({ name, matter }) => (
          <li key={name} class="lesson-entry">
            <h2>
              <a href={`${name}.html`}>{matter.title}</a>
            </h2>
            <p>{matter.question}</p>
          </li>
        ))}
      </ol>
    </>
  );
  const terms = (
    <>
      <h1>{lessons.glossary}</h1>
      <p class="lesson-lead">{lessons.glossaryLead}</p>
      <GlossaryList glossary={glossary} locale={localeOf(language)} />
    </>
  );
  return [...each, page(shared, 'index', lessons.title, index), page(shared, 'glossary', lessons.glossary, terms)];
}

/**
 * Every lesson, the index and the glossary of every language as pages without scripts.
 * @param styles style sheets by their paths from the site's folder
 */
export async function stillPages(styles: readonly string[]): Promise<readonly StillPage[]> {
  const all = await Promise.all(languages.map((language) => pagesOf(language, styles)));
  return all.flat();
}
