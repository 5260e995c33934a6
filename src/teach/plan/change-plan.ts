import { freeMinutes, type Plan, type PlannedStop } from './plan.ts';
import { spreadMinutes } from './propose-plan.ts';
import { stopList, stopOf } from './stop-list.ts';

/** The most minutes one stop gets when a teacher lengthens it, whatever is usual; a plan's own minutes bind sooner. */
export const mostMinutesOfStop = 30;

const leastOf = ({ id }: PlannedStop): number => stopOf(id)?.minutes.least ?? 1;

/** A plan with one stop moved by so many places; at either end it stays. */
export function moveStop(plan: Plan, id: string, by: number): Plan {
  const from = plan.stops.findIndex((stop) => stop.id === id);
  const to = from + by;
  if (from < 0 || to < 0 || to >= plan.stops.length) return plan;
  const stops = [...plan.stops];
  stops.splice(to, 0, ...stops.splice(from, 1));
  return { ...plan, stops };
}

/** A plan without a stop; its minutes are free. */
export const dropStop = (plan: Plan, id: string): Plan => ({
  ...plan,
  stops: plan.stops.filter((stop) => stop.id !== id),
});

/** The stop that has most to give above its least, the later one first; null where none has. */
function giverBeside({ stops }: Plan, id: string): PlannedStop | null {
  const room = (stop: PlannedStop) => stop.minutes - leastOf(stop);
  const others = stops.filter((stop) => stop.id !== id && room(stop) > 0);
  return others.reduce<PlannedStop | null>((best, stop) => (best && room(best) > room(stop) ? best : stop), null);
}

const withMinutes = (plan: Plan, id: string, by: number): Plan => ({
  ...plan,
  stops: plan.stops.map((stop) => (stop.id === id ? { ...stop, minutes: stop.minutes + by } : stop)),
});

/** A stop one minute longer. The minute is a free one, or comes from the stop that has most to give. */
export interface Lengthened {
  readonly plan: Plan;
  /** The stop that gave the minute; null where it was free. */
  readonly from: string | null;
}

/** Null where nothing can give a minute. */
export function lengthenStop(plan: Plan, id: string): Lengthened | null {
  const stop = plan.stops.find((each) => each.id === id);
  if (!stop || stop.minutes >= mostMinutesOfStop) return null;
  if (freeMinutes(plan) > 0) return { plan: withMinutes(plan, id, 1), from: null };
  const giver = giverBeside(plan, id);
  return giver && { plan: withMinutes(withMinutes(plan, giver.id, -1), id, 1), from: giver.id };
}

/** A stop one minute shorter, the minute free; null where it is down to its least. */
export function shortenStop(plan: Plan, id: string): Plan | null {
  const stop = plan.stops.find((each) => each.id === id);
  return stop && stop.minutes > leastOf(stop) ? withMinutes(plan, id, -1) : null;
}

/** Hands out the free minutes, as far as the stops can take them. */
export const spreadFree = (plan: Plan): Plan => ({ ...plan, stops: spreadMinutes(plan.stops, plan.minutes) });

/** Ids of stops that are not in a plan, in the list's order. */
export const stopsLeftOut = ({ stops }: Plan): readonly string[] =>
  stopList.filter(({ id }) => !stops.some((stop) => stop.id === id)).map(({ id }) => id);

/** A stop put in before the recap, or last, with its least minutes; others give what is not free. Null where they cannot. */
export function addStop(plan: Plan, id: string): Plan | null {
  const stop = stopOf(id);
  if (!stop || plan.stops.some((each) => each.id === id)) return null;
  let base = plan;
  while (freeMinutes(base) < stop.minutes.least) {
    const giver = giverBeside(base, id);
    if (!giver) return null;
    base = withMinutes(base, giver.id, -1);
  }
  const last = base.stops.at(-1)?.id === 'recap' ? base.stops.length - 1 : base.stops.length;
  const stops = [...base.stops];
  stops.splice(last, 0, { id, minutes: stop.minutes.least });
  return { ...base, stops };
}
