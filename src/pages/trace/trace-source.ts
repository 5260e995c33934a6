import type { Words } from '../../language/words.ts';
import type { WorkingSource } from '../../ui/working-source.ts';
import type { Working } from '../../workings/working.ts';

/**
 * What a number of the trace needs to open its working; the words of workings are fetched with the first one opened.
 * @param key one for each number of the page
 * @param name what the number is called
 * @param on what it was computed from
 */
export const traceSource = (
  key: string,
  name: string,
  on: unknown,
  words: Words,
  working: () => Working | Promise<Working>,
): WorkingSource => ({
  key: `trace/${key}`,
  name,
  on,
  load: async () => {
    const [{ wordedWorking }, made] = await Promise.all([import('../season/working-text.ts'), working()]);
    return wordedWorking(made, words);
  },
});
