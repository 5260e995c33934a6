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

/** The way between pages: a row of links; on a phone one button that unfolds them. */
export function Navigation<Page extends PageId>({ pages, current, hrefOf }: NavigationProps<Page>) {
  const { messages } = useWords();
  const { navigation: words } = messages;
  const narrow = useNarrow();
  const [open, setOpen] = useState(false);
  const id = useId();
  useEffect(() => setOpen(false), [current]);
  return (
    <nav class="navigation" aria-label={words.label}>
      {narrow ? (
        <button
          type="button"
          class="navigation-fold"
          aria-expanded={open}
          aria-controls={id}
          onClick={() => setOpen(!open)}
          onKeyDown={(event) => {
            if (event.key === 'Escape') setOpen(false);
          }}
        >
          <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
            <path d="M2 5h4M8.5 5h4M15 5h3M2 10h4M8.5 10h4M15 10h3M2 15h4M8.5 15h4M15 15h3" />
          </svg>
          {words.menu}
        </button>
      ) : null}
      <ul id={id} hidden={narrow && !open}>
        {pages.map((page) => (
          <li key={page}>
            <a href={hrefOf(page)} aria-current={page === current ? 'page' : undefined} onClick={() => setOpen(false)}>
              {words.pages[page]}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
