import type { Check } from './check.ts';

export const lengthChecks: readonly Check[] = [];
