import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { createActor } from 'xstate';
import { sayAttract } from '../../kiosk/attract-now.ts';
import { seasonOfHour } from '../../kiosk/season-of-hour.ts';
import { keptSettings } from '../../kiosk/settings.ts';
import { tally } from '../../kiosk/tallies.ts';
import { picturesStandStill } from '../../kiosk/trouble.ts';
import type { Language } from '../../language/language.ts';
import { WordsContext } from '../../language/words.ts';
import { kioskMachine } from '../../statechart/kiosk.ts';
import { setPageLanguage } from '../page-language.ts';
import type { Theme } from '../preferences.ts';
import { useSelector } from '../use-selector.ts';
import { Attract } from './attract.tsx';
import { visitCounter } from './count-visit.ts';
import { Explore } from './explore.tsx';
import { Guided } from './guided.tsx';
import { IdleWarning } from './idle-warning.tsx';
import { Keepsake } from './keepsake.tsx';
import { kioskSizes } from './kiosk-sizes.ts';
import { LanguageScreen } from './language-screen.tsx';
import { isAsking, screenOf } from './screen-of.ts';
import { useBox } from './use-box.ts';
import { useHands } from './use-hands.ts';
import { useKioskWords } from './use-kiosk-words.ts';
import { useLockedDown } from './use-locked-down.ts';
import { useReadAloud } from './use-read-aloud.ts';
import { useStyles } from './use-styles.ts';
import { VisitKeys } from './visit-keys.tsx';
import './kiosk.css';

const minuteMs = 60_000;
/** Ways the attract loop is laid out by turns, a minute each, so that nothing burns in. */
const lays = 4;

const whole = <Snapshot,>(snapshot: Snapshot) => snapshot;

/** The time on the wall, to the minute. */
function useMinute(): Date {
  const [date, setDate] = useState(() => new Date());
  useEffect(() => {
    let timer = 0;
    const wait = () => {
      timer = window.setTimeout(tick, minuteMs - (Date.now() % minuteMs));
    };
    const tick = () => {
      setDate(new Date());
      wait();
    };
    wait();
    return () => clearTimeout(timer);
  }, []);
  return date;
}

function useKiosk() {
  const settings = useMemo(keptSettings, []);
  const actor = useMemo(() => createActor(kioskMachine, { input: settings }).start(), [settings]);
  useEffect(() => {
    const counter = visitCounter(tally, () => performance.now());
    counter(actor.getSnapshot());
    const followed = actor.subscribe(counter);
    return () => {
      followed.unsubscribe();
      actor.stop();
    };
  }, [actor]);
  return { settings, actor, snapshot: useSelector(actor, whole) };
}

/** What stands on the screen all day. */
export function Kiosk() {
  const { settings, actor, snapshot } = useKiosk();
  const { context } = snapshot;
  const screen = screenOf(snapshot);
  const attract = screen === 'attract';
  const date = useMinute();
  // A visit keeps the season it began with, even past the hour.
  const shown = useRef(seasonOfHour(settings, date));
  if (attract) shown.current = seasonOfHour(settings, date);
  const loaded = useKioskWords(context.language as Language);
  const theme: Theme = settings.highContrast ? 'projector' : 'day';
  const still = useMemo(() => matchMedia('(prefers-reduced-motion: reduce)').matches || picturesStandStill(), []);
  const { host, box } = useBox<HTMLDivElement>();
  const sizes = useMemo(() => (box ? kioskSizes(settings.mmPerPx, box.width, box.height) : {}), [box, settings]);
  const styled = useStyles<HTMLElement>(sizes);
  const { send } = actor;
  const aloud = useReadAloud(
    context.language as Language,
    () => send({ type: 'SPEAK' }),
    () => send({ type: 'SPOKEN' }),
  );
  useLockedDown();
  useHands({
    send,
    isAsking: () => isAsking(actor.getSnapshot()),
    isAttract: () => actor.getSnapshot().matches('attract'),
  });
  useEffect(() => {
    sayAttract(attract);
    return () => sayAttract(undefined);
  }, [attract]);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
  const place = `${screen} ${context.stop} ${context.guess}`;
  useEffect(() => {
    aloud.hush();
    // A keypad finds itself on the loud key of every screen.
    document.querySelector<HTMLElement>('.kiosk-band [data-primary]')?.focus({ preventScroll: true });
  }, [place, loaded]);

  const language = loaded?.words.language;
  useEffect(() => {
    if (language) setPageLanguage(language);
  }, [language]);
  const textPx = Number.parseInt(sizes['--kiosk-text'] ?? '42', 10);
  const ready = loaded && box;
  const props = ready ? { context, send, shown: shown.current, settings, ...loaded, theme, still, textPx } : null;
  const listen = () => {
    const told = document.querySelectorAll('.kiosk-stage :is(h1, p, li)');
    aloud.speak([...told].map(({ textContent }) => textContent).join('. '), context.volume);
  };
  return (
    <main
      id="main"
      class="kiosk"
      tabIndex={-1}
      ref={styled}
      data-screen={screen}
      data-lay={attract ? Math.floor(date.getTime() / minuteMs) % lays : undefined}
    >
      <div class="kiosk-glass" ref={host}>
        {props ? (
          <WordsContext.Provider value={props.words}>
            {attract ? (
              <Attract {...props} date={date} />
            ) : (
              <>
                <div class="kiosk-stage">
                  {screen === 'language' ? <LanguageScreen {...props} /> : null}
                  {screen === 'guided' ? <Guided {...props} /> : null}
                  {screen === 'keepsake' ? <Keepsake {...props} /> : null}
                  {screen === 'looking' || screen === 'comparing' || screen === 'lesson' ? (
                    <Explore {...props} view={screen} />
                  ) : null}
                </div>
                <VisitKeys {...props} screen={screen} aloud={{ ...aloud, listen }} />
                {isAsking(snapshot) ? <IdleWarning context={context} said={props.said} /> : null}
              </>
            )}
          </WordsContext.Provider>
        ) : null}
      </div>
    </main>
  );
}
