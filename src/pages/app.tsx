import { useEffect, useMemo, useState } from 'preact/hooks';
import { loadMessages } from '../language/load-messages.ts';
import { en, type Messages } from '../language/messages/en.ts';
import { makeWords, WordsContext } from '../language/words.ts';
import { ErrorBoundary } from '../ui/error-boundary.tsx';
import { LanguageUnitsBar } from '../ui/language-units-bar.tsx';
import { Navigation } from '../ui/navigation.tsx';
import { takeTurn } from '../ui/turns.ts';
import { Home } from './home.tsx';
import { lastSeason } from './last-run.ts';
import { laterPage } from './later-page.tsx';
import { NewVersionLater } from './new-version-later.tsx';
import { setPageLanguage } from './page-language.ts';
import { keepPreferences, type Preferences, readPreferences } from './preferences.ts';
import { hashOf, readRoute } from './route.ts';

const SeasonPage = laterPage(() => import('./season/season-page.tsx'));
const SourcesPage = laterPage(() => import('./sources/sources-page.tsx'));
const ModelPage = laterPage(() => import('./model-page.tsx'));
const AskPage = laterPage(() => import('./ask/ask-page.tsx'));
const ComparePage = laterPage(() => import('./compare/compare-page.tsx'));
const PaperPage = laterPage(() => import('./teach/sheets/paper-page.tsx'));
const TeachPage = laterPage(() => import('./teach/teach-page.tsx'));
const KioskPage = laterPage(() => import('./kiosk/kiosk-page.tsx'));
const LessonsPage = laterPage(() => import('./lessons/lessons-page.tsx'));

/** Pages that their query alone opens. */
const onQuery = {
  farm: laterPage(() => import('./farm/farm-page.tsx')),
  card: laterPage(() => import('./card/card-page.tsx')),
  trace: laterPage(() => import('./trace/trace-page.tsx')),
  bench: laterPage(() => import('./bench/bench-page.tsx')),
};

/** The pages there are, in the order of the navigation. */
const pages = ['season', 'bench', 'trace', 'lessons', 'teach', 'ask', 'farm', 'sources', 'model'] as const;
/** Each page's own address; the season's names no station, and so leads back to the one that is open. */
const hrefTo = (page: (typeof pages)[number]): string => `#/${page}`;

/** The address as it stands. A season without a station is the season that is open; where none is, it begins at Planting. */
function readAddress() {
  const open = location.hash === hrefTo('season') ? lastSeason() : null;
  if (open) history.replaceState({ sewn: open.sewn }, '', open.hash);
  return readRoute(location.hash);
}

/** The address as it stands, followed. */
function useRoute() {
  const [read, setRead] = useState(readAddress);
  useEffect(() => {
    const follow = () => setRead(readAddress());
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  return read;
}

/** Preferences in force, kept on the device, with the words of their language once those have come. */
function usePreferences() {
  const [preferences, setPreferences] = useState(() =>
    readPreferences(navigator.languages, matchMedia('(prefers-reduced-motion: reduce)').matches),
  );
  const [messages, setMessages] = useState<Messages | null>(preferences.language === 'en' ? en : null);
  useEffect(() => {
    let current = true;
    // Words that cannot be fetched leave those in force: better the other language than none.
    loadMessages(preferences.language).then(
      (loaded) => current && setMessages(loaded),
      () => current && setMessages((before) => before ?? en),
    );
    return () => {
      current = false;
    };
  }, [preferences.language]);
  useEffect(() => {
    const { dataset } = document.documentElement;
    dataset.theme = preferences.theme;
    dataset.motion = preferences.motion;
  }, [preferences.theme, preferences.motion]);
  const change = (some: Partial<Preferences>) => {
    const next = { ...preferences, ...some };
    setPreferences(next);
    keepPreferences(next);
  };
  return { preferences, change, messages };
}

/** The whole app: the frame, and the page of the address. */
export function App() {
  const { route, unread } = useRoute();
  const { preferences, change, messages } = usePreferences();
  const language = messages === en ? 'en' : messages ? 'es' : preferences.language;
  const words = useMemo(
    () => makeWords(language, preferences.units, messages ?? en),
    [language, preferences.units, messages],
  );
  useEffect(
    // After the parts that bring their words in turn: the browser styles the whole page anew.
    () => takeTurn(() => setPageLanguage(language)),
    [language],
  );
  useEffect(() => {
    if (route.page === 'home') document.title = `${words.messages.common.product}: ${words.messages.common.tagline}`;
  }, [language, words, route.page]);
  if (!messages) return null;
  const OnQuery = route.page in onQuery ? onQuery[route.page as keyof typeof onQuery] : null;
  const query = 'query' in route ? route.query : '';
  // It has the screen to itself: nothing around it leads away.
  if (route.page === 'kiosk')
    return (
      <WordsContext.Provider value={words}>
        <ErrorBoundary>
          <KioskPage id={route.id} />
        </ErrorBoundary>
      </WordsContext.Provider>
    );
  return (
    <WordsContext.Provider value={words}>
      <button type="button" class="unseen skip-link" onClick={focusMain}>
        {words.messages.common.skip}
      </button>
      <header class="page-head">
        <a class="brand" href={hashOf({ page: 'home' })}>
          {words.messages.common.product}
        </a>
        <Navigation
          pages={pages}
          current={
            route.page === 'home'
              ? null
              : route.page === 'paper'
                ? 'teach'
                : route.page === 'card'
                  ? 'season'
                  : route.page === 'glossary'
                    ? 'lessons'
                    : route.page
          }
          hrefOf={hrefTo}
        />
        <LanguageUnitsBar
          theme={preferences.theme}
          onLanguage={(chosen) => change({ language: chosen })}
          onUnitSystem={(units) => change({ units })}
          onTheme={(theme) => change({ theme })}
          motion={preferences.motion}
          onMotion={(motion) => change({ motion })}
        />
        <NewVersionLater />
      </header>
      {unread ? (
        <p class="address-note" role="status">
          {words.messages.problems.address} <code>{unread}</code>
        </p>
      ) : null}
      <ErrorBoundary>
        {route.page === 'home' ? (
          <Home theme={preferences.theme} />
        ) : (
          <>
            {route.page === 'season' ? <SeasonPage route={route} preferences={preferences} /> : null}
            {OnQuery ? <OnQuery key={route.page === 'bench' || query} query={query} theme={preferences.theme} /> : null}
            {route.page === 'sources' ? <SourcesPage /> : null}
            {route.page === 'model' ? <ModelPage /> : null}
            {route.page === 'ask' ? <AskPage route={route} /> : null}
            {route.page === 'lessons' || route.page === 'glossary' ? <LessonsPage route={route} /> : null}
            {route.page === 'paper' ? <PaperPage id={route.id} query={route.query} /> : null}
            {route.page === 'teach' ? <TeachPage route={route} /> : null}
            {route.page === 'compare' ? <ComparePage route={route} preferences={preferences} /> : null}
          </>
        )}
      </ErrorBoundary>
    </WordsContext.Provider>
  );
}

/** The address holds the route, so the skip link moves the focus itself. */
function focusMain() {
  document.getElementById('main')?.focus();
}
