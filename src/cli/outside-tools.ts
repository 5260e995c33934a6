import type { Expected, OutsideTool } from '../checks/check.ts';
import { askPsychrolib } from './ask-psychrolib.ts';
import { askSimpleStatistics } from './ask-simple-statistics.ts';
import { askUnits } from './ask-units.ts';

/**
 * Asks an outside tool for the figure that a check expects.
 * @returns the figure, in the check's unit; null where the tool is not installed here
 */
export function askTool(tool: OutsideTool): number | null {
  switch (tool.name) {
    case 'units':
      return askUnits(tool.from, tool.to);
    case 'psychrolib':
      return askPsychrolib(tool.call, tool.args);
    case 'simple-statistics':
      return askSimpleStatistics(tool.call);
  }
}

/** Digits of a tool's answer that a table keeps: its figure may be rounded by this share, and never by more than the check allows. */
const roundedShare = 1e-3;

/** Whether the figure a check expects is what the tool says. A band or a word comes from no tool. */
export function agreesWith(expected: Expected, answer: number): boolean {
  if (expected.kind !== 'near') return false;
  const allowed = Math.min(expected.tolerance, Math.abs(expected.value) * roundedShare);
  return Math.abs(expected.value - answer) <= allowed;
}
