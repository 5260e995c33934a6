import { useEffect, useRef } from 'preact/hooks';
import { hashOf, type Route } from './route.ts';

type SeasonRoute = Extract<Route, { page: 'season' }>;

/** How many blocks were sewn when this entry of the history was last shown; 0 for an entry that does not say. */
export function sewnBefore(): number {
  const state: unknown = history.state;
  const sewn = typeof state === 'object' && state !== null && 'sewn' in state ? state.sewn : 0;
  return Number.isInteger(sewn) ? Math.min(12, Math.max(0, sewn as number)) : 0;
}

/**
 * The address follows the season, so that it can be copied at any time. A new station is a new entry, so that Back goes to
 * the station before; a choice within a station only rewrites its entry. The blocks sewn ride along, for a reload.
 */
export function useAddress(route: SeasonRoute, sewn: number) {
  const shown = useRef(route.station);
  const hash = hashOf(route);
  useEffect(() => {
    const moved = shown.current !== route.station && !location.hash.startsWith(`#/season/${route.station}`);
    shown.current = route.station;
    if (moved) history.pushState({ sewn }, '', hash);
    else if (location.hash !== hash || sewnBefore() !== sewn) history.replaceState({ sewn }, '', hash);
  }, [hash, sewn]);
}
