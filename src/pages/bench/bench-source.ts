import type { Words } from '../../language/words.ts';
import type { WorkingSource } from '../../ui/working-source.ts';
import type { BenchReading } from '../../workings/bench/bench-reading.ts';
import { printed } from '../season/printed.ts';
import type { BenchWords } from './bench-words.ts';

/** What a number of the bench needs to open its working. @param where tells two numbers apart that have the same working */
export const benchSource = (
  reading: BenchReading,
  name: string,
  words: Words,
  said: BenchWords,
  where: string,
): WorkingSource => ({
  key: `${where}/${reading.key}`,
  name,
  on: reading,
  load: () =>
    import('../season/working-text.ts').then(({ workingInWords }) => workingInWords(reading.working, words, said)),
});

/** A reading as the page prints it; a customs class comes as its name. */
export function readingText({ key, shown }: BenchReading, words: Words, said: BenchWords): string {
  if (key === 'customs' && shown.as === 'text')
    return (said.cloth.customs as Readonly<Record<string, string>>)[shown.text] ?? shown.text;
  return printed(shown, words);
}

/** What a reading is called: waste goes by the name of where it goes. */
export function readingName({ key }: BenchReading, words: Words, said: BenchWords): string {
  const { destinations } = words.messages.accounts;
  if (key.startsWith('waste.')) return (destinations as Readonly<Record<string, string>>)[key.slice(6)] ?? key;
  return said.numbers[key] ?? said.questions.threads[key] ?? key;
}
