import type { Check } from './check.ts';

export const seasonChecks: readonly Check[] = [];
