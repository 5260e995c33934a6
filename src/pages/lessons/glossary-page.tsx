import { useEffect } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { Glossary, GlossaryEntry } from '../../lessons/glossary.ts';
import { hashOf } from '../route.ts';
import type { LessonWords } from './lesson-words.ts';
import { loadGlossary } from './load-glossary.ts';
import { useLoaded } from './use-loaded.ts';

/** Terms in the order of their language, under their first letters. */
export function byLetters(glossary: Glossary, locale: string): [letter: string, terms: [string, GlossaryEntry][]][] {
  const { compare } = new Intl.Collator(locale);
  const groups = new Map<string, [string, GlossaryEntry][]>();
  const sorted = Object.entries(glossary).sort(([, a], [, b]) => compare(a.term, b.term));
  for (const each of sorted) {
    const first = each[1].term[0]!.toLocaleUpperCase(locale);
    // An accent is no letter of its own; ñ is.
    const letter = first === 'Ñ' ? first : first.normalize('NFD')[0]!;
    groups.set(letter, [...(groups.get(letter) ?? []), each]);
  }
  return [...groups];
}

/** The terms of a glossary with their meanings. */
export function GlossaryList({ glossary, locale }: { readonly glossary: Glossary; readonly locale: string }) {
  return (
    <>
      {byLetters(glossary, locale).map(([letter, terms]) => (
        <section key={letter} aria-label={letter} class="glossary-letter">
          <h2>{letter}</h2>
          <dl>
            {terms.map(([id, { term, says, also }]) => (
              <div key={id} id={id}>
                <dt tabIndex={-1}>{term}</dt>
                <dd>
                  {says} {also ? <i>{also}</i> : null}
                </dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </>
  );
}

/** The glossary; the term of the address is brought into view and focused. */
export function GlossaryPage({ id, lessons }: { readonly id: string; readonly lessons: LessonWords }) {
  const { language, messages } = useWords();
  const glossary = useLoaded(() => loadGlossary(language), [language]);
  useEffect(() => {
    document.title = `${lessons.glossary}: ${messages.common.product}`;
  }, [lessons, messages]);
  useEffect(() => {
    const place = glossary && id !== '' ? document.getElementById(id) : null;
    place?.scrollIntoView({ block: 'center' });
    place?.querySelector<HTMLElement>('dt')?.focus({ preventScroll: true });
  }, [glossary, id]);
  return (
    <>
      <p class="lesson-way">
        <a href={hashOf({ page: 'lessons', id: '' })}>{lessons.all}</a>
      </p>
      <h1>{lessons.glossary}</h1>
      <p class="lesson-lead">{lessons.glossaryLead}</p>
      {glossary ? (
        <GlossaryList glossary={glossary} locale={language} />
      ) : (
        <p role="status">{messages.common.loading}</p>
      )}
    </>
  );
}
