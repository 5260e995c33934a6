import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { endsPerInch, sampleTurnsPerInch } from '../../../lessons/computed/length.ts';
import { sampleCottonIds } from '../../../lessons/sample-cottons.ts';
import { useLesson } from '../lesson-frame.ts';
import { numberText, type Writable } from '../number-text.ts';
import { CottonPads } from './cotton-pads.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

export const lengthArrayDoc: FigureDoc = {
  name: 'LengthArray',
  words: 'lengthArray',
  options: [{ name: 'cotton', values: sampleCottonIds, usual: 'medium' }],
};

/** Four cottons, and the thread each makes. */
export function LengthArray({ cotton }: { readonly cotton?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.lengthArray;
  const write = (number: Writable) => numberText(number, words, lessons).text;
  const plain = (value: number) => write({ as: 'plain', value });
  const length = (value: number) => write({ as: 'fibreLength', value });
  return (
    <CottonPads
      ids={sampleCottonIds}
      first={optionValue<(typeof sampleCottonIds)[number]>(lengthArrayDoc, 'cotton', cotton)}
      text={text}
      says={({ id }) => fill(text.says, { cotton: text.cottons[id] })}
      note={text.thread}
      rows={[
        { name: text.rows.staple, cell: ({ upperHalfMeanMm }) => length(upperHalfMeanMm) },
        { name: text.rows.mean, cell: ({ meanMm }) => length(meanMm) },
        { name: text.rows.short, cell: ({ shortPercentByNumber }) => plain(shortPercentByNumber) },
        { name: text.rows.ends, cell: ({ id }) => plain(endsPerInch(id)) },
        { name: text.rows.turns, cell: ({ id }) => plain(sampleTurnsPerInch(id)) },
      ]}
    />
  );
}
