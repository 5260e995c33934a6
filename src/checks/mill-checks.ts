import type { Check } from './check.ts';

export const millChecks: readonly Check[] = [];
