/**
 * The standards a lesson may name: Family and Consumer Sciences area 16 (National Standards 3.0, 2018) and the Next
 * Generation Science Standards. What each says stands in the words of the lesson pages.
 */
export const standardCodes = [
  '16.1.4',
  '16.2.1',
  '16.2.2',
  '16.2.3',
  '16.2.4',
  '16.2.5',
  '16.3.1',
  '2-PS1-1',
  '2-PS1-2',
  '3-LS1-1',
  '5-PS1-2',
  '5-PS1-3',
  'MS-PS1-3',
] as const;
export type StandardCode = (typeof standardCodes)[number];

/** The framework a code belongs to, by the name that machines read. */
export const frameworkOf = (code: StandardCode): string =>
  /PS|LS/.test(code)
    ? 'Next Generation Science Standards'
    : 'National Standards for Family and Consumer Sciences Education';
