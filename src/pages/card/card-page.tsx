import { useEffect, useMemo } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { runSeason } from '../../model/chain.ts';
import { ElsewhereNotes } from '../farm/elsewhere-notes.tsx';
import { openRun } from '../farm/open-run.ts';
import type { Theme } from '../preferences.ts';
import { FinishedQuilt } from '../season/finished-quilt.tsx';
import { cardWords } from './card-words.ts';

export interface CardPageProps {
  /** The query of the season's link. */
  readonly query: string;
  readonly theme: Theme;
}

/** A season on one page. */
export default function CardPage({ query, theme }: CardPageProps) {
  const { messages, language } = useWords();
  const words = cardWords(language);
  const opened = useMemo(() => openRun(query), [query]);
  const season = useMemo(() => runSeason(opened.run.scenario, opened.run.seed, opened.weather?.year ?? null), [opened]);
  const { product } = messages.common;
  useEffect(() => {
    document.title = `${words.title}: ${product}`;
  }, [words, product]);
  return (
    <main id="main" class="card-page" tabIndex={-1}>
      <h1>{words.title}</h1>
      <ElsewhereNotes opened={opened} />
      <FinishedQuilt season={season} theme={theme} query={query} />
    </main>
  );
}
