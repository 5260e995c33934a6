import { useCallback, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { bollsInPounds, poiseInches } from '../../../lessons/steelyard.ts';
import { steelyardFacts } from '../../../model/harvest/labour-facts.ts';
import { steelyardHeight, steelyardMarks } from '../../../scene/lessons/steelyard.ts';
import { useLesson } from '../lesson-frame.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

const weights = [10, 25, 50, 75, 100] as const;
const mostLb = weights.at(-1)!;

export const steelyardDoc: FigureDoc = {
  name: 'Steelyard',
  words: 'steelyard',
  options: [{ name: 'pounds', values: weights.map(String), usual: '50' }],
};

/** A picking sack weighed on a steelyard, and the bolls that are in it. */
export function Steelyard({ pounds: given }: { readonly pounds?: string }) {
  const { formats } = useWords();
  const text = useLesson().words.figures.steelyard;
  const [pounds, setPounds] = useState(Number(optionValue(steelyardDoc, 'pounds', given)));
  const weight = (lb: number) => formats.pounds(lb).text;
  const arm = (inches: number) => formats.length(inches, 1).text;
  const bolls = (lb: number) => {
    const { fewest, most } = bollsInPounds(lb);
    return fill(text.bolls, { fewest: formats.count(fewest), most: formats.count(most) });
  };
  const says = fill(text.says, {
    sack: weight(pounds),
    poise: weight(steelyardFacts.poiseLb.value),
    arm: arm(poiseInches(pounds)),
    bolls: bolls(pounds),
  });
  const draw = useCallback(
    (width: number) => ({
      height: steelyardHeight,
      marks: steelyardMarks({
        width,
        hookIn: steelyardFacts.hookArmIn.value,
        poiseIn: poiseInches(pounds),
        beamIn: poiseInches(mostLb),
        full: pounds / mostLb,
        labels: {
          sack: weight(pounds),
          poise: weight(steelyardFacts.poiseLb.value),
          hookArm: arm(steelyardFacts.hookArmIn.value),
          poiseArm: arm(poiseInches(pounds)),
        },
      }),
    }),
    [pounds, formats],
  );
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={weights.map((lb) => ({ value: lb, label: weight(lb) }))}
      value={pounds}
      onChoose={setPounds}
      draw={draw}
      head={[text.rows.sack, text.rows.arm, text.rows.bolls]}
      rows={weights.map((lb) => ({ name: weight(lb), cells: [arm(poiseInches(lb)), bolls(lb)] }))}
    />
  );
}
