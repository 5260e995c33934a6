import type { JudgedCheck } from './judge-check.ts';

/** How many checks of each kind; a failed or unrun check stands in no other number. */
export interface CheckSummary {
  /** Exact, calibrated and not tuned: what counts as checked against the outside. */
  readonly counted: number;
  readonly definition: number;
  readonly plainSum: number;
  readonly knownMiss: number;
  readonly failed: number;
  /** Checks whose outside tool is absent here. */
  readonly notRun: number;
}

/**
 * Counts checks by kind.
 * @param notRun ids of checks whose outside tool could not be asked
 */
export function summariseChecks(judged: readonly JudgedCheck[], notRun: ReadonlySet<string> = new Set()): CheckSummary {
  const summary = { counted: 0, definition: 0, plainSum: 0, knownMiss: 0, failed: 0, notRun: 0 };
  for (const { check, passed } of judged) {
    if (notRun.has(check.id)) summary.notRun += 1;
    else if (!passed) summary.failed += 1;
    else if (check.kind === 'definition' || check.kind === 'plainSum' || check.kind === 'knownMiss')
      summary[check.kind] += 1;
    else summary.counted += 1;
  }
  return summary;
}
