import { summariseChecks } from '../checks/summarise-checks.ts';
import { checksText } from './checks-text.ts';
import type { Io } from './main.ts';
import { readOptions } from './options.ts';
import { runChecks } from './run-checks.ts';

/** A check failed: one line that names those that did. Exit code 1. */
export class ChecksFailed extends Error {}

/**
 * Runs every check against the outside and tells how many hold, by kind.
 * @throws ChecksFailed, once the result is out, when any failed
 */
export function checksCommand(args: readonly string[], io: Io, run = runChecks): void {
  const { json } = readOptions(args, { json: 'flag' });
  const result = run();
  const summary = summariseChecks(result.judged, result.notRun);
  io.out(json ? JSON.stringify(summary, null, 2) : checksText(result));
  if (summary.failed === 0) return;
  const failed = result.judged.filter(({ passed }) => !passed);
  throw new ChecksFailed(`checks failed: ${failed.map(({ check }) => check.id).join(', ')}`);
}
