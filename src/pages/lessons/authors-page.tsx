import { useEffect } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { computedIds } from '../../lessons/computed/all-computed.ts';
import { lessonSchema } from '../../lessons/front-matter.ts';
import { figureDocs } from './figures/all-figures.ts';
import type { LessonWords } from './lesson-words.ts';
import { loadGlossary } from './load-glossary.ts';
import { numberText } from './number-text.ts';
import { computedNumber } from './parts/num.tsx';
import { useLoaded } from './use-loaded.ts';

/** What lesson files hold and what figures take, read off the parts themselves. */
export function AuthorsPage({ lessons }: { readonly lessons: LessonWords }) {
  const words = useWords();
  const { language, messages } = words;
  const glossary = useLoaded(() => loadGlossary(language), [language]);
  const said = lessons.authors;
  useEffect(() => {
    document.title = `${said.title}: ${messages.common.product}`;
  }, [said, messages]);
  return (
    <>
      <h1>{said.title}</h1>
      <p class="lesson-lead">{said.lead}</p>
      <h2>{said.head}</h2>
      <dl class="author-list">
        {Object.keys(lessonSchema.entries).map((field) => (
          <div key={field}>
            <dt>
              <code>{field}</code>
            </dt>
            <dd>{said.fields[field]}</dd>
          </div>
        ))}
      </dl>
      <h2>{said.parts}</h2>
      <dl class="author-list">
        {Object.entries(said.usage).map(([example, says]) => (
          <div key={example}>
            <dt>
              <code>{example}</code>
            </dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      <h2>{said.figures}</h2>
      {figureDocs.map(({ name, words: key, options }) => (
        <section key={name} class="author-figure">
          <h3>
            <code>{`<${name} />`}</code> {lessons.figures.titles[key]}
          </h3>
          {options.map((option) => (
            <p key={option.name}>
              {said.option} <code>{option.name}</code>. {said.values}: <code>{option.values.join(', ')}</code>.{' '}
              {said.usual}: <code>{option.usual}</code>.
            </p>
          ))}
        </section>
      ))}
      <h2>{said.numbers}</h2>
      <dl class="author-list">
        {computedIds.map((id) => (
          <div key={id}>
            <dt>
              <code>{id}</code>
            </dt>
            <dd>
              {said.now}: {numberText(computedNumber(id), words, lessons).text}. {lessons.computed[id]}
            </dd>
          </div>
        ))}
      </dl>
      <h2>{said.terms}</h2>
      <dl class="author-list">
        {Object.entries(glossary ?? {}).map(([id, { term }]) => (
          <div key={id}>
            <dt>
              <code>{id}</code>
            </dt>
            <dd>{term}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
