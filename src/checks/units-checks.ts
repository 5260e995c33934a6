import type { Check } from './check.ts';

export const unitsChecks: readonly Check[] = [];
