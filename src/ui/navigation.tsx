import { useEffect, useId, useState } from 'preact/hooks';
import type { Messages } from '../language/messages/en.ts';
import { useWords } from '../language/words.ts';
import { useNarrow } from './use-narrow.ts';

/** The pages there are. */
type PageId = keyof Messages['navigation']['pages'];

export interface NavigationProps<Page extends PageId> {
  /** The pages that exist so far, in order. */
  readonly pages: readonly Page[];
  /** The page shown; null on the first view. */
  readonly current: PageId | null;
  /** The address of a page, such as '#/bench'. */
  readonly hrefOf: (page: Page) => string;
}

/** How many links stand in the row where it has no room for all. */
const inRow = 5;

/** The way between pages: a row of links; those that the window has no room for unfold from a button. */
export function Navigation<Page extends PageId>({ pages, current, hrefOf }: NavigationProps<Page>) {
  const { messages } = useWords();
  const { navigation: words } = messages;
  const about: Partial<Record<PageId, string>> = words.about;
  const narrow = useNarrow('(max-width: 72rem)');
  const tight = useNarrow('(max-width: 100rem)');
  const [open, setOpen] = useState(false);
  const id = useId();
  useEffect(() => setOpen(false), [current]);
  const count = narrow ? 0 : tight ? inRow : pages.length;
  const folded = pages.slice(count);
  const linkTo = (page: Page, isFolded: boolean) => (
    <li key={page}>
      <a href={hrefOf(page)} aria-current={page === current ? 'page' : undefined} onClick={() => setOpen(false)}>
        {words.pages[page]}
        {isFolded && about[page] ? <small>{about[page]}</small> : null}
      </a>
    </li>
  );
  return (
    <nav
      class="navigation"
      aria-label={words.label}
      onKeyDown={(event) => {
        if (event.key === 'Escape') setOpen(false);
      }}
    >
      {count > 0 ? <ul>{pages.slice(0, count).map((page) => linkTo(page, false))}</ul> : null}
      {folded.length > 0 ? (
        <div class="navigation-more">
          <button
            type="button"
            class="navigation-fold"
            data-here={folded.some((page) => page === current) || undefined}
            aria-expanded={open}
            aria-controls={id}
            onClick={() => setOpen(!open)}
          >
            <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
              <path d="M2 5h4M8.5 5h4M15 5h3M2 10h4M8.5 10h4M15 10h3M2 15h4M8.5 15h4M15 15h3" />
            </svg>
            {narrow ? words.menu : words.more}
          </button>
          <ul id={id} class="navigation-folded" hidden={!open}>
            {folded.map((page) => linkTo(page, true))}
          </ul>
        </div>
      ) : null}
    </nav>
  );
}
