import { fill } from './fill.ts';

const escaped = (text: string): string => text.replace(/[.*+?^$()|[\]\\]/g, '\\$&');

/**
 * Puts a line that a reader or a check wrote in English into the reader's language.
 * @param line the English line
 * @param phrases English templates with names in braces, and what each becomes; the first that fits is used
 * @returns the line in the reader's language, or as it stands where no template fits
 */
export function phrase(line: string, phrases: Readonly<Record<string, string>>): string {
  for (const [template, words] of Object.entries(phrases)) {
    const pattern = escaped(template).replace(/\{(\w+)\}/g, '(?<$1>.+)');
    const found = new RegExp(`^${pattern}$`).exec(line);
    if (found) return fill(words, { ...found.groups });
  }
  return line;
}
