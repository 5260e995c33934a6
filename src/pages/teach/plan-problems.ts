import { phrase } from '../../language/phrase.ts';
import { problemText } from '../../language/problem-text.ts';
import type { Words } from '../../language/words.ts';
import type { Problem } from '../../model/problem.ts';
import type { TeachWords } from './use-teach-words.ts';

/** Problems of a plan with the phrases of these pages put in the reader's language. */
export const namedProblems = (problems: readonly Problem[], said: TeachWords['said']): readonly Problem[] =>
  problems.map(({ field, value, rule }) => ({
    field: said.fields[field] ?? field,
    value: phrase(value, said.phrases),
    rule: rule.kind === 'type' ? { kind: 'type', expected: phrase(rule.expected, said.phrases) } : rule,
  }));

/** Problems of a plan, one line each in the reader's language. */
export const planProblems = (
  problems: readonly Problem[],
  words: Words,
  said: TeachWords['said'],
): readonly string[] => [
  ...new Set(namedProblems(problems, said).map((problem) => problemText(problem, words.messages, words.formats))),
];
