import { allChecks } from '../../checks/all-checks.ts';
import type { Check, Expected, OutsideTool } from '../../checks/check.ts';
import { fill } from '../../language/fill.ts';
import type { Formats } from '../../language/formats.ts';
import type { SourcesWords } from './sources-words.ts';

/** What the worker tells of one check. Functions do not travel, so a row is named by its id. */
export interface CheckAnswer {
  readonly id: string;
  readonly ours: number | string;
  readonly passed: boolean;
}

/** Outside tools as they call themselves. */
export const toolNames: Readonly<Record<OutsideTool['name'], string>> = {
  units: 'GNU units',
  psychrolib: 'PsychroLib',
  'simple-statistics': 'simple-statistics',
};

/** A figure short enough to read and long enough to compare. */
const figure = (value: number, formats: Formats): string => {
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-3 || size >= 1e7)) return value.toPrecision(4);
  // Four figures, and no zeros behind that say nothing.
  const short = Number(value.toPrecision(4));
  const decimals = String(short).split('.')[1]?.length ?? 0;
  return formats.number(short, decimals);
};

/** The published figure with its tolerance, band or word. */
export function expectedText(expected: Expected, words: SourcesWords, formats: Formats): string {
  if (expected.kind === 'is') return expected.word;
  if (expected.kind === 'near')
    return fill(words.within, {
      value: figure(expected.value, formats),
      tolerance: figure(expected.tolerance, formats),
    });
  const { low, high } = expected;
  if (high === Number.POSITIVE_INFINITY) return fill(words.atLeast, { low: figure(low, formats) });
  if (low === Number.NEGATIVE_INFINITY) return fill(words.atMost, { high: figure(high, formats) });
  return fill(words.between, { low: figure(low, formats), high: figure(high, formats) });
}

export const oursText = (ours: number | string, formats: Formats): string =>
  typeof ours === 'number' ? figure(ours, formats) : ours;

/** The checks as rows of a file, published beside ours. */
export function checkCsv(answers: ReadonlyMap<string, CheckAnswer>): (string | number)[][] {
  const low = ({ expected }: Check) =>
    expected.kind === 'between' ? expected.low : expected.kind === 'near' ? expected.value - expected.tolerance : '';
  const high = ({ expected }: Check) =>
    expected.kind === 'between' ? expected.high : expected.kind === 'near' ? expected.value + expected.tolerance : '';
  return [
    ['id', 'link', 'kind', 'what', 'unit', 'expected', 'low', 'high', 'ours', 'passed', 'source', 'reason'],
    ...allChecks.map((check) => [
      check.id,
      check.link,
      check.kind,
      check.what,
      check.unit,
      check.expected.kind === 'is' ? check.expected.word : check.expected.kind === 'near' ? check.expected.value : '',
      low(check),
      high(check),
      answers.get(check.id)?.ours ?? '',
      String(answers.get(check.id)?.passed ?? ''),
      check.source,
      check.kind === 'knownMiss' ? check.reason : '',
    ]),
  ];
}
