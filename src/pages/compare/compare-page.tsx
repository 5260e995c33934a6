import { useEffect, useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { runSeason } from '../../model/chain.ts';
import { decodeComparison, encodeComparison } from '../../statechart/saved-comparison.ts';
import { encodeRun } from '../../statechart/saved-run.ts';
import type { Preferences } from '../preferences.ts';
import { hashOf, type Route } from '../route.ts';
import { ArraysBeside } from './arrays-beside.tsx';
import { BandsBeside } from './bands-beside.tsx';
import { compareWords } from './compare-words.ts';
import { DecisionsBeside } from './decisions-beside.tsx';
import { DifferencesTold } from './differences-told.tsx';
import { TakenApart } from './taken-apart.tsx';
import { useSeasons } from './use-seasons.ts';
import './compare.css';

export interface ComparePageProps {
  readonly route: Extract<Route, { page: 'compare' }>;
  readonly preferences: Preferences;
}

/** Two seasons side by side: what was decided, what it changed, where it went, and what made the difference. */
export default function ComparePage({ route, preferences }: ComparePageProps) {
  const words = useWords();
  const { messages, formats, language } = words;
  const said = compareWords(language);
  const { before, after, ignored } = useMemo(() => decodeComparison(route.query), [route.query]);
  const key = encodeComparison({ before, after });
  const running = useSeasons(
    key,
    [before, after].map(
      ({ scenario, seed }) =>
        () =>
          runSeason(scenario, seed, null),
    ),
  );
  const [first, second] = running.seasons ?? [];
  useEffect(() => {
    document.title = `${said.title}: ${messages.common.product}`;
  }, [said, messages]);
  const farm = before.scenario.name[language];
  const otherFarm = after.scenario.name[language];
  const lead = fill(
    before.scenario.id !== after.scenario.id
      ? said.otherFarm
      : before.seed === after.seed
        ? said.sameWeather
        : said.otherWeather,
    { farm, otherFarm, seed: formats.count(before.seed), other: formats.count(after.seed) },
  );
  const seasonHref = (run: typeof before) => hashOf({ page: 'season', station: 'planting', query: encodeRun(run) });
  return (
    <main id="main" class="compare-page" tabIndex={-1}>
      <h1>{said.title}</h1>
      {ignored.length > 0 ? (
        <p class="address-note" role="status">
          {messages.problems.address} <code>{ignored.join(' ')}</code>
        </p>
      ) : null}
      <p class="compare-lead">{lead}</p>
      <p class="compare-links">
        <a class="patch side-link" data-side="before" data-ink="indigo" data-cut="1" href={seasonHref(before)}>
          {said.open.before}
        </a>
        <a class="patch side-link" data-side="after" data-ink="weld" data-cut="2" href={seasonHref(after)}>
          {said.open.after}
        </a>
        <a href={hashOf({ page: 'compare', query: encodeComparison({ before: after, after: before }) })}>{said.swap}</a>
      </p>
      {key === encodeComparison({ before, after: before }) ? <p>{said.nothing}</p> : null}
      {first && second ? (
        <div class="compare-columns">
          <DifferencesTold before={first} after={second} />
          <DecisionsBeside before={before.scenario} after={after.scenario} />
          <BandsBeside before={first} after={second} theme={preferences.theme} />
          <ArraysBeside before={first} after={second} />
          <TakenApart runsKey={key} before={before} after={after} />
        </div>
      ) : (
        <p role="status">{said.working}</p>
      )}
    </main>
  );
}
