import type { Checked, Problem } from '../problem.ts';
import {
  INCHES_PER_FOOT,
  INCHES_PER_YARD,
  KG_PER_POUND,
  KILO,
  MINUTES_PER_HOUR,
  OUNCES_PER_POUND,
  SQUARE_FEET_PER_ACRE,
  SQUARE_METRES_PER_ACRE,
  TERA,
} from '../units.ts';
import { chainFacts, ownClothLimits, projectFacts } from './facts.ts';
import { type Project, type ProjectId, projectIds, projects } from './project-facts.ts';
import { backingYards, squareYards } from './yardage.ts';

/** A named project, or cloth of one's own. */
export type TraceRequest =
  | { readonly project: string }
  | { readonly yards: number; readonly widthInches: number; readonly ouncesPerSquareYard: number };

/** The averages of the chain that may be given; each has a default in the facts. */
export type ChainAverages = { readonly [Name in keyof typeof chainFacts]: number };

/** One project followed back to the field. Masses in kg, as traded (with their usual moisture). */
export interface Trace {
  readonly project: ProjectId | null;
  readonly clothSquareYards: number;
  readonly clothKg: number;
  /** Yarn in the cloth; batting is not spun. */
  readonly yarnKg: number;
  readonly battingKg: number;
  /** Baled lint for cloth and batting. */
  readonly lintKg: number;
  readonly seedCottonKg: number;
  readonly bolls: number;
  readonly plants: number;
  /** Field that the plants stand on. */
  readonly squareMetres: number;
  /** Row that they make, feet. */
  readonly rowFeet: number;
  readonly seedKg: number;
  readonly oilKg: number;
  readonly mealKg: number;
  readonly handPickingDays: number;
  readonly machinePickingMinutes: number;
  /** Fibres in the lint, one by one. */
  readonly fibres: number;
  /** Backing to buy for a quilt, yards of 42 in usable width; null for other projects. */
  readonly backingYards: number | null;
}

interface Need {
  readonly clothSquareYards: number;
  readonly clothOunces: number;
  readonly battingOunces: number;
  readonly backingYards: number | null;
}

/** Lint in a kilogram, in mtex x mm: a fibre of 1 mtex and 1 mm weighs a nanogram. */
const millitexMillimetresPerKg = TERA;

function needOf(project: Project): Need {
  if (project.kind === 'cloth') {
    const { squareYards: area, ouncesPerSquareYard } = project;
    return { clothSquareYards: area, clothOunces: area * ouncesPerSquareYard, battingOunces: 0, backingYards: null };
  }
  const [width, length] = project.top;
  const { piecingFactor, backingOverInches, bindingYards, usableWidthInches, quiltingOunces, battingOunces } =
    projectFacts;
  const backWidth = width + backingOverInches.value;
  const backLength = length + backingOverInches.value;
  const clothSquareYards =
    squareYards(width, length) * piecingFactor.value +
    squareYards(backWidth, backLength) +
    squareYards(usableWidthInches.value, bindingYards.value * INCHES_PER_YARD);
  return {
    clothSquareYards,
    clothOunces: clothSquareYards * quiltingOunces.value,
    battingOunces: squareYards(...project.batting) * battingOunces.value,
    backingYards: backingYards(backWidth, backLength),
  };
}

function checkOwn(own: Exclude<TraceRequest, { project: string }>): Checked<Need> {
  const problems = (Object.keys(ownClothLimits) as (keyof typeof ownClothLimits)[]).flatMap((field): Problem[] => {
    const { low, high, unit } = ownClothLimits[field];
    const value = own[field];
    if (value >= low && value <= high) return [];
    return [{ field, value: String(value), rule: { kind: 'range', low, high, step: null, unit } }];
  });
  if (problems.length > 0) return { ok: false, problems };
  const area = squareYards(own.widthInches, own.yards * INCHES_PER_YARD);
  const clothOunces = area * own.ouncesPerSquareYard;
  return { ok: true, value: { clothSquareYards: area, clothOunces, battingOunces: 0, backingYards: null } };
}

/**
 * Follows a project back: cloth, yarn, lint, seed cotton, bolls, plants, field, and what came along.
 * @param request a project's name, or yards (0.125 to 10,000), width (10 to 130 in) and weight (0.5 to 40 oz/yd2)
 * @param averages of a chain, for example a season's own; what is not named takes its default
 * @returns the trace, or the problems: unknown project, or a number out of its limits
 */
export function traceProject(request: TraceRequest, averages: Partial<ChainAverages> = {}): Checked<Trace> {
  if (!('project' in request)) {
    const need = checkOwn(request);
    return need.ok ? { ok: true, value: traceNeed(null, need.value, averages) } : need;
  }
  const id = projectIds.find((candidate) => candidate === request.project);
  if (id === undefined) {
    const rule = { kind: 'choice', options: projectIds } as const;
    return { ok: false, problems: [{ field: 'project', value: request.project, rule }] };
  }
  return { ok: true, value: traceNeed(id, needOf(projects[id]), averages) };
}

function traceNeed(project: ProjectId | null, need: Need, averages: Partial<ChainAverages>): Trace {
  const of = (name: keyof ChainAverages): number => averages[name] ?? chainFacts[name].value;
  const kilograms = (ounces: number) => (ounces / OUNCES_PER_POUND) * KG_PER_POUND;
  const clothKg = kilograms(need.clothOunces);
  const battingKg = kilograms(need.battingOunces);
  const yarnKg = clothKg / of('finishingYield') / of('weavingYield');
  const lintKg = yarnKg / of('yarnRealisation') + battingKg / of('battingYield');
  const seedCottonKg = lintKg / of('ginTurnout');
  const bolls = (seedCottonKg * KILO) / of('bollGrams');
  const plants = bolls / of('bollsPerPlant');
  const acres = plants / of('plantsPerAcre');
  const seedKg = lintKg * of('seedPerLint');
  return {
    project,
    clothSquareYards: need.clothSquareYards,
    clothKg,
    yarnKg,
    battingKg,
    lintKg,
    seedCottonKg,
    bolls,
    plants,
    squareMetres: acres * SQUARE_METRES_PER_ACRE,
    rowFeet: (acres * SQUARE_FEET_PER_ACRE * INCHES_PER_FOOT) / of('rowInches'),
    seedKg,
    oilKg: seedKg * of('oilPerSeed'),
    mealKg: seedKg * of('mealPerSeed'),
    handPickingDays: seedCottonKg / KG_PER_POUND / of('handPickPoundsPerDay'),
    machinePickingMinutes: (acres / of('machineAcresPerHour')) * MINUTES_PER_HOUR,
    fibres: (lintKg * millitexMillimetresPerKg) / (of('fibreMtex') * of('fibreLengthMm')),
    backingYards: need.backingYards,
  };
}
