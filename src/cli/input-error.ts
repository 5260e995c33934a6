import { type Problem, problemLine } from '../model/problem.ts';

/** Bad input on the command line: one line that names the field, the value and what is allowed. Exit code 2. */
export class InputError extends Error {}

/** An InputError of a problem. */
export const badInput = (field: string, value: string, allowed: string): InputError =>
  new InputError(`${field}: ${value} is not allowed; allowed: ${allowed}`);

/** An InputError of the first of some problems, saying how many more there are. */
export function problemsError(problems: readonly Problem[]): InputError {
  const more = problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
  return new InputError(problemLine(problems[0]!) + more);
}
