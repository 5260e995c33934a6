import * as v from 'valibot';
import type { Checked, Problem, Rule } from '../../model/problem.ts';
import { decodeRun, encodeRun } from '../../statechart/saved-run.ts';
import { mostMinutesOfStop } from './change-plan.ts';
import { type Plan, plannedMinutes } from './plan.ts';
import { audiences, focuses, segmentMinutes } from './stop.ts';
import { stopList, stopOf } from './stop-list.ts';

/** The largest plan file that is read, bytes: many times what every stop takes. */
export const mostPlanBytes = 20_000;
/** The longest season link a file may hold, characters: twice what any of ours takes. */
const longestSeason = 600;

const planSchema = v.strictObject({
  version: v.literal(1),
  minutes: v.picklist(segmentMinutes),
  audience: v.picklist(audiences),
  focus: v.picklist(focuses),
  stops: v.array(
    v.strictObject({
      stop: v.picklist(stopList.map(({ id }) => id)),
      minutes: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostMinutesOfStop)),
    }),
  ),
  season: v.pipe(v.string(), v.maxLength(longestSeason)),
});

function ruleAt(path: readonly string[], expected: string | null): Rule {
  const field = path.filter((part) => !/^\d+$/.test(part)).join('.');
  switch (field) {
    case 'version':
      return { kind: 'choice', options: ['1'] };
    case 'minutes':
      return { kind: 'choice', options: segmentMinutes.map(String) };
    case 'audience':
      return { kind: 'choice', options: audiences };
    case 'focus':
      return { kind: 'choice', options: focuses };
    case 'stops.stop':
      return { kind: 'choice', options: stopList.map(({ id }) => id) };
    case 'stops.minutes':
      return { kind: 'range', low: 1, high: mostMinutesOfStop, step: 1, unit: 'minutes' };
    case 'season':
      return { kind: 'type', expected: 'the link of a season' };
    case 'stops':
      return { kind: 'type', expected: 'a list of stops' };
    default:
      return { kind: 'type', expected: expected === 'never' ? 'nothing (unknown field)' : 'a plan as JSON' };
  }
}

/** What the parts of a plan say against each other: minutes that do not fit, a stop twice, a season that cannot be read. */
function faultsOf(plan: Plan): Problem[] {
  const problems: Problem[] = [];
  const twice = plan.stops.find(({ id }, i) => plan.stops.findIndex((other) => other.id === id) !== i);
  if (twice) problems.push({ field: 'stops', value: twice.id, rule: { kind: 'type', expected: 'each stop once' } });
  for (const [i, { id, minutes }] of plan.stops.entries()) {
    const least = stopOf(id)!.minutes.least;
    if (minutes < least)
      problems.push({
        field: `stops.${i}.minutes`,
        value: String(minutes),
        rule: { kind: 'range', low: least, high: mostMinutesOfStop, step: 1, unit: 'minutes' },
      });
  }
  const sum = plannedMinutes(plan.stops);
  if (sum > plan.minutes)
    problems.push({
      field: 'stops.minutes',
      value: String(sum),
      rule: { kind: 'range', low: 0, high: plan.minutes, step: null, unit: 'minutes' },
    });
  for (const piece of decodeRun(plan.season).ignored)
    problems.push({ field: 'season', value: piece, rule: { kind: 'type', expected: 'the link of a season' } });
  return problems;
}

/** What is said of a file that cannot be a plan at all. */
export const noPlanFile = (name: string, value: 'not JSON' | 'too large'): Problem => ({
  field: name,
  value,
  rule: { kind: 'type', expected: 'a plan as JSON' },
});

/**
 * Reads a plan file and checks every field.
 * @param name the file's name, for what is said of it
 * @returns the plan, or every problem found with the field, the value and what is allowed
 */
export function readPlanFile(text: string, name: string): Checked<Plan> {
  if (text.length > mostPlanBytes) return { ok: false, problems: [noPlanFile(name, 'too large')] };
  let input: unknown;
  try {
    input = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return { ok: false, problems: [noPlanFile(name, 'not JSON')] };
  }
  const read = v.safeParse(planSchema, input);
  if (!read.success) {
    const problems = read.issues.map((issue): Problem => {
      const path = (issue.path ?? []).map((item) => String(item.key));
      const value = issue.received === 'undefined' ? 'nothing' : issue.received;
      return { field: path.join('.') || name, value, rule: ruleAt(path, issue.expected) };
    });
    // A number both off its range and off its step is one problem, not two.
    const told = problems.filter(({ field }, i) => problems.findIndex((other) => other.field === field) === i);
    return { ok: false, problems: told };
  }
  const { minutes, audience, focus, stops, season } = read.output;
  const plan: Plan = {
    minutes,
    audience,
    focus,
    season,
    stops: stops.map((each) => ({ id: each.stop, minutes: each.minutes })),
  };
  const problems = faultsOf(plan);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: plan };
}

/** The file of a plan. */
export function planFileText({ minutes, audience, focus, stops, season }: Plan): string {
  const listed = stops.map(({ id, minutes: has }) => ({ stop: id, minutes: has }));
  // The season is written as links write it, so that an odd order or an unknown piece does not travel on.
  const clean = season && encodeRun(decodeRun(season).run);
  return `${JSON.stringify({ version: 1, minutes, audience, focus, stops: listed, season: clean }, null, 2)}\n`;
}
