import { hasNewVersion, onNewVersion, startSiteWorker, takeNewVersion } from '../pages/site-worker.ts';
import { attractNow, onAttract } from './attract-now.ts';
import { startHeartbeat } from './heartbeat.ts';
import { watchInstallerGesture } from './installer-gesture.ts';
import { loadAnew } from './load-anew.ts';
import { onGraphicsLost } from './lost-graphics.ts';
import { isOpen, lastNight } from './opening-hours.ts';
import { quietPicture } from './quiet-picture.ts';
import type { KioskSettings } from './settings.ts';
import { keepTroubles, keptTroubles, type TroubleKind, waitMs, withTrouble } from './trouble.ts';
import { keepAwake } from './wake-lock.ts';

/** How often it is asked whether there is something to do that only attract allows. */
const LOOK_EVERY_MS = 20_000;
/** Attract must have lasted this long: whoever has only just left may turn back. */
const SETTLED_MS = 5000;
/** Memory that was never given back is given back by a page that is loaded anew. An assumption. */
const MOST_VISITS = 50;

/** The browser's remark that a part was measured again in the next frame; nothing is wrong. */
const harmless = /^ResizeObserver loop/;

export interface Unattended {
  /** An error that a part of the page caught: the page is not well all the same. */
  readonly onError: () => void;
  /** Ends the watch. */
  readonly stop: () => void;
}

/**
 * Keeps a page going for weeks with nobody about. Updates, the night's reload and the one after many visits are for attract
 * alone; lost graphics wait for attract, with the scene's own still picture standing in; an error puts the quiet picture up and
 * loads the page anew after a wait that grows.
 */
export function watchUnattended({ hours, mmPerPx }: KioskSettings, product: string): Unattended {
  const beganAt = new Date();
  const showQuiet = quietPicture(product);
  const timers = new Set<number>();
  const stops: (() => void)[] = [];
  let resting = false;
  let graphicsLost = false;
  let attractSince: number | null = attractNow() === true ? Date.now() : null;
  let visits = 0;

  const later = (work: () => void, ms: number) => {
    const timer = window.setTimeout(() => {
      timers.delete(timer);
      work();
    }, ms);
    timers.add(timer);
  };
  const count = (kind: TroubleKind): number => {
    const troubles = withTrouble(keptTroubles(), kind, Date.now());
    keepTroubles(troubles);
    return waitMs(troubles, kind);
  };
  /** Tries until there is something to load. */
  const reload = async (againMs: number) => {
    if (!(await loadAnew())) later(() => void reload(againMs), againMs);
  };
  const isSettled = () => attractSince !== null && Date.now() - attractSince >= SETTLED_MS;
  const look = () => {
    if (resting || !isSettled()) return;
    if (hasNewVersion()) takeNewVersion();
    else if (graphicsLost || visits >= MOST_VISITS || lastNight(new Date(), hours) > beganAt) void loadAnew();
  };
  const onError = () => {
    if (resting) return;
    resting = true;
    showQuiet();
    const wait = count('error');
    later(() => void reload(wait), wait);
  };
  const onLost = () => {
    if (graphicsLost) return;
    const wait = count('graphics');
    later(() => {
      graphicsLost = true;
      look();
    }, wait);
  };

  const onUncaught = (event: ErrorEvent | PromiseRejectionEvent) => {
    if (!('message' in event && harmless.test(event.message))) onError();
  };

  startSiteWorker();
  void navigator.storage?.persist?.().catch(() => false);
  addEventListener('error', onUncaught);
  addEventListener('unhandledrejection', onUncaught);
  const looking = setInterval(look, LOOK_EVERY_MS);
  stops.push(
    startHeartbeat(() => (resting ? 'resting' : attractNow() === false ? 'visit' : 'attract')),
    keepAwake(() => isOpen(new Date(), hours)),
    onGraphicsLost(onLost),
    watchInstallerGesture(mmPerPx),
    onNewVersion(look),
    onAttract(() => {
      if (attractNow() === false) visits++;
      attractSince = attractNow() === true ? Date.now() : null;
      if (attractSince !== null) later(look, SETTLED_MS);
    }),
    () => {
      removeEventListener('error', onUncaught);
      removeEventListener('unhandledrejection', onUncaught);
      clearInterval(looking);
      for (const timer of timers) clearTimeout(timer);
    },
  );
  return {
    onError,
    stop() {
      for (const stop of stops) stop();
    },
  };
}
