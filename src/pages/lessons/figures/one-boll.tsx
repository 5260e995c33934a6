import { useCallback, useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { lessonSeason } from '../../../lessons/lesson-season.ts';
import { oneBoll } from '../../../lessons/one-boll.ts';
import { bollsAndBlock, bollsAndBlockHeight } from '../../../scene/lessons/bolls-and-block.ts';
import { ChoiceRow } from '../../../ui/choice-row.tsx';
import { useLesson } from '../lesson-frame.ts';
import { numberText, type Writable } from '../number-text.ts';
import { DrawnPicture } from './drawn-picture.tsx';
import { type FigureDoc, optionValue } from './figure.ts';
import { FigureFrame } from './figure-frame.tsx';
import { NumberTable } from './number-table.tsx';

const counts = [1, 4, 9, 16] as const;

export const oneBollDoc: FigureDoc = {
  name: 'OneBoll',
  words: 'oneBoll',
  options: [{ name: 'bolls', values: counts.map(String), usual: '1' }],
};

/** Some bolls, and the block of patches that their cloth makes. */
export function OneBoll({ bolls: given }: { readonly bolls?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.oneBoll;
  const [bolls, setBolls] = useState(Number(optionValue(oneBollDoc, 'bolls', given)));
  const boll = useMemo(() => oneBoll(lessonSeason()), []);
  const write = (number: Writable) => numberText(number, words, lessons).text;
  const sideOf = (count: number) => write({ as: 'length', value: boll.patchInches * Math.sqrt(count), decimals: 1 });
  const side = sideOf(bolls);
  const count = words.formats.plural(bolls, text.count);
  const says = fill(text.says, { bolls: count, side: `${side} × ${side}` });
  const draw = useCallback(
    (width: number) => ({
      marks: bollsAndBlock({ bolls, width, labels: { side, bolls: count } }),
      height: bollsAndBlockHeight(width),
    }),
    [bolls, side, count],
  );
  return (
    <FigureFrame
      title={text.title}
      says={says}
      controls={
        <ChoiceRow
          label={text.pick}
          options={counts.map((each) => ({ value: each, label: words.formats.count(each) }))}
          value={bolls}
          onChoose={setBolls}
        />
      }
      picture={<DrawnPicture alt={says} draw={draw} />}
      table={
        <NumberTable
          head={[text.rows.bolls, text.rows.side, text.rows.cloth, text.rows.yarn]}
          rows={counts.map((each) => ({
            name: words.formats.count(each),
            cells: [
              sideOf(each),
              write({ as: 'smallMass', value: boll.patchGrams * each }),
              write({ as: 'clothLength', value: boll.yarnYards * each, decimals: 0 }),
            ],
          }))}
        />
      }
    />
  );
}
