import { dsvFormat } from 'd3-dsv';
import type { Checked, Problem } from '../problem.ts';
import { readIsoDate } from './calendar.ts';
import { recordFacts } from './record-facts.ts';

/** One line of a weather record, still in its own units. Null stands for a value left empty. */
export interface RecordRow {
  /** Line in the file, the header being 1. */
  readonly line: number;
  readonly year: number;
  /** 1 to 365; 0 is 29 February. */
  readonly dayOfYear: number;
  readonly max: number | null;
  readonly min: number | null;
  readonly rain: number | null;
  readonly latitude: number | null;
}

const needed = ['DATE', 'TMAX', 'TMIN', 'PRCP'] as const;
/** A plain decimal number: no hexadecimal, no words, which the language would take too. */
const decimal = /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i;

const bad = (field: string, value: string, expected: string): Problem => ({
  field,
  value: value === '' ? 'nothing' : value,
  rule: { kind: 'type', expected },
});

/** The mark between columns: whichever of the usual ones the header holds most. */
function delimiterOf(header: string): string {
  const count = (mark: string) => header.split(mark).length;
  return [',', ';', '\t'].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}

/** Takes a record apart into lines; finds the columns, the dates and the numbers, not yet what they mean. */
export function parseRecord(csv: string): Checked<RecordRow[]> {
  const text = csv.replace(/^\uFEFF/, '').trim();
  const header = text.split(/\r?\n/, 1)[0]!;
  const [names, ...lines] = dsvFormat(delimiterOf(header)).parseRows(text);
  const columns = (names ?? []).map((name) => name.trim().toUpperCase());
  const missing = needed.filter((name) => !columns.includes(name));
  if (missing.length > 0) {
    const found = columns.filter((name) => name !== '').join(', ');
    return {
      ok: false,
      problems: missing.map((name) => bad(`column ${name}`, found, 'a header with DATE, TMAX, TMIN, PRCP')),
    };
  }
  const twice = [...needed, 'LATITUDE'].filter((name) => columns.indexOf(name) !== columns.lastIndexOf(name));
  if (twice.length > 0) {
    return { ok: false, problems: twice.map((name) => bad(`column ${name}`, 'given twice', 'each column once')) };
  }
  const at = (name: string) => columns.indexOf(name);
  const problems: Problem[] = [];
  const rows: RecordRow[] = [];
  const seen = new Set<string>();
  lines.forEach((cells, index) => {
    const line = index + 2;
    if (cells.every((cell) => cell.trim() === '')) return;
    const number = (name: string): number | null => {
      const cell = (cells[at(name)] ?? '').trim();
      if (cell === '') return null;
      const value = decimal.test(cell) ? Number(cell) : Number.NaN;
      if (!Number.isFinite(value)) problems.push(bad(`${name}, line ${line}`, cell, 'a number'));
      return value;
    };
    const written = (cells[at('DATE')] ?? '').trim();
    const date = readIsoDate(written);
    if (!date) {
      problems.push(bad(`DATE, line ${line}`, written, 'a date as YYYY-MM-DD'));
      return;
    }
    const key = `${date.year} ${date.dayOfYear}`;
    if (seen.has(key)) problems.push(bad(`DATE, line ${line}`, written, 'each date once'));
    seen.add(key);
    const latitude = at('LATITUDE') >= 0 ? number('LATITUDE') : null;
    rows.push({ line, ...date, max: number('TMAX'), min: number('TMIN'), rain: number('PRCP'), latitude });
  });
  if (problems.length > 0) return { ok: false, problems: problems.slice(0, recordFacts.mostProblems.value) };
  if (rows.length === 0) return { ok: false, problems: [bad('file', '', 'one line for each day')] };
  return { ok: true, value: rows };
}
