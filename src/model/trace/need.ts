import type { Checked, Problem } from '../problem.ts';
import { INCHES_PER_YARD } from '../units.ts';
import { atCase, type TraceCase } from './chain-averages.ts';
import { countLimits, ownClothLimits, projectFacts } from './facts.ts';
import { type Project, type ProjectId, projectIds, projects } from './project-facts.ts';
import { clothMassKg } from './steps-back.ts';
import { backingYards, quiltClothSquareYards, squareYards } from './yardage.ts';

/** A named project, or cloth of one's own; how many of it, one unless said. */
export type TraceRequest =
  | { readonly project: string; readonly count?: number }
  | { readonly yards: number; readonly widthInches: number; readonly ouncesPerSquareYard: number };

/** The cloth and batting that something takes. */
export interface Need {
  readonly project: ProjectId | null;
  readonly count: number;
  readonly clothSquareYards: number;
  readonly ouncesPerSquareYard: number;
  readonly clothKg: number;
  /** None for what has no batting. */
  readonly battingSquareYards: number;
  readonly battingOunces: number;
  readonly battingKg: number;
  /** Backing to buy for one quilt, yards of 42 in usable width; null for other projects. */
  readonly backingYards: number | null;
}

/** What goes into a quilt's cloth and batting, in one of the three cases. */
export function quiltInputs(at: TraceCase) {
  const { piecingFactor, backingOverInches, bindingYards, usableWidthInches, quiltingOunces, battingOunces } =
    projectFacts;
  return {
    piecing: atCase(piecingFactor, at),
    overInches: atCase(backingOverInches, at),
    bindingYards: atCase(bindingYards, at),
    usableInches: usableWidthInches.value,
    ounces: atCase(quiltingOunces, at),
    battingOunces: atCase(battingOunces, at),
  };
}

function pieceNeed(project: Project, at: TraceCase): Omit<Need, 'project' | 'count'> {
  if (project.kind === 'cloth') {
    const area = atCase({ value: project.squareYards, range: project.squareYardsRange }, at);
    const ounces = atCase({ value: project.ouncesPerSquareYard, range: project.ouncesRange }, at);
    return {
      clothSquareYards: area,
      ouncesPerSquareYard: ounces,
      clothKg: clothMassKg(area, ounces),
      battingSquareYards: 0,
      battingOunces: 0,
      battingKg: 0,
      backingYards: null,
    };
  }
  const [width, length] = project.top;
  const given = quiltInputs(at);
  const area = quiltClothSquareYards(width, length, given);
  const batting = squareYards(...project.batting);
  return {
    clothSquareYards: area,
    ouncesPerSquareYard: given.ounces,
    clothKg: clothMassKg(area, given.ounces),
    battingSquareYards: batting,
    battingOunces: given.battingOunces,
    battingKg: clothMassKg(batting, given.battingOunces),
    backingYards: backingYards(width + given.overInches, length + given.overInches),
  };
}

interface Limits {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

function outOfRange(field: string, value: number, { low, high, unit }: Limits): Problem[] {
  if (value >= low && value <= high) return [];
  return [{ field, value: String(value), rule: { kind: 'range', low, high, step: null, unit } }];
}

/**
 * The cloth that a request takes.
 * @param at which end of the stated ranges; cloth of one's own has none
 * @returns the need, or the problems: unknown project, or a number out of its limits
 */
export function needOf(request: TraceRequest, at: TraceCase): Checked<Need> {
  if (!('project' in request)) {
    const { yards, widthInches, ouncesPerSquareYard } = request;
    const problems = (Object.keys(ownClothLimits) as (keyof typeof ownClothLimits)[]).flatMap((field) =>
      outOfRange(field, request[field], ownClothLimits[field]),
    );
    if (problems.length > 0) return { ok: false, problems };
    const area = squareYards(widthInches, yards * INCHES_PER_YARD);
    return {
      ok: true,
      value: {
        project: null,
        count: 1,
        clothSquareYards: area,
        ouncesPerSquareYard,
        clothKg: clothMassKg(area, ouncesPerSquareYard),
        battingSquareYards: 0,
        battingOunces: 0,
        battingKg: 0,
        backingYards: null,
      },
    };
  }
  const { project, count = 1 } = request;
  const id = projectIds.find((candidate) => candidate === project);
  if (id === undefined) {
    const rule = { kind: 'choice', options: projectIds } as const;
    return { ok: false, problems: [{ field: 'project', value: project, rule }] };
  }
  const problems = outOfRange('count', count, countLimits);
  if (problems.length > 0) return { ok: false, problems };
  const one = pieceNeed(projects[id], at);
  return {
    ok: true,
    value: {
      ...one,
      project: id,
      count,
      clothSquareYards: one.clothSquareYards * count,
      clothKg: one.clothKg * count,
      battingSquareYards: one.battingSquareYards * count,
      battingKg: one.battingKg * count,
    },
  };
}
