import { useEffect, useMemo } from 'preact/hooks';
import { sameFarm } from '../../compare/changed-land.ts';
import type { Run } from '../../compare/what-made-the-difference.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { runSeason } from '../../model/chain.ts';
import { encodeComparison, runQueries } from '../../statechart/saved-comparison.ts';
import { encodeRun, type SavedRun } from '../../statechart/saved-run.ts';
import { OneWorkingOpen, useWorkingClosesOn } from '../../ui/open-working.tsx';
import { ElsewhereNotes } from '../farm/elsewhere-notes.tsx';
import { farmWords } from '../farm/farm-words.ts';
import { type OpenedRun, openRun } from '../farm/open-run.ts';
import type { Preferences } from '../preferences.ts';
import { hashOf, type Route } from '../route.ts';
import { ArraysBeside } from './arrays-beside.tsx';
import { BandsBeside } from './bands-beside.tsx';
import { compareWords } from './compare-words.ts';
import { DecisionsBeside } from './decisions-beside.tsx';
import { DifferencesTold } from './differences-told.tsx';
import { SideNamesContext } from './side-names.ts';
import { TakenApart } from './taken-apart.tsx';
import { useSeasons } from './use-seasons.ts';
import '../season/workings.css';
import './compare.css';

export interface ComparePageProps {
  readonly route: Extract<Route, { page: 'compare' }>;
  readonly preferences: Preferences;
}

/** Both runs of a link, with what this device keeps of them. */
function openComparison(query: string) {
  const queries = runQueries(query);
  const [first, second] = [openRun(queries.before), openRun(queries.after)];
  const opened: OpenedRun = {
    ...first,
    ignored: [...new Set([...first.ignored, ...second.ignored, ...queries.ignored])],
    elsewhere: [...new Set([...first.elsewhere, ...second.elsewhere])],
  };
  const sameRecord = first.run.weather === second.run.weather;
  const run = ({ run: { scenario, seed } }: OpenedRun, { weather }: OpenedRun): Run => ({
    scenario,
    seed,
    record: weather?.year ?? null,
  });
  return {
    opened,
    sameRecord,
    saved: { before: first.run, after: second.run },
    before: run(first, first),
    after: run(second, sameRecord ? first : second),
  };
}

/** Two seasons side by side: what was decided, what it changed, where it went, and what made the difference. */
export default function ComparePage(props: ComparePageProps) {
  return (
    <OneWorkingOpen>
      <Comparison {...props} />
    </OneWorkingOpen>
  );
}

function Comparison({ route, preferences }: ComparePageProps) {
  const words = useWords();
  const { messages, formats, language } = words;
  const said = compareWords(language);
  const { opened, saved, before, after, sameRecord } = useMemo(() => openComparison(route.query), [route.query]);
  const key = encodeComparison(saved);
  const runs = [before, after].map((run) => () => runSeason(run.scenario, run.seed, run.record ?? null));
  const running = useSeasons(key, runs);
  useWorkingClosesOn(key);
  const [first, second] = running.seasons ?? [];
  useEffect(() => {
    document.title = `${said.title}: ${messages.common.product}`;
  }, [said, messages]);
  const nameOf = ({ scenario }: Run) => scenario.name[language] || farmWords(language).unnamed;
  const sameWeather = before.seed === after.seed && sameRecord;
  const template = sameWeather ? said.sameWeather : said.otherWeather;
  const lead = fill(sameFarm(before.scenario, after.scenario) ? template : said.otherFarm, {
    farm: nameOf(before),
    otherFarm: nameOf(after),
    seed: formats.count(before.seed),
    other: formats.count(after.seed),
  });
  const isChoice = sameWeather && sameFarm(before.scenario, after.scenario);
  const seasonHref = (run: SavedRun) => hashOf({ page: 'season', station: 'planting', query: encodeRun(run) });
  return (
    <main id="main" class="compare-page" tabIndex={-1}>
      <h1 class="page-title">{said.title}</h1>
      <ElsewhereNotes opened={opened} />
      <p class="page-lead">{lead}</p>
      <p class="compare-links">
        <a class="patch side-link" data-side="before" data-ink="indigo" data-cut="1" href={seasonHref(saved.before)}>
          {(isChoice ? said.openChoice : said.open).before}
        </a>
        <a class="patch side-link" data-side="after" data-ink="weld" data-cut="2" href={seasonHref(saved.after)}>
          {(isChoice ? said.openChoice : said.open).after}
        </a>
        <a href={hashOf({ page: 'compare', query: encodeComparison({ before: saved.after, after: saved.before }) })}>
          {said.swap}
        </a>
      </p>
      {key === encodeComparison({ before: saved.before, after: saved.before }) ? <p>{said.nothing}</p> : null}
      {first && second ? (
        <SideNamesContext.Provider value={isChoice ? said.choice : null}>
          <div class="compare-columns">
            <DifferencesTold before={first} after={second} />
            <DecisionsBeside before={before.scenario} after={after.scenario} />
            <BandsBeside before={first} after={second} theme={preferences.theme} />
            <ArraysBeside before={first} after={second} />
            <TakenApart runsKey={key} before={before} after={after} season={second} />
          </div>
        </SideNamesContext.Provider>
      ) : (
        <p role="status">{said.working}</p>
      )}
    </main>
  );
}
