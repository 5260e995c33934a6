/** A piece of a sentence: words, or one of the values, by its place in the list. */
export interface Piece {
  readonly text: string;
  readonly value: number | null;
}

const partOfNumber = /[\d.,]/;

/**
 * Cuts a sentence wherever it says one of the values. The longest value that fits is taken, and never a piece of a longer
 * number: 5 is not found in 15, nor in 5.2.
 * @param values as they are written, such as 1,367.6 lb
 */
export function splitAtValues(sentence: string, values: readonly string[]): Piece[] {
  const longestFirst = values.map((text, value) => ({ text, value })).sort((a, b) => b.text.length - a.text.length);
  const pieces: Piece[] = [];
  let words = '';
  let at = 0;
  while (at < sentence.length) {
    const found = partOfNumber.test(sentence[at - 1] ?? '')
      ? undefined
      : longestFirst.find(({ text }) => sentence.startsWith(text, at) && !continues(sentence, at + text.length));
    if (found) {
      if (words !== '') pieces.push({ text: words, value: null });
      words = '';
      pieces.push(found);
      at += found.text.length;
    } else {
      words += sentence[at];
      at++;
    }
  }
  return words === '' ? pieces : [...pieces, { text: words, value: null }];
}

/** Whether a number goes on at a place: a digit, or a point or comma with a digit behind it. */
const continues = (sentence: string, at: number): boolean => /^[.,]?\d/.test(sentence.slice(at, at + 2));
