import type { Problem } from '../../model/problem.ts';
import { mostMinutesOfStop } from './change-plan.ts';
import { type Plan, type PlannedStop, type PlanWish, plannedMinutes } from './plan.ts';
import { proposePlan } from './propose-plan.ts';
import { audiences, focuses, segmentMinutes } from './stop.ts';
import { stopList } from './stop-list.ts';

/** What a visit with no link begins with. */
export const firstWish: PlanWish = { minutes: 20, audience: 'teens', focus: 'cloth' };

const ownNames: readonly string[] = ['minutes', 'for', 'about', 'stops'];

/** A stop in a link: two digits of its place and one of its minutes, in base 36. */
const codeOf = ({ id, minutes }: PlannedStop): string =>
  stopList
    .findIndex((stop) => stop.id === id)
    .toString(36)
    .padStart(2, '0') + minutes.toString(36);
const codeLength = 3;

/** The query of a link that reopens a plan with its season; three characters for each stop. */
export const encodePlan = ({ minutes, audience, focus, stops, season }: Plan): string =>
  `minutes=${minutes}&for=${audience}&about=${focus}&stops=${stops.map(codeOf).join('')}${season && `&${season}`}`;

function readStops(text: string, minutes: number, problems: Problem[]): PlannedStop[] {
  const stops: PlannedStop[] = [];
  for (let i = 0; i < text.length; i += codeLength) {
    const code = text.slice(i, i + codeLength);
    const known = /^[0-9a-z]{3}$/.test(code) ? stopList[Number.parseInt(code.slice(0, 2), 36)] : undefined;
    const has = Number.parseInt(code.slice(2), 36);
    const fits = known && has >= known.minutes.least && has <= mostMinutesOfStop;
    const isNew = known && !stops.some(({ id }) => id === known.id);
    if (known && fits && isNew && plannedMinutes(stops) + has <= minutes) stops.push({ id: known.id, minutes: has });
    else problems.push({ field: 'stops', value: code, rule: { kind: 'type', expected: 'a stop that fits' } });
  }
  return stops;
}

/**
 * Reads the query of a link. Junk never fails: what cannot be read is left out and named, and the rest is kept.
 * @param query minutes, for, about and stops, and beside them the season's own link
 */
export function decodePlan(query: string): { readonly plan: Plan; readonly problems: readonly Problem[] } {
  const given = new URLSearchParams(query);
  const problems: Problem[] = [];
  const choice = <Value extends string | number>(name: string, options: readonly Value[], otherwise: Value): Value => {
    const text = given.get(name);
    const found = options.find((option) => String(option) === text);
    if (text !== null && found === undefined)
      problems.push({
        field: name,
        value: text.slice(0, 40) || 'nothing',
        rule: { kind: 'choice', options: options.map(String) },
      });
    return found ?? otherwise;
  };
  const wish: PlanWish = {
    minutes: choice('minutes', segmentMinutes, firstWish.minutes),
    audience: choice('for', audiences, firstWish.audience),
    focus: choice('about', focuses, firstWish.focus),
  };
  const season = query
    .split('&')
    .filter((piece) => piece !== '' && !ownNames.includes(piece.split('=')[0]!))
    .join('&');
  const stops = given.get('stops');
  const plan =
    stops === null
      ? proposePlan(wish, season)
      : { ...wish, season, stops: readStops(stops.slice(0, codeLength * stopList.length), wish.minutes, problems) };
  return { plan, problems };
}
