import { useEffect } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { OneWorkingOpen } from '../../ui/open-working.tsx';
import { laterPage } from '../later-page.tsx';
import type { Route } from '../route.ts';
import { ClassPage } from './class-page.tsx';
import { JoinPage } from './join-page.tsx';
import { Planner } from './planner.tsx';
import { type TeachWords, useTeachWords } from './use-teach-words.ts';
import './teach.css';

/** Pages that draw scenes, fetched when they are opened. */
const ShowPage = laterPage(() => import('./show/show-page.tsx'));
const NotesPage = laterPage(() => import('./show/notes-page.tsx'));
const GuildPage = laterPage(() => import('./guild/guild-page.tsx'));

export interface TeachPageProps {
  readonly route: Extract<Route, { page: 'teach' }>;
}

/** The page of an address; an unknown part opens the planner. */
function partOf({ id, query }: TeachPageProps['route'], teach: TeachWords) {
  if (id === 'class') return <ClassPage query={query} teach={teach} />;
  if (id === 'join') return <JoinPage query={query} teach={teach} />;
  return <Planner query={query} teach={teach} />;
}

/** The teacher's pages: the plan of a segment, the class link, and the show with its notes. */
export default function TeachPage({ route }: TeachPageProps) {
  const { language, messages } = useWords();
  const teach = useTeachWords(language);
  const { product } = messages.common;
  const Later = route.id === 'show' ? ShowPage : route.id === 'notes' ? NotesPage : null;
  const own = Later !== null || route.id === 'guild';
  useEffect(() => {
    if (teach && !own) document.title = `${teach.said.title}: ${product}`;
  }, [teach, product, own]);
  if (route.id === 'guild') return <GuildPage query={route.query} />;
  if (teach && Later) return <Later query={route.query} teach={teach} />;
  return (
    <OneWorkingOpen>
      <main id="main" class="teach-page columns-page" tabIndex={-1}>
        {teach ? partOf(route, teach) : <p role="status">{messages.common.loading}</p>}
      </main>
    </OneWorkingOpen>
  );
}
