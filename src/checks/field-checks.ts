import type { Check } from './check.ts';

export const fieldChecks: readonly Check[] = [];
