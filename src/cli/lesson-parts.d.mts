/** Adds `export const parts` to an MDX file: components, facts, computed numbers and terms it uses. */
export const lessonParts: () => (tree: unknown) => void;
