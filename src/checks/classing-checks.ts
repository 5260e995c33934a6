import type { Check } from './check.ts';

export const classingChecks: readonly Check[] = [];
