import type { Check } from './check.ts';

export const traceChecks: readonly Check[] = [];
