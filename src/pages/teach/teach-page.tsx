import { useEffect } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { OneWorkingOpen } from '../../ui/open-working.tsx';
import type { Route } from '../route.ts';
import { ClassPage } from './class-page.tsx';
import { JoinPage } from './join-page.tsx';
import { Planner } from './planner.tsx';
import { type TeachWords, useTeachWords } from './use-teach-words.ts';
import './teach.css';

export interface TeachPageProps {
  readonly route: Extract<Route, { page: 'teach' }>;
}

/** The page of an address; an unknown part opens the planner. */
function partOf({ id, query }: TeachPageProps['route'], teach: TeachWords) {
  if (id === 'class') return <ClassPage query={query} teach={teach} />;
  if (id === 'join') return <JoinPage query={query} teach={teach} />;
  return <Planner query={query} teach={teach} />;
}

/** The teacher's pages: the plan of a segment, and the class link. */
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
        {teach ? partOf(route, teach) : <p role="status">{messages.common.loading}</p>}
      </main>
    </OneWorkingOpen>
  );
}
