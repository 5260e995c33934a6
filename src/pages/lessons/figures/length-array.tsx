import { useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { endsPerInch, sampleTurnsPerInch } from '../../../lessons/computed/length.ts';
import { readSample, sampleCottonIds } from '../../../lessons/sample-cottons.ts';
import { ChoiceRow } from '../../../ui/choice-row.tsx';
import { FibreArray } from '../../../ui/fibre-array.tsx';
import { useLesson } from '../lesson-frame.ts';
import { numberText, type Writable } from '../number-text.ts';
import { type FigureDoc, optionValue } from './figure.ts';
import { FigureFrame } from './figure-frame.tsx';
import { NumberTable } from './number-table.tsx';

export const lengthArrayDoc: FigureDoc = {
  name: 'LengthArray',
  words: 'lengthArray',
  options: [{ name: 'cotton', values: sampleCottonIds, usual: 'medium' }],
};

/** Fibers laid out on the pad. */
const fibreCount = 100;

/** Four cottons on a hand sorter's pad, one at a time on one ruler, and the thread each makes. */
export function LengthArray({ cotton }: { readonly cotton?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.lengthArray;
  const [chosen, setChosen] = useState(optionValue<(typeof sampleCottonIds)[number]>(lengthArrayDoc, 'cotton', cotton));
  const all = useMemo(() => sampleCottonIds.map((id) => ({ id, ...readSample(id, fibreCount) })), []);
  const now = all.find(({ id }) => id === chosen)!;
  const longestMm = Math.max(...all.map(({ lengthsMm }) => lengthsMm[0]!));
  const write = (number: Writable) => numberText(number, words, lessons).text;
  const rows: Record<keyof typeof text.rows, (cotton: (typeof all)[number]) => string> = {
    staple: ({ upperHalfMeanMm }) => write({ as: 'fibreLength', value: upperHalfMeanMm }),
    mean: ({ meanMm }) => write({ as: 'fibreLength', value: meanMm }),
    short: ({ shortPercentByNumber }) => write({ as: 'plain', value: shortPercentByNumber }),
    ends: ({ id }) => write({ as: 'plain', value: endsPerInch(id) }),
    turns: ({ id }) => write({ as: 'plain', value: sampleTurnsPerInch(id) }),
  };
  return (
    <FigureFrame
      title={text.title}
      says={fill(text.says, { cotton: text.cottons[chosen] })}
      note={text.thread}
      controls={
        <ChoiceRow
          label={text.pick}
          options={sampleCottonIds.map((id) => ({ value: id, label: text.cottons[id] }))}
          value={chosen}
          onChoose={setChosen}
        />
      }
      picture={<FibreArray lengthsMm={now.lengthsMm} upperHalfMeanMm={now.upperHalfMeanMm} rulerToMm={longestMm} />}
      table={
        <NumberTable
          head={[text.pick, ...all.map(({ id }) => text.cottons[id])]}
          rows={(Object.keys(rows) as (keyof typeof rows)[]).map((row) => ({
            name: text.rows[row],
            cells: all.map(rows[row]),
          }))}
        />
      }
    />
  );
}
