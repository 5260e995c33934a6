import { useWords } from '../../language/words.ts';
import { Filled } from '../../ui/filled.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import type { BenchReading } from '../../workings/bench/bench-reading.ts';
import { benchSource, readingName, readingText } from './bench-source.ts';
import { benchWords } from './bench-words.ts';

export interface SaidTextProps {
  /** A sentence with names in the places of its numbers. */
  readonly template: string;
  readonly numbers: Readonly<Record<string, BenchReading>>;
  /** Tells the numbers of this sentence from those of others. */
  readonly where: string;
}

/** A sentence whose numbers open their workings below it. */
export function SaidText({ template, numbers, where }: SaidTextProps) {
  const words = useWords();
  const said = benchWords(words.language);
  const inTemplate = Object.entries(numbers).filter(([place]) => template.includes(`{${place}}`));
  const entries = inTemplate.map(([place, reading]) => {
    const source = benchSource(reading, readingName(reading, words, said), words, said, where);
    return { place, source, node: <WorkingNumber text={readingText(reading, words, said)} source={source} /> };
  });
  return (
    <>
      <Filled template={template} parts={Object.fromEntries(entries.map(({ place, node }) => [place, node]))} />
      <WorkingPlace sources={entries.map(({ source }) => source)} />
    </>
  );
}

/** The same sentence as plain text, for those who listen. */
export function usePlainText(): (template: string, numbers: SaidTextProps['numbers']) => string {
  const words = useWords();
  const said = benchWords(words.language);
  return (template, numbers) =>
    template.replace(/\{(\w+)\}/g, (whole, place: string) => {
      const reading = numbers[place];
      return reading ? readingText(reading, words, said) : whole;
    });
}
