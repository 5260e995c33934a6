import type { Check } from './check.ts';
import { classingChecks } from './classing-checks.ts';
import { clothChecks } from './cloth-checks.ts';
import { fieldChecks } from './field-checks.ts';
import { ginChecks } from './gin-checks.ts';
import { lengthChecks } from './length-checks.ts';
import { millChecks } from './mill-checks.ts';
import { seasonChecks } from './season-checks.ts';
import { traceChecks } from './trace-checks.ts';
import { unitsChecks } from './units-checks.ts';

/** Every check against the outside, in the order of the chain. The tests, the command line and the Sources page all run this one table. */
export const allChecks: readonly Check[] = [
  ...unitsChecks,
  ...fieldChecks,
  ...ginChecks,
  ...lengthChecks,
  ...classingChecks,
  ...millChecks,
  ...clothChecks,
  ...traceChecks,
  ...seasonChecks,
];
