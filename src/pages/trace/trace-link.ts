import type { Problem } from '../../model/problem.ts';
import { countLimits, ownClothLimits } from '../../model/trace/facts.ts';
import { type ProjectId, projectIds } from '../../model/trace/project-facts.ts';
import { type StartId, startIds } from '../../model/trace/trace-forward.ts';

/** Cloth of one's own, in the units of the model. */
export interface OwnCloth {
  readonly yards: number;
  readonly widthInches: number;
  readonly ouncesPerSquareYard: number;
}

/** What the page was asked: a project or cloth of one's own, and what the way forward begins with. */
export interface TraceAsked {
  readonly project: ProjectId | 'own';
  readonly count: number;
  readonly own: OwnCloth;
  readonly start: StartId;
  readonly startCount: number;
  /** The stated averages in the place of a season. */
  readonly stated: boolean;
  /** The link of the season that is traced through; null for the one that is open, or the default. */
  readonly run: string | null;
}

const firstAsked: TraceAsked = {
  project: 'twin-quilt',
  count: 1,
  own: {
    yards: ownClothLimits.yards.usual,
    widthInches: ownClothLimits.widthInches.usual,
    ouncesPerSquareYard: ownClothLimits.ouncesPerSquareYard.usual,
  },
  start: 'boll',
  startCount: 1,
  stated: false,
  run: null,
};

const ownNames = ['project', 'count', 'yards', 'width', 'weight', 'from', 'of', 'through'];
const shortest = (value: number) => String(Number(value.toFixed(4)));

/** The query of a link that reopens the same page; what is as it begins is left out, the season never. */
export function encodeTrace({ project, count, own, start, startCount, stated, run }: TraceAsked): string {
  const pieces: Record<string, string> = { project };
  if (project === 'own') {
    pieces.yards = shortest(own.yards);
    pieces.width = shortest(own.widthInches);
    pieces.weight = shortest(own.ouncesPerSquareYard);
  } else if (count !== 1) pieces.count = String(count);
  if (start !== firstAsked.start) pieces.from = start;
  if (startCount !== 1) pieces.of = String(startCount);
  if (stated) pieces.through = 'averages';
  const query = Object.entries(pieces).map(([name, text]) => `${name}=${text}`);
  return [...query, ...(run && !stated ? [run] : [])].join('&');
}

/**
 * Reads the query of a link. Junk never fails: it is left out and named, the rest is kept.
 * @returns what was asked, and a problem for each piece that could not be used
 */
export function decodeTrace(query: string): { asked: TraceAsked; problems: Problem[] } {
  const given = new URLSearchParams(query);
  const problems: Problem[] = [];
  const choice = <Value extends string>(name: string, options: readonly Value[], otherwise: Value): Value => {
    const text = given.get(name);
    if (text === null) return otherwise;
    const found = options.find((option) => option === text);
    if (found === undefined)
      problems.push({ field: name, value: text || 'nothing', rule: { kind: 'choice', options } });
    return found ?? otherwise;
  };
  const number = (
    name: string,
    { low, high, unit }: { readonly low: number; readonly high: number; readonly unit: string },
    otherwise: number,
    step: number | null = null,
  ): number => {
    const text = given.get(name);
    if (text === null) return otherwise;
    const value = Number(text);
    const fits = text.trim() !== '' && value >= low && value <= high && (step === null || Number.isInteger(value));
    if (!fits) problems.push({ field: name, value: text || 'nothing', rule: { kind: 'range', low, high, step, unit } });
    return fits ? value : otherwise;
  };
  const pieces = { ...countLimits, unit: '' };
  const run = query
    .split('&')
    .filter((piece) => piece !== '' && !ownNames.includes(piece.split('=')[0]!))
    .join('&');
  return {
    asked: {
      project: choice('project', [...projectIds, 'own'] as const, firstAsked.project),
      count: number('count', pieces, 1, 1),
      own: {
        yards: number('yards', ownClothLimits.yards, firstAsked.own.yards),
        widthInches: number('width', ownClothLimits.widthInches, firstAsked.own.widthInches),
        ouncesPerSquareYard: number('weight', ownClothLimits.ouncesPerSquareYard, firstAsked.own.ouncesPerSquareYard),
      },
      start: choice('from', startIds, firstAsked.start),
      startCount: number('of', pieces, 1, 1),
      stated: choice('through', ['averages', 'season'] as const, 'season') === 'averages',
      run: run === '' ? null : run,
    },
    problems,
  };
}
