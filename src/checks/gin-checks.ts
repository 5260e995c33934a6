import type { Check } from './check.ts';

export const ginChecks: readonly Check[] = [];
