/** Pages of the Teach part that print. */
export const paperPageIds = ['sheets', 'keys', 'handouts', 'recap'] as const;
export type PaperPageId = (typeof paperPageIds)[number];
