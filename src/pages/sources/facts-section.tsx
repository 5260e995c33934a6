import { useId, useMemo, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Mark } from '../../model/fact.ts';
import { allFacts, type ListedFact } from '../../model/fact-list.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { coverage, factCsv, findFacts, markOrder, spaced, usesOf } from './fact-rows.ts';
import { RowGroup } from './row-group.tsx';
import { saveCsv } from './save-csv.ts';
import { sourcesWords } from './sources-words.ts';

/** Every constant, to be searched, with the share of each mark above. */
export function FactsSection() {
  const { messages, language, formats } = useWords();
  const words = sourcesWords(language);
  const [asked, setAsked] = useState('');
  const [mark, setMark] = useState<Mark | 'all'>('all');
  const id = useId();
  const found = useMemo(() => findFacts(asked, mark === 'all' ? null : mark), [asked, mark]);
  const links = [...new Set(found.map(({ link }) => link))];
  const searching = asked.trim() !== '' || mark !== 'all';
  return (
    <section class="facts" aria-label={words.facts}>
      <h2>{words.coverage}</h2>
      <Coverage />
      <h2>{words.facts}</h2>
      <label class="control-label" for={id}>
        {words.find}
      </label>
      <input
        id={id}
        type="search"
        class="find"
        value={asked}
        onInput={(event) => setAsked(event.currentTarget.value)}
      />
      <ChoiceRow
        label={words.marks}
        options={[
          { value: 'all' as const, label: words.allMarks },
          ...markOrder.map((value) => ({ value, label: messages.marks.names[value] })),
        ]}
        value={mark}
        onChoose={setMark}
      />
      <p role="status">{found.length > 0 ? formats.plural(found.length, words.shown) : words.noneFound}</p>
      {links.map((link) => {
        const facts = found.filter((listed) => listed.link === link);
        return (
          <RowGroup
            key={link}
            className="fact-group"
            title={`${words.links[link]} (${formats.count(facts.length)})`}
            open={searching && found.length <= 60}
            rows={() => facts.map((listed) => <FactRow key={listed.name} listed={listed} />)}
          />
        );
      })}
      <PatchButton onPress={() => saveCsv('seamfield-constants.csv', factCsv())}>{words.saveFacts}</PatchButton>
    </section>
  );
}

/** A strip of cloth as wide as all constants, cut by mark; its table says the same. */
function Coverage() {
  const { messages, language, formats } = useWords();
  const words = sourcesWords(language);
  const facts = allFacts();
  const counts = coverage(facts);
  return (
    <>
      <div class="coverage" aria-hidden="true">
        {markOrder.map((mark) => (
          <i key={mark} data-mark={mark} style={{ flexGrow: counts.get(mark) ?? 0 }} />
        ))}
      </div>
      <ul class="coverage-list">
        {markOrder.map((mark) => {
          const count = counts.get(mark) ?? 0;
          return (
            <li key={mark} data-mark={mark}>
              <b>{messages.marks.names[mark]}</b>{' '}
              {fill(words.coverageOf, {
                count: formats.count(count),
                all: formats.count(facts.length),
                percent: formats.percent((100 * count) / facts.length, 0),
              })}
              . <span class="caption">{messages.marks.meaning[mark]}</span>
            </li>
          );
        })}
      </ul>
    </>
  );
}

function FactRow({ listed }: { readonly listed: ListedFact }) {
  const { messages, language } = useWords();
  const words = sourcesWords(language);
  const { name, fact } = listed;
  const uses = usesOf(listed);
  const number = (value: number) => String(value);
  return (
    <li class="fact-row" data-mark={fact.mark}>
      <p lang="en">
        <b>{spaced(name)}</b>: {number(fact.value)} {fact.unit}
        {fact.range ? ` (${fill(words.between, { low: number(fact.range[0]), high: number(fact.range[1]) })})` : ''}
      </p>
      <p>
        <i>{messages.marks.names[fact.mark]}</i>. <span lang="en">{fact.source}</span>
        {fact.note ? <span lang="en">. {fact.note}</span> : null}
      </p>
      <p class="caption">
        <code>{name}</code>
        {uses.length > 0 ? ` ${words.used}: ${uses.join(', ')}` : ''}
      </p>
    </li>
  );
}
