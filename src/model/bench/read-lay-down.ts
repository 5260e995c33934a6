import { csvParseRows } from 'd3-dsv';
import { benchFacts } from '../mill/bench-limit-facts.ts';
import type { Checked, Problem } from '../problem.ts';
import { POUNDS_PER_STATISTICAL_BALE } from '../units.ts';
import { baleLimits, limitsOf, numberWithin } from './check-set-up.ts';
import { cardOf, type LaidBale } from './set-up.ts';

type Column = keyof typeof baleLimits | 'kind';

/** Names that a column may go by, in small letters without spaces. */
const names: Readonly<Record<string, Column>> = {
  kind: 'kind',
  length: 'lengthIn',
  staple: 'lengthIn',
  uniformity: 'uniformityPercent',
  strength: 'strengthGPerTex',
  micronaire: 'micronaire',
  mic: 'micronaire',
  rd: 'reflectanceRd',
  b: 'yellownessB',
  '+b': 'yellownessB',
  leaf: 'leaf',
  trash: 'trashAreaPercent',
  net: 'netLb',
};
/** Without these a bale says too little of its fibre. */
const needed: readonly Column[] = ['lengthIn', 'uniformityPercent', 'strengthGPerTex', 'micronaire'];
const columnOf = (head: string): Column | undefined => names[head.trim().toLowerCase().replaceAll(' ', '')];
const nameOf = (column: Column): string => Object.keys(names).find((name) => names[name] === column) ?? column;

/** Where a value stands in a file, for a problem: line 1 is the head. */
const placeOf = (line: number, column: Column): string => `line ${line}, ${nameOf(column)}`;

function readBale(
  cells: readonly string[],
  columns: readonly (Column | undefined)[],
  line: number,
  problems: Problem[],
) {
  const textOf = (column: Column) => cells[columns.indexOf(column)]?.trim();
  const kindText = textOf('kind')?.toLowerCase();
  if (kindText && kindText !== 'upland' && kindText !== 'pima')
    problems.push({
      field: placeOf(line, 'kind'),
      value: kindText,
      rule: { kind: 'choice', options: ['upland', 'pima'] },
    });
  const kind = kindText === 'pima' ? 'pima' : 'upland';
  const bale: Record<string, number> = {
    ...(cardOf('uplandMedium') as unknown as Record<string, number>),
    netLb: POUNDS_PER_STATISTICAL_BALE,
  };
  for (const column of Object.keys(baleLimits) as (keyof typeof baleLimits)[]) {
    const text = textOf(column);
    // A column that is not there, or a cell left empty where it may be, takes what a middling bale has.
    if (!columns.includes(column) || (text === '' && !needed.includes(column))) continue;
    const limits = column === 'netLb' ? baleLimits.netLb : limitsOf(column, kind);
    const read = numberWithin(placeOf(line, column), text ?? '', limits, column === 'leaf');
    if ('problem' in read) problems.push(read.problem);
    else bale[column] = read.value;
  }
  return { ...bale, kind } as LaidBale;
}

/**
 * Reads a lay-down: a head with length, uniformity, strength and micronaire in any order, and kind, rd, b, leaf, trash or net
 * where they are known; one bale a line. Lengths in inches, strengths in g/tex, weights in pounds.
 * @returns the bales, or what is wrong line by line
 */
export function readLayDown(text: string): Checked<readonly LaidBale[]> {
  const [head = [], ...lines] = csvParseRows(text.replace(/^\ufeff/, ''));
  const columns = head.map(columnOf);
  const missing = needed.filter((column) => !columns.includes(column));
  const problems: Problem[] = missing.map((column) => ({
    field: placeOf(1, column),
    value: '',
    rule: { kind: 'type', expected: 'a column of this name' },
  }));
  if (problems.length > 0) return { ok: false, problems };
  const filled = lines
    .map((cells, at) => ({ cells, line: at + 2 }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  const most = benchFacts.mostBales.value;
  if (filled.length < 1 || filled.length > most)
    return {
      ok: false,
      problems: [
        {
          field: 'bales',
          value: String(filled.length),
          rule: { kind: 'range', low: 1, high: most, step: 1, unit: 'bales' },
        },
      ],
    };
  const bales = filled.map(({ cells, line }) => readBale(cells, columns, line, problems));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: bales };
}
