import { useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { type CutDegrees, cutCloth, cutDegrees, cutStretchPercent } from '../../../lessons/cut-on-grain.ts';
import { lockingAngle } from '../../../model/cloth/trellis.ts';
import { RADIANS_PER_DEGREE } from '../../../model/units.ts';
import { cutStrips, cutStripsHeight } from '../../../scene/lessons/cut-strips.ts';
import { useLesson } from '../lesson-frame.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

export const cutOnGrainDoc: FigureDoc = {
  name: 'CutOnGrain',
  words: 'cutOnGrain',
  options: [{ name: 'degrees', values: cutDegrees.map(String), usual: '45' }],
};

const tableDegrees = [0, 15, 30, 45, 60, 75, 90];

/** A strip cut along the warp, a little off, on the bias or across, and how far it can be drawn out. */
export function CutOnGrain({ degrees: given }: { readonly degrees?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.cutOnGrain;
  const [degrees, setDegrees] = useState(Number(optionValue(cutOnGrainDoc, 'degrees', given)) as CutDegrees);
  const percent = (value: number) => words.formats.percent(value, 0);
  const stretch = cutStretchPercent(degrees);
  const draw = useMemo(
    () => (width: number) => ({
      marks: cutStrips({
        width,
        fromWarp: degrees * RADIANS_PER_DEGREE,
        angle: lockingAngle(cutCloth()),
        stretchPercent: stretch,
        labels: { ...text.labels, pulled: fill(text.labels.pulled, { stretch: percent(stretch) }) },
      }),
      height: cutStripsHeight(width),
    }),
    [degrees, words],
  );
  const says = fill(text.says, { cut: text.cuts[degrees], stretch: percent(stretch) });
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={cutDegrees.map((each) => ({ value: each, label: text.cuts[each] }))}
      value={degrees}
      onChoose={setDegrees}
      draw={draw}
      head={[text.angle, text.stretch]}
      rows={tableDegrees.map((each) => ({
        name: `${words.formats.count(each)}°`,
        cells: [percent(cutStretchPercent(each))],
      }))}
    />
  );
}
