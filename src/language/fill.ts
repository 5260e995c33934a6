/** A word in each number form it takes. Spanish has a form of its own for whole millions. */
export interface PluralForms {
  readonly one: string;
  readonly many?: string;
  readonly other: string;
}

/**
 * Puts values into a sentence.
 * @param template text with names in braces, such as 'Station {number} of {all}'
 * @param values a text for each name; a name without a value stays as it is, so that it is seen
 */
export const fill = (template: string, values: Readonly<Record<string, string>>): string =>
  template.replace(/\{(\w+)\}/g, (whole, name: string) => values[name] ?? whole);
