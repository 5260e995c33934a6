import type { LessonWords } from '../lesson-words.ts';

/** One thing an author can set on a figure. */
export interface FigureOption {
  readonly name: string;
  readonly values: readonly string[];
  /** The value when it is left out. */
  readonly usual: string;
}

/** A figure described by itself: the page for authors is made of these, and a test renders each with every value. */
export interface FigureDoc {
  /** The name in a lesson: `<LengthArray cotton="short" />`. */
  readonly name: string;
  /** Key of its words. */
  readonly words: keyof LessonWords['figures']['titles'];
  readonly options: readonly FigureOption[];
}

/**
 * The value an author set, or the usual one.
 * @throws RangeError for a value the figure does not know
 */
export function optionValue<Value extends string>(doc: FigureDoc, name: string, given: string | undefined): Value {
  const option = doc.options.find((one) => one.name === name);
  const value = given ?? option?.usual ?? '';
  if (!option?.values.includes(value))
    throw new RangeError(`${doc.name}: ${name} is one of ${option?.values.join(', ')}`);
  return value as Value;
}
