import { useEffect, useMemo } from 'preact/hooks';
import { useWords } from '../../../language/words.ts';
import { decodeRun } from '../../../statechart/saved-run.ts';
import { hashOf } from '../../route.ts';
import { HandoutsPage } from './handouts/handouts-page.tsx';
import { KeySheet } from './key-sheet.tsx';
import type { PaperPageId } from './paper-page-id.ts';
import type { SheetWords } from './question-text.ts';
import { RecapPage } from './recap/recap-page.tsx';
import { SetPage } from './set-page.tsx';
import { useSheetWords } from './use-sheet-words.ts';
import { Worksheet } from './worksheet.tsx';
import './sheets.css';

export interface PaperPageProps {
  readonly id: PaperPageId;
  /** The season of the plan that led here; empty for none. */
  readonly query: string;
}

/** Pages between which a class goes; the keys are not among them. */
const linked = ['sheets', 'handouts', 'recap'] as const;

function PaperLinks({ id, query, words: { page } }: PaperPageProps & { readonly words: SheetWords }) {
  return (
    <nav class="paper-links" aria-label={page.linksLabel}>
      {linked.map((each) => (
        <a key={each} href={hashOf({ page: 'paper', id: each, query })} aria-current={each === id ? 'page' : undefined}>
          {page.links[each]}
        </a>
      ))}
    </nav>
  );
}

/** What a teacher asks who has not been here before: a whole class at once, and where the answers are. */
function SheetHelps({ words: { page } }: { readonly words: SheetWords }) {
  return (
    <section class="sheet-helps" aria-labelledby="sheet-helps">
      <h2 id="sheet-helps">{page.help}</h2>
      <dl>
        {page.helps.map(({ ask, says }) => (
          <div key={ask}>
            <dt>{ask}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** What is printed for a class. The sheets do not lead to their keys: those have an address of their own. */
export default function PaperPage({ id, query }: PaperPageProps) {
  const run = useMemo(() => (query === '' ? null : decodeRun(query).run), [query]);
  const { language, messages } = useWords();
  const words = useSheetWords(language);
  useEffect(() => {
    window.scrollTo(0, 0);
    if (document.activeElement === document.body) document.getElementById('main')?.focus({ preventScroll: true });
  }, [id]);
  return (
    <main id="main" class="sheets-page" tabIndex={-1}>
      {words ? <PaperLinks id={id} query={query} words={words} /> : null}
      {words === null ? <p role="status">{messages.common.loading}</p> : null}
      {words && id === 'sheets' ? (
        <SetPage
          key={id}
          words={words}
          run={run}
          title={words.page.title}
          lead={words.page.lead}
          printing={words.page.printSheets}
          Sheet={Worksheet}
          forPupils
        >
          <SheetHelps words={words} />
        </SetPage>
      ) : null}
      {words && id === 'keys' ? (
        <SetPage
          key={id}
          words={words}
          run={run}
          title={words.page.keysTitle}
          lead={words.page.keysLead}
          printing={words.page.printKeys}
          Sheet={KeySheet}
          forPupils={false}
        />
      ) : null}
      {words && id === 'handouts' ? <HandoutsPage page={words.page} query={query} /> : null}
      {words && id === 'recap' ? <RecapPage page={words.page} /> : null}
    </main>
  );
}
