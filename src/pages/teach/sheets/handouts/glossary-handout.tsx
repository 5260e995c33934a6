import type { HandoutWords } from './handout-words.ts';

/** Every term of the glossary, in the order of the alphabet. */
export function GlossaryHandout({ words: { own, glossary } }: { readonly words: HandoutWords }) {
  const entries = Object.entries(glossary).sort(([, a], [, b]) => a.term.localeCompare(b.term));
  return (
    <>
      <p>{own.glossary.lead}</p>
      <dl class="handout-glossary">
        {entries.map(([id, { term, says }]) => (
          <div key={id}>
            <dt>{term}</dt> <dd>{says}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
