import type { Check, CheckKind, Expected } from '../checks/check.ts';
import { summariseChecks } from '../checks/summarise-checks.ts';
import type { ChecksRun } from './run-checks.ts';

/** A figure of four digits; words as they are. */
const figure = (value: number | string): string =>
  typeof value === 'string' ? value : String(Number(value.toPrecision(4)));

function expectedText(expected: Expected): string {
  switch (expected.kind) {
    case 'near':
      return `${figure(expected.value)} ± ${figure(expected.tolerance)}`;
    case 'between':
      return `${figure(expected.low)} to ${figure(expected.high)}`;
    case 'is':
      return expected.word;
  }
}

/** One check in two lines: what is said outside and what is ours, and why they differ. */
function checkText({ id, what, unit, expected, source }: Check, ours: number | string, why: string): string {
  const figures = `published ${expectedText(expected)}${unit === '' ? '' : ` ${unit}`}, ours ${figure(ours)}`;
  return `${id}: ${what}\n  ${figures} (${source})${why === '' ? '' : `\n  ${why}`}`;
}

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ['', title, ...lines];

/** The summary in words, with the known misses and their reasons, what failed, and what could not be run. */
export function checksText({ judged, notRun, disagreed }: ChecksRun): string {
  const { counted, definition, plainSum, knownMiss, failed, notRun: absent } = summariseChecks(judged, notRun);
  const held = judged.filter(({ check, passed }) => passed && !notRun.has(check.id));
  const of = (kind: CheckKind) => held.filter(({ check }) => check.kind === kind);
  return [
    `${counted} outside checks hold: ${of('exact').length} exact, ${of('calibrated').length} calibrated, ${of('notTuned').length} not tuned`,
    `${definition} definitions and ${plainSum} plain sums hold; they are not counted`,
    `${knownMiss} known misses, ${failed} failed, ${absent} not run`,
    ...section(
      'Known misses',
      of('knownMiss').map(({ check, ours }) => checkText(check, ours, check.kind === 'knownMiss' ? check.reason : '')),
    ),
    ...section(
      'Failed',
      judged.flatMap(({ check, ours, passed }) => {
        const said = disagreed.get(check.id);
        return passed ? [] : [checkText(check, ours, said === undefined ? '' : `${check.tool?.name} now says ${said}`)];
      }),
    ),
    ...section(
      'Not run: the outside tool is not installed here',
      judged.flatMap(({ check }) => (notRun.has(check.id) ? [`${check.id}: asks ${check.tool?.name}`] : [])),
    ),
  ].join('\n');
}
