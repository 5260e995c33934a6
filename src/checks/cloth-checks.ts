import type { Check } from './check.ts';

export const clothChecks: readonly Check[] = [];
