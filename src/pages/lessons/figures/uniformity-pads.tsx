import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { endsPerInch, threadVariation } from '../../../lessons/computed/length.ts';
import { evennessIds } from '../../../lessons/sample-cottons.ts';
import { useLesson } from '../lesson-frame.ts';
import { numberText, type Writable } from '../number-text.ts';
import { CottonPads } from './cotton-pads.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

export const uniformityPadsDoc: FigureDoc = {
  name: 'UniformityPads',
  words: 'uniformityPads',
  options: [{ name: 'cotton', values: evennessIds, usual: 'medium' }],
};

/** Three cottons with one length on the tag, and very different short ends. */
export function UniformityPads({ cotton }: { readonly cotton?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.uniformityPads;
  const write = (number: Writable) => numberText(number, words, lessons).text;
  const plain = (value: number) => write({ as: 'plain', value });
  const length = (value: number) => write({ as: 'fibreLength', value });
  const percent = (value: number, decimals = 0) => write({ as: 'percentage', value, decimals });
  return (
    <CottonPads
      ids={evennessIds}
      first={optionValue<(typeof evennessIds)[number]>(uniformityPadsDoc, 'cotton', cotton)}
      text={text}
      says={({ id, uniformityPercent }) =>
        fill(text.says, { cotton: text.cottons[id], uniformity: percent(uniformityPercent) })
      }
      note={lessons.figures.lengthArray.thread}
      rows={[
        { name: text.rows.staple, cell: ({ upperHalfMeanMm }) => length(upperHalfMeanMm) },
        { name: text.rows.uniformity, cell: ({ uniformityPercent }) => percent(uniformityPercent) },
        { name: text.rows.mean, cell: ({ meanMm }) => length(meanMm) },
        { name: text.rows.short, cell: ({ shortPercentByNumber }) => plain(shortPercentByNumber) },
        { name: text.rows.weight, cell: ({ shortPercentByWeight }) => percent(shortPercentByWeight) },
        { name: text.rows.ends, cell: ({ id }) => plain(endsPerInch(id)) },
        { name: text.rows.variation, cell: ({ id }) => percent(threadVariation(id), 1) },
      ]}
    />
  );
}
