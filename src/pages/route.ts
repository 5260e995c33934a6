import { type StationId, stationIds } from '../model/station.ts';
import { type PaperPageId, paperPageIds } from './teach/sheets/paper-page-id.ts';

/** Every address of the app. Hash routes: any static host and any sub-path will do, and no server needs rewrites. */
export type Route =
  | { readonly page: 'home' }
  | { readonly page: 'sources' }
  | { readonly page: 'model' }
  /** The page that stands alone on a touch screen, and its parts for whoever installs it. */
  | { readonly page: 'kiosk'; readonly id: string }
  | { readonly page: 'compare'; readonly query: string }
  | { readonly page: 'farm' | 'card' | 'trace' | 'bench'; readonly query: string }
  | { readonly page: 'teach'; readonly id: string; readonly query: string }
  | { readonly page: 'ask'; readonly id: string }
  /** What is printed for a class; its address lies under #/teach. */
  | { readonly page: 'paper'; readonly id: PaperPageId; readonly query: string }
  | { readonly page: 'lessons' | 'glossary'; readonly id: string }
  | { readonly page: 'season'; readonly station: StationId; readonly query: string };

/** An address read, and what of it could not be. */
export interface ReadRoute {
  readonly route: Route;
  /** The unreadable part, shown to the visitor with a word; null when all was read. */
  readonly unread: string | null;
}

/**
 * Reads a hash such as #/season/ginning?v=1&farm=coastal-plain&seed=7. Junk opens the first page and is named.
 * @param hash location.hash, with or without the leading #
 */
export function readRoute(hash: string): ReadRoute {
  const [path = '', query = ''] = hash.replace(/^#/, '').split(/\?(.*)/s);
  const [page, station, ...rest] = path.split('/').filter(Boolean);
  if (page === undefined) return { route: { page: 'home' }, unread: null };
  if (page === 'sources' || page === 'model')
    return { route: { page }, unread: station === undefined ? null : path.slice(0, 60) };
  if (page === 'farm' || page === 'card' || page === 'compare' || page === 'trace' || page === 'bench')
    return { route: { page, query }, unread: station === undefined ? null : path.slice(0, 60) };
  const paper = page === 'teach' ? paperPageIds.find((id) => id === station) : undefined;
  if (paper) return { route: { page: 'paper', id: paper, query }, unread: rest.length > 0 ? path.slice(0, 60) : null };
  if (page === 'teach')
    return { route: { page, id: station ?? '', query }, unread: rest.length > 0 ? path.slice(0, 60) : null };
  if (page === 'ask' || page === 'lessons' || page === 'glossary' || page === 'kiosk')
    return { route: { page, id: station ?? '' }, unread: rest.length > 0 ? path.slice(0, 60) : null };
  // The page for authors of lessons is one of the lessons' pages.
  if (page === 'authors') return { route: { page: 'lessons', id: page }, unread: null };
  if (page !== 'season') return { route: { page: 'home' }, unread: path.slice(0, 60) };
  const known = stationIds.find((id) => id === station);
  if (station !== undefined && known === undefined) {
    return { route: { page: 'season', station: 'planting', query }, unread: path.slice(0, 60) };
  }
  return {
    route: { page: 'season', station: known ?? 'planting', query },
    unread: rest.length > 0 ? path.slice(0, 60) : null,
  };
}

/** The hash of a route. */
export function hashOf(route: Route): string {
  if (route.page === 'home') return '#/';
  const query = 'query' in route && route.query ? `?${route.query}` : '';
  const page = route.page === 'paper' ? 'teach' : route.page;
  if ('id' in route) return `#/${page}${route.id ? `/${route.id}` : ''}${query}`;
  return `#/${route.page}${route.page === 'season' ? `/${route.station}` : ''}${query}`;
}
