import * as v from 'valibot';

/** Parts of the glossary, each a file. */
export const glossaryAreas = ['fiber', 'field', 'gin', 'classing', 'mill', 'cloth', 'sewing'] as const;

const line = v.pipe(v.string(), v.trim(), v.nonEmpty());
const entry = v.strictObject({
  term: line,
  /** One or two sentences. */
  says: line,
  /** Other words for the same, elsewhere or in the trade. */
  also: v.optional(line),
});
export const glossarySchema = v.record(v.pipe(v.string(), v.regex(/^[a-z][a-z-]*$/)), entry);

export type GlossaryEntry = v.InferOutput<typeof entry>;
/** Entries by id. */
export type Glossary = Readonly<Record<string, GlossaryEntry>>;
