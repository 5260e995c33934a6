import { useCallback, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { chartBorders, type GradedSampleId, gradedSample, gradedSampleIds } from '../../../lessons/graded-samples.ts';
import { colorAndLeaf, colorAndLeafHeight } from '../../../scene/lessons/color-and-leaf.ts';
import { useLesson } from '../lesson-frame.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

export const colorAndLeafDoc: FigureDoc = {
  name: 'ColorAndLeaf',
  words: 'colorAndLeaf',
  options: [{ name: 'sample', values: gradedSampleIds, usual: 'ordinary' }],
};

/** Four samples on the color chart, each with its leaf. */
export function ColorAndLeaf({ sample: given }: { readonly sample?: string }) {
  const { formats } = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.colorAndLeaf;
  const [chosen, setChosen] = useState(optionValue<GradedSampleId>(colorAndLeafDoc, 'sample', given));
  const now = gradedSample(chosen);
  const says = fill(text.says, {
    sample: text.samples[chosen],
    code: now.code,
    name: now.name,
    leaf: String(now.leaf),
    trash: formats.percent(now.trashPercent, 2),
  });
  const draw = useCallback(
    (width: number) => {
      const sample = gradedSample(chosen);
      const others = gradedSampleIds.filter((id) => id !== chosen).map(gradedSample);
      return {
        marks: colorAndLeaf(
          {
            chart: { ...chartBorders, at: sample, others },
            trashPercent: sample.trashPercent,
            labels: { chart: text.chart, sample: text.sample },
          },
          width,
        ),
        height: colorAndLeafHeight(width),
      };
    },
    [chosen, text],
  );
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={gradedSampleIds.map((id) => ({ value: id, label: text.samples[id] }))}
      value={chosen}
      onChoose={setChosen}
      draw={draw}
      head={[text.pick, 'Rd', '+b', text.grade, text.leafArea, text.leafGrade]}
      rows={gradedSampleIds.map(gradedSample).map((each) => ({
        name: text.samples[each.id],
        cells: [
          formats.number(each.rd, 0),
          formats.number(each.b, 1),
          `${each.code} ${each.name}`,
          formats.percent(each.trashPercent, 2),
          String(each.leaf),
        ],
      }))}
    />
  );
}
