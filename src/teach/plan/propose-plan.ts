import { focusStops, type RankedStop } from './focus-stops.ts';
import { type Plan, type PlannedStop, type PlanWish, plannedMinutes } from './plan.ts';
import { stopOf } from './stop-list.ts';

/** A class can change its matter about this often: two stops, and one more for each of these minutes. Common practice. */
const minutesPerStop = 6;

const minutesOf = (id: string) => {
  const stop = stopOf(id);
  if (!stop) throw new RangeError(`no stop ${id}`);
  return stop.minutes;
};

/** The stops a wish leads to: by rank, as long as their usual minutes fit, then back in the order of teaching. */
function chosen({ minutes, audience, focus }: PlanWish): readonly RankedStop[] {
  const fitting = focusStops[focus].filter((stop) => stop.for.includes(audience));
  const most = 2 + Math.floor(minutes / minutesPerStop);
  const taken = new Set<RankedStop>();
  let usual = 0;
  for (const stop of [...fitting].sort((a, b) => a.rank - b.rank)) {
    const more = minutesOf(stop.id).usual;
    if (taken.size >= most || usual + more > minutes) continue;
    taken.add(stop);
    usual += more;
  }
  return fitting.filter((stop) => taken.has(stop));
}

/**
 * Hands out minutes that are free, one by one, to the stop that has least of its usual time; none gets more than its most.
 * @returns the stops with as many of the minutes as they can take
 */
export function spreadMinutes(stops: readonly PlannedStop[], minutes: number): readonly PlannedStop[] {
  const spread = stops.map((stop) => ({ ...stop }));
  const fullness = ({ id, minutes: has }: PlannedStop) => has / minutesOf(id).usual;
  for (let free = minutes - plannedMinutes(stops); free > 0; free--) {
    const open = spread.filter((stop) => stop.minutes < minutesOf(stop.id).most);
    const next = open.sort((a, b) => fullness(a) - fullness(b))[0];
    if (!next) break;
    next.minutes += 1;
  }
  return spread;
}

/** A plan whose minutes add up to the wish, for the season of a link. */
export function proposePlan(wish: PlanWish, season: string): Plan {
  const least = chosen(wish).map(({ id }) => ({ id, minutes: minutesOf(id).least }));
  return { ...wish, season, stops: spreadMinutes(least, wish.minutes) };
}
