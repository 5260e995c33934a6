import { useId, useMemo, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Mark } from '../../model/fact.ts';
import type { ListedFact, ListedTable } from '../../model/fact-list.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { Coverage } from './coverage.tsx';
import { factCsv, findFacts, findTables, markOrder, spaced, usesOf } from './fact-rows.ts';
import { RowGroup } from './row-group.tsx';
import { saveCsv } from './save-csv.ts';
import { sourcesWords } from './sources-words.ts';

/** Every constant and table, to be searched, with the share of each mark above. */
export function FactsSection() {
  const { messages, language, formats } = useWords();
  const words = sourcesWords(language);
  const [asked, setAsked] = useState('');
  const [mark, setMark] = useState<Mark | 'all'>('all');
  const id = useId();
  const found = useMemo(() => findFacts(asked, mark === 'all' ? null : mark), [asked, mark]);
  const tables = useMemo(() => findTables(asked, mark === 'all' ? null : mark), [asked, mark]);
  const shown = [...found, ...tables];
  const links = [...new Set(shown.map(({ link }) => link))];
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
      <p role="status">
        {shown.length > 0
          ? `${formats.plural(found.length, words.shown)}, ${formats.plural(tables.length, words.tables)}`
          : words.noneFound}
      </p>
      {links.map((link) => {
        const facts = found.filter((listed) => listed.link === link);
        const linkTables = tables.filter((listed) => listed.link === link);
        return (
          <RowGroup
            key={link}
            className="fact-group"
            title={`${words.links[link]} (${formats.count(facts.length + linkTables.length)})`}
            open={searching && shown.length <= 60}
            rows={() => [
              ...facts.map((listed) => <FactRow key={listed.name} listed={listed} />),
              ...linkTables.map((listed) => <TableRow key={listed.name} listed={listed} />),
            ]}
          />
        );
      })}
      <PatchButton onPress={() => saveCsv('seamfield-constants.csv', factCsv())}>{words.saveFacts}</PatchButton>
    </section>
  );
}

function FactRow({ listed }: { readonly listed: ListedFact }) {
  const words = sourcesWords(useWords().language);
  const { name, fact } = listed;
  const uses = usesOf(listed);
  const number = (value: number) => String(value);
  return (
    <li class="fact-row" data-mark={fact.mark}>
      <p lang="en">
        <b>{spaced(name)}</b>: {number(fact.value)} {fact.unit}
        {fact.range ? ` (${fill(words.between, { low: number(fact.range[0]), high: number(fact.range[1]) })})` : ''}
      </p>
      <Cited {...fact} />
      <p class="caption">
        <code>{name}</code>
        {uses.length > 0 ? ` ${words.used}: ${uses.join(', ')}` : ''}
      </p>
    </li>
  );
}

/** A table stands in its file; here is what it rests on. */
function TableRow({ listed: { name, table } }: { readonly listed: ListedTable }) {
  const words = sourcesWords(useWords().language);
  return (
    <li class="fact-row" data-mark={table.mark}>
      <p>
        <b lang="en">{spaced(name)}</b>: {words.table}
        {table.unit ? <span lang="en">, {table.unit}</span> : null}
      </p>
      <Cited {...table} />
      <p class="caption">
        <code>{name}</code>
      </p>
    </li>
  );
}

/** The mark, the source and what there is to say about it. */
function Cited({ mark, source, note }: ListedTable['table']) {
  return (
    <p>
      <i>{useWords().messages.marks.names[mark]}</i>. <span lang="en">{source}</span>
      {note ? <span lang="en">. {note}</span> : null}
    </p>
  );
}
