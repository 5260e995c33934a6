/** The inks a patch can be cut from. */
export type PatchInk = 'paper' | 'lint' | 'weld' | 'indigo' | 'deep' | 'madder' | 'walnut';

/** One of three cuts for a patch, fixed by its name, so that a piece keeps its edge from one drawing to the next. */
export function cutOf(name: string): 1 | 2 | 3 {
  let sum = 0;
  for (const letter of name) sum = (sum * 31 + (letter.codePointAt(0) ?? 0)) % 9973;
  return ((sum % 3) + 1) as 1 | 2 | 3;
}
