import type { Check } from './check.ts';
import { clothFeelChecks } from './cloth-feel-checks.ts';
import { clothGeometryChecks } from './cloth-geometry-checks.ts';
import { clothProjectChecks } from './cloth-project-checks.ts';
import { clothWeightChecks } from './cloth-weight-checks.ts';

export const clothChecks: readonly Check[] = [
  ...clothWeightChecks,
  ...clothGeometryChecks,
  ...clothFeelChecks,
  ...clothProjectChecks,
];
