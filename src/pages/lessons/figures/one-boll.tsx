import { useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { lessonSeason } from '../../../lessons/lesson-season.ts';
import { oneBoll } from '../../../lessons/one-boll.ts';
import { bollsAndBlock, bollsAndBlockHeight } from '../../../scene/lessons/bolls-and-block.ts';
import { paintSvg } from '../../../scene/paint-svg.ts';
import { ChoiceRow } from '../../../ui/choice-row.tsx';
import { Picture } from '../../../ui/picture.tsx';
import { useWidth } from '../../../ui/use-width.ts';
import { useLesson } from '../lesson-frame.ts';
import { numberText, type Writable } from '../number-text.ts';
import { useTheme } from '../use-theme.ts';
import { type FigureDoc, optionValue } from './figure.ts';
import { FigureFrame } from './figure-frame.tsx';

const counts = [1, 4, 9, 16] as const;

export const oneBollDoc: FigureDoc = {
  name: 'OneBoll',
  words: 'oneBoll',
  options: [{ name: 'bolls', values: counts.map(String), usual: '1' }],
};

const firstWidth = 480;
const widest = 560;

/** Some bolls, and the block of patches that their cloth makes. */
export function OneBoll({ bolls: given }: { readonly bolls?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.oneBoll;
  const theme = useTheme();
  const [bolls, setBolls] = useState(Number(optionValue(oneBollDoc, 'bolls', given)));
  const [place, measured] = useWidth<HTMLDivElement>(firstWidth);
  const width = Math.min(measured, widest);
  const boll = useMemo(() => oneBoll(lessonSeason()), []);
  const write = (number: Writable) => numberText(number, words, lessons).text;
  const sideOf = (count: number) => write({ as: 'length', value: boll.patchInches * Math.sqrt(count), decimals: 1 });
  const count = words.formats.plural(bolls, text.count);
  const svg = useMemo(() => {
    const side = write({ as: 'length', value: boll.patchInches * Math.sqrt(bolls), decimals: 1 });
    const marks = bollsAndBlock({ bolls, width, labels: { side, bolls: count } });
    return paintSvg(marks, { width, height: bollsAndBlockHeight(width), theme });
  }, [bolls, width, theme, boll, words]);
  const says = fill(text.says, { bolls: count, side: `${sideOf(bolls)} × ${sideOf(bolls)}` });
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
      picture={
        <div ref={place} class="figure-picture">
          <Picture svg={svg} alt={says} />
        </div>
      }
      table={
        <>
          <thead>
            <tr>
              <th scope="col" class="number">
                {text.rows.bolls}
              </th>
              <th scope="col" class="number">
                {text.rows.side}
              </th>
              <th scope="col" class="number">
                {text.rows.cloth}
              </th>
              <th scope="col" class="number">
                {text.rows.yarn}
              </th>
            </tr>
          </thead>
          <tbody>
            {counts.map((each) => (
              <tr key={each}>
                <th scope="row" class="number">
                  {words.formats.count(each)}
                </th>
                <td class="number">{sideOf(each)}</td>
                <td class="number">{write({ as: 'smallMass', value: boll.patchGrams * each })}</td>
                <td class="number">{write({ as: 'clothLength', value: boll.yarnYards * each, decimals: 0 })}</td>
              </tr>
            ))}
          </tbody>
        </>
      }
    />
  );
}
