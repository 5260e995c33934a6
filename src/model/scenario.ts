import * as v from 'valibot';
import { type Decision, type Decisions, decisionTable, type NumberDecision } from './decisions.ts';
import { farmLimits, textLimits } from './input-facts.ts';
import type { Checked, Problem, Rule } from './problem.ts';
import { roundingFacts } from './rounding-facts.ts';
import { stationIds } from './station.ts';

export const climateIds = ['coastalPlain', 'midSouth', 'highPlains', 'lowDesert', 'centralValley'] as const;
/** One of five climates, each fitted to a public weather station. */
export type ClimateId = (typeof climateIds)[number];
export const eras = ['present', 'thirties'] as const;
/** The present, or the 1930s: graded by eye, no tag, no lint cleaner, yields of the time. */
export type Era = (typeof eras)[number];

/** One invented farm and everything decided for its season. Small on purpose: this is what is saved and shared. */
export interface Scenario {
  readonly version: 1;
  readonly id: string;
  readonly name: { readonly en: string; readonly es: string };
  readonly story: { readonly en: string; readonly es: string };
  readonly climate: ClimateId;
  readonly era: Era;
  readonly acres: number;
  /** Water the root zone can hold between full and wilting, mm. */
  readonly soilWaterMm: number;
  readonly decisions: Decisions;
}

/** A group of exactly these fields. Its list has no prototype, so that names such as "constructor" count as unknown too. */
const strict = <Entries extends v.ObjectEntries>(entries: Entries) =>
  v.strictObject(Object.assign(Object.create(null) as object, entries));

const ruleOf = (decision: Decision): Rule =>
  decision.kind === 'number'
    ? { kind: 'range', low: decision.low, high: decision.high, step: decision.step, unit: decision.unit }
    : decision.kind === 'choice'
      ? { kind: 'choice', options: decision.options }
      : { kind: 'type', expected: 'true or false' };

/** Whole steps only, so that a link can carry every legal value. */
const isOnStep = (decision: NumberDecision) => (value: number) => {
  const steps = (value - decision.low) / decision.step;
  return Math.abs(steps - Math.round(steps)) < roundingFacts.hair.value;
};

const schemaOf = (decision: Decision) =>
  decision.kind === 'number'
    ? v.pipe(v.number(), v.minValue(decision.low), v.maxValue(decision.high), v.check(isOnStep(decision)))
    : decision.kind === 'choice'
      ? v.picklist(decision.options)
      : v.boolean();

const rangeOf = ({ low, high, unit }: { readonly low: number; readonly high: number; readonly unit: string }) =>
  ({ kind: 'range', low, high, step: null, unit }) as const;
const acres = rangeOf(farmLimits.acres);
const soilWaterMm = rangeOf(farmLimits.soilWaterMm);
const texts = (longestEn: number, longestEs: number) =>
  strict({
    en: v.pipe(v.string(), v.maxLength(longestEn)),
    es: v.pipe(v.string(), v.maxLength(longestEs)),
  });

const farmId = /^[a-z0-9-]{1,40}$/;

const scenarioSchema = strict({
  version: v.literal(1),
  id: v.pipe(v.string(), v.regex(farmId)),
  name: texts(textLimits.nameEn, textLimits.nameEs),
  story: texts(textLimits.storyEn, textLimits.storyEs),
  climate: v.picklist(climateIds),
  era: v.picklist(eras),
  acres: v.pipe(v.number(), v.minValue(acres.low), v.maxValue(acres.high)),
  soilWaterMm: v.pipe(v.number(), v.minValue(soilWaterMm.low), v.maxValue(soilWaterMm.high)),
  decisions: strict(
    Object.fromEntries(
      stationIds.map((station) => [
        station,
        strict(
          Object.fromEntries(
            Object.entries(decisionTable[station]).map(([key, decision]) => [key, schemaOf(decision)]),
          ),
        ),
      ]),
    ),
  ),
});

/** What a farm's id may be: it stands in links and file names. */
export const isFarmId = (text: string): boolean => farmId.test(text);

const unknownField = 'nothing (unknown field)';

/** What a text of a scenario, or one language of it, must be. */
function textRule(field: 'name' | 'story', language: string | undefined): string {
  if (language === undefined) return 'a text in en and one in es';
  if (language !== 'en' && language !== 'es') return unknownField;
  const longest = textLimits[`${field}${language === 'en' ? 'En' : 'Es'}`];
  return `text of at most ${longest} characters`;
}

function ruleAt(path: readonly string[], expected: string | null): Rule {
  const [first, station, key] = path;
  if (first === 'decisions' && station !== undefined && key !== undefined) {
    const decision = (decisionTable as Record<string, Record<string, Decision>>)[station]?.[key];
    return decision ? ruleOf(decision) : { kind: 'type', expected: unknownField };
  }
  if (first === 'decisions' && (station === undefined || station in decisionTable)) {
    return { kind: 'type', expected: 'a group of decisions' };
  }
  if (first === 'acres') return acres;
  if (first === 'soilWaterMm') return soilWaterMm;
  if (first === 'climate') return { kind: 'choice', options: climateIds };
  if (first === 'era') return { kind: 'choice', options: eras };
  if (first === 'version') return { kind: 'choice', options: ['1'] };
  if (first === 'name' || first === 'story') return { kind: 'type', expected: textRule(first, station) };
  if (first === 'id') return { kind: 'type', expected: 'small letters, digits and hyphens, at most 40' };
  return { kind: 'type', expected: expected === 'never' ? unknownField : 'a group of fields' };
}

/**
 * Checks a scenario of unknown origin.
 * @returns the scenario, or every problem found with the field, the value and what is allowed
 */
export function checkScenario(input: unknown): Checked<Scenario> {
  const result = v.safeParse(scenarioSchema, input);
  if (result.success) return { ok: true, value: input as Scenario };
  const told = new Set<string>();
  const problems = result.issues.flatMap((issue): Problem[] => {
    const path = (issue.path ?? []).map((item) => String(item.key));
    const field = path.length > 0 ? path.join('.') : 'scenario';
    // A number both off its range and off its step is one problem, not two.
    if (told.has(field)) return [];
    told.add(field);
    const value = issue.received === 'undefined' ? 'nothing' : issue.received;
    return [{ field, value, rule: ruleAt(path, issue.expected) }];
  });
  return { ok: false, problems };
}
