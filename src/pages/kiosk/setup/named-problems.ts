import { phrase } from '../../../language/phrase.ts';
import type { Problem } from '../../../model/problem.ts';
import type { SetupWords } from './use-setup-words.ts';

/** Problems of a file with the phrases that only these files need put into the reader's language. */
export const namedProblems = (problems: readonly Problem[], { phrases }: SetupWords): readonly Problem[] =>
  problems.map(({ field, value, rule }) => ({
    field,
    value: phrase(value, phrases),
    rule: rule.kind === 'type' ? { kind: 'type', expected: phrase(rule.expected, phrases) } : rule,
  }));
