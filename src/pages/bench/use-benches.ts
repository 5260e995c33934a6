import { useEffect, useMemo, useState } from 'preact/hooks';
import { type BenchQuestionId, benchQuestionIds, benchQuestionOf } from '../../compare/bench-questions.ts';
import { fibreOfSetUp, type WorkedBench, workBench } from '../../model/bench/work-bench.ts';
import { type BenchSide, decodeBench, encodeBench, type SavedBench } from '../../statechart/saved-bench.ts';
import { type AllReadings, allReadings } from '../../workings/bench/all-readings.ts';
import { hashOf, readRoute } from '../route.ts';

/** One side of the page: its set-up worked out, and its figures. */
export interface BenchView {
  readonly bench: WorkedBench;
  readonly readings: AllReadings;
}

function useView(saved: SavedBench, side: BenchSide): BenchView {
  const setUp = saved[side];
  return useMemo(() => {
    const bench = workBench(setUp);
    return { bench, readings: allReadings(bench) };
  }, [setUp]);
}

const askOf = (query: string): BenchQuestionId | null =>
  benchQuestionIds.find((id) => id === new URLSearchParams(query).get('ask')) ?? null;

/** What a link opens. One that only asks a question opens the benches that answer it. */
function openLink(query: string) {
  const ask = askOf(query);
  const decoded = decodeBench(query);
  if (!ask || /(^|&)[ab]\./.test(query)) return { ...decoded, ask };
  const { a, b } = benchQuestionOf[ask];
  return { ...decoded, saved: { a, b }, ask };
}

/** Both benches, the question that is open, and the address that holds them. */
export function useBenches(query: string) {
  const [opened, setOpened] = useState(() => openLink(query));
  const { saved, ask, problems } = opened;
  const now = `${encodeBench(saved)}${ask ? `&ask=${ask}` : ''}`;
  // A link that is followed takes the place of what is on the benches, even the one that was followed last.
  useEffect(() => {
    const follow = () => {
      const { route } = readRoute(location.hash);
      if (route.page === 'bench') setOpened(openLink(route.query));
    };
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  // The address follows every change, without a step of the history for each.
  useEffect(() => {
    const hash = hashOf({ page: 'bench', query: now });
    if (location.hash !== hash) history.replaceState(history.state, '', hash);
  }, [now]);
  const view = { a: useView(saved, 'a'), b: useView(saved, 'b') };
  return {
    saved,
    ask,
    problems,
    view,
    link: `${location.href.split('#')[0]}${hashOf({ page: 'bench', query: now })}`,
    change: (some: Partial<SavedBench>) => {
      // The fibers are worked out, and kept, before the page is drawn anew: each in a task of its own.
      for (const setUp of Object.values(some)) fibreOfSetUp(setUp);
      setTimeout(() => setOpened((before) => ({ ...before, saved: { ...before.saved, ...some } })));
    },
    open: (next: SavedBench, question: BenchQuestionId | null) =>
      setOpened({ saved: next, problems: [], ask: question }),
  };
}
