import type { Expected } from './check.ts';

/** A number with its tolerance either way. */
export const near = (value: number, tolerance: number): Expected => ({ kind: 'near', value, tolerance });
/** A number with its tolerance as a share of it. */
export const nearShare = (value: number, share: number): Expected => near(value, Math.abs(value) * share);
/** A band, its ends included. */
export const between = (low: number, high: number): Expected => ({ kind: 'between', low, high });
export const is = (word: string): Expected => ({ kind: 'is', word });
