import type { Check } from './check.ts';
import { lengthLawChecks } from './length-law-checks.ts';
import { lengthLevelChecks } from './length-level-checks.ts';
import { lengthSampleChecks } from './length-sample-checks.ts';
import { lengthShiftChecks } from './length-shift-checks.ts';

export const lengthChecks: readonly Check[] = [
  ...lengthLawChecks,
  ...lengthLevelChecks,
  ...lengthShiftChecks,
  ...lengthSampleChecks,
];
