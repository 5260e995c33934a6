/** How often a page that stays open asks for a newer version: the browser by itself asks only when a page is opened. */
const CHECK_EVERY_MS = 3_600_000;
/** A version that has not taken over in this time is loaded all the same: the page then comes over the network. */
const TAKE_OVER_MS = 5000;

let started = false;
let waiting: ServiceWorker | null = null;
let ready = false;
const listeners = new Set<() => void>();

function tell(worker: ServiceWorker | null): void {
  waiting = worker;
  ready = true;
  for (const listener of listeners) listener();
}

/** Follows one registration: a worker that is installed while another one serves the page is a newer version. */
function follow(registration: ServiceWorkerRegistration): void {
  const { serviceWorker } = navigator;
  if (registration.waiting && serviceWorker.controller) tell(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const found = registration.installing;
    found?.addEventListener('statechange', () => {
      if (found.state === 'installed' && serviceWorker.controller) tell(found);
    });
  });
  // Another page of the site may bring the newer version in force; this one then runs on files that may soon be gone.
  let controller = serviceWorker.controller;
  serviceWorker.addEventListener('controllerchange', () => {
    if (controller) tell(null);
    controller = serviceWorker.controller;
  });
  const check = () => {
    if (navigator.onLine) registration.update().catch(() => {});
  };
  setInterval(check, CHECK_EVERY_MS);
  document.addEventListener('visibilitychange', () => !document.hidden && check());
}

/**
 * Has the browser keep the whole site for use offline. Asked again it does nothing. Where there is no such store (no secure
 * address, storage shut or full) the site works over the network as before.
 */
export function startSiteWorker(): void {
  if (started || !import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  started = true;
  navigator.serviceWorker.register('./sw.js', { updateViaCache: 'none' }).then(
    (registration: ServiceWorkerRegistration | undefined) => registration && follow(registration),
    () => {},
  );
}

/** Whether a newer version is there and waits to be taken. */
export const hasNewVersion = (): boolean => ready;

/**
 * Calls back when a newer version comes.
 * @returns stops it
 */
export function onNewVersion(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Brings the newer version in force and loads the page anew; its address, and with it the season, stays. */
export function takeNewVersion(): void {
  if (!waiting) {
    location.reload();
    return;
  }
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  setTimeout(() => location.reload(), TAKE_OVER_MS);
  waiting.postMessage({ type: 'SKIP_WAITING' });
}
