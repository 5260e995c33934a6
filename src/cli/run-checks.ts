import { allChecks } from '../checks/all-checks.ts';
import type { Check } from '../checks/check.ts';
import { type JudgedCheck, judgeCheck } from '../checks/judge-check.ts';
import { agreesWith, askTool } from './outside-tools.ts';

/** Every check, run once, with the outside tools asked. */
export interface ChecksRun {
  readonly judged: readonly JudgedCheck[];
  /** Ids of checks that hold against the figure in the table, but whose outside tool is not installed here. */
  readonly notRun: ReadonlySet<string>;
  /** What a tool said, by id, where it is not what the table expects; such a check counts as failed. */
  readonly disagreed: ReadonlyMap<string, number>;
}

/**
 * Runs checks, and asks the outside tools for the figures that rest on them.
 * @param ask gives a tool's figure, or null where the tool is absent
 */
export function runChecks(checks: readonly Check[] = allChecks, ask: typeof askTool = askTool): ChecksRun {
  const notRun = new Set<string>();
  const disagreed = new Map<string, number>();
  const judged = checks.map((check): JudgedCheck => {
    const answer = check.tool ? ask(check.tool) : undefined;
    const own = judgeCheck(check);
    if (answer === null && own.passed) notRun.add(check.id);
    if (answer === null || answer === undefined || agreesWith(check.expected, answer)) return own;
    disagreed.set(check.id, answer);
    return { ...own, passed: false };
  });
  return { judged, notRun, disagreed };
}
