import { useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { endsPerInch, threadVariation } from '../../../lessons/computed/length.ts';
import { evennessIds, readSample } from '../../../lessons/sample-cottons.ts';
import { ChoiceRow } from '../../../ui/choice-row.tsx';
import { FibreArray } from '../../../ui/fibre-array.tsx';
import { useLesson } from '../lesson-frame.ts';
import { numberText, type Writable } from '../number-text.ts';
import { type FigureDoc, optionValue } from './figure.ts';
import { FigureFrame } from './figure-frame.tsx';
import { NumberTable } from './number-table.tsx';

export const uniformityPadsDoc: FigureDoc = {
  name: 'UniformityPads',
  words: 'uniformityPads',
  options: [{ name: 'cotton', values: evennessIds, usual: 'medium' }],
};

const fibreCount = 100;

/** Three cottons with one length on the tag, and very different short ends. */
export function UniformityPads({ cotton }: { readonly cotton?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.uniformityPads;
  const [chosen, setChosen] = useState(optionValue<(typeof evennessIds)[number]>(uniformityPadsDoc, 'cotton', cotton));
  const all = useMemo(() => evennessIds.map((id) => ({ id, ...readSample(id, fibreCount) })), []);
  const now = all.find(({ id }) => id === chosen)!;
  const longestMm = Math.max(...all.map(({ lengthsMm }) => lengthsMm[0]!));
  const write = (number: Writable) => numberText(number, words, lessons).text;
  const rows: Record<keyof typeof text.rows, (cotton: (typeof all)[number]) => string> = {
    staple: ({ upperHalfMeanMm }) => write({ as: 'fibreLength', value: upperHalfMeanMm }),
    uniformity: ({ uniformityPercent }) => write({ as: 'percentage', value: uniformityPercent, decimals: 0 }),
    mean: ({ meanMm }) => write({ as: 'fibreLength', value: meanMm }),
    short: ({ shortPercentByNumber }) => write({ as: 'plain', value: shortPercentByNumber }),
    weight: ({ shortPercentByWeight }) => write({ as: 'percentage', value: shortPercentByWeight, decimals: 0 }),
    ends: ({ id }) => write({ as: 'plain', value: endsPerInch(id) }),
    variation: ({ id }) => write({ as: 'percentage', value: threadVariation(id), decimals: 1 }),
  };
  return (
    <FigureFrame
      title={text.title}
      says={fill(text.says, { cotton: text.cottons[chosen], uniformity: rows.uniformity(now) })}
      note={lessons.figures.lengthArray.thread}
      controls={
        <ChoiceRow
          label={text.pick}
          options={evennessIds.map((id) => ({ value: id, label: text.cottons[id] }))}
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
