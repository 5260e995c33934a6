import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { allFacts, allTables } from '../../model/fact-list.ts';
import { coverage, markOrder } from './fact-rows.ts';
import { sourcesWords } from './sources-words.ts';

/** A strip of cloth as wide as all constants, cut by mark; the list says the same, and how many tables bear each mark. */
export function Coverage() {
  const { messages, language, formats } = useWords();
  const words = sourcesWords(language);
  const facts = coverage(allFacts().map(({ fact }) => fact));
  const tables = coverage(allTables().map(({ table }) => table));
  return (
    <>
      <div class="coverage" aria-hidden="true">
        {markOrder.map((mark) => (
          <i key={mark} data-mark={mark} style={{ flexGrow: facts.counts[mark] }} />
        ))}
      </div>
      <ul class="coverage-list">
        {markOrder.map((mark) => (
          <li key={mark} data-mark={mark}>
            <b>{messages.marks.names[mark]}</b>{' '}
            {fill(words.coverageOf, {
              count: formats.count(facts.counts[mark]),
              all: formats.count(facts.all),
              percent: formats.percent((100 * facts.counts[mark]) / facts.all, 0),
              tables: formats.count(tables.counts[mark]),
              allTables: formats.count(tables.all),
            })}
            . <span class="caption">{messages.marks.meaning[mark]}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
