import type { DecisionsOf } from '../decisions.ts';
import { lintCleanerKinds } from './machine-facts.ts';

/** The most lint cleaners of a kind that a gin sets in line. */
export const mostLintCleaners = (kind: DecisionsOf<'ginning'>['lintCleaner']): number =>
  lintCleanerKinds[kind].mostInLine.value;
