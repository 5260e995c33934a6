import { useEffect } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { OneWorkingOpen } from '../../ui/open-working.tsx';
import type { Theme } from '../preferences.ts';
import type { Route } from '../route.ts';
import { Planner } from './planner.tsx';
import { useTeachWords } from './use-teach-words.ts';
import './teach.css';

export interface TeachPageProps {
  readonly route: Extract<Route, { page: 'teach' }>;
  readonly theme: Theme;
}

/** The teacher's pages: the plan of a segment. */
export default function TeachPage({ route }: TeachPageProps) {
  const { language, messages } = useWords();
  const teach = useTeachWords(language);
  const { product } = messages.common;
  useEffect(() => {
    if (teach) document.title = `${teach.said.title}: ${product}`;
  }, [teach, product]);
  return (
    <OneWorkingOpen>
      <main id="main" class="teach-page" tabIndex={-1}>
        {teach ? <Planner query={route.query} teach={teach} /> : <p role="status">{messages.common.loading}</p>}
      </main>
    </OneWorkingOpen>
  );
}
