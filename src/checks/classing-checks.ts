import type { Check } from './check.ts';
import { classingCropChecks } from './classing-crop-checks.ts';
import { classingGradeChecks } from './classing-grade-checks.ts';
import { classingMoneyChecks } from './classing-money-checks.ts';
import { classingOfficeChecks } from './classing-office-checks.ts';

export const classingChecks: readonly Check[] = [
  ...classingGradeChecks,
  ...classingOfficeChecks,
  ...classingMoneyChecks,
  ...classingCropChecks,
];
