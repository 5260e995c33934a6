/** What the picture needs to know of one sampled plant. Days are days of the year. */
export interface DrawnPlant {
  readonly nodes: readonly DrawnNode[];
}
export interface DrawnNode {
  readonly number: number;
  readonly appearsDay: number;
  readonly branch: 'none' | 'vegetative' | 'fruiting';
  readonly side: -1 | 1;
  readonly sites: readonly DrawnSite[];
}
export interface DrawnSite {
  readonly position: 1 | 2 | 3;
  readonly squareDay: number;
  readonly flowerDay: number | null;
  readonly shedDay: number | null;
  readonly openDay: number | null;
  readonly locks: 4 | 5;
  readonly seeds: number;
}

/** What stands at a site on a day. */
export type SiteState =
  | { readonly kind: 'notYet' }
  | { readonly kind: 'square'; readonly ageDays: number }
  | { readonly kind: 'flower'; readonly ageDays: number }
  | { readonly kind: 'greenBoll'; readonly ageDays: number }
  | { readonly kind: 'openBoll'; readonly ageDays: number }
  | { readonly kind: 'shed' };

/** A flower opens white one morning, is pink the next, and has dropped by the third day. */
const FLOWER_DAYS = 2;

export function siteOn(site: DrawnSite, dayOfYear: number): SiteState {
  if (dayOfYear < site.squareDay) return { kind: 'notYet' };
  if (site.shedDay !== null && dayOfYear >= site.shedDay) return { kind: 'shed' };
  if (site.flowerDay === null || dayOfYear < site.flowerDay)
    return { kind: 'square', ageDays: dayOfYear - site.squareDay };
  if (site.openDay !== null && dayOfYear >= site.openDay)
    return { kind: 'openBoll', ageDays: dayOfYear - site.openDay };
  const ageDays = dayOfYear - site.flowerDay;
  return ageDays < FLOWER_DAYS ? { kind: 'flower', ageDays } : { kind: 'greenBoll', ageDays };
}
