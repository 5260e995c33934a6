import { useCallback, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { strengthCottons, threadStrength, threadSystems } from '../../../lessons/thread-strength.ts';
import { strengthStrips, strengthStripsHeight } from '../../../scene/lessons/strength-strips.ts';
import { useLesson } from '../lesson-frame.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

type System = (typeof threadSystems)[number];

export const bundleAndYarnDoc: FigureDoc = {
  name: 'BundleAndYarn',
  words: 'bundleAndYarn',
  options: [{ name: 'system', values: threadSystems, usual: 'ringCarded' }],
};

/** What threads of four cottons keep of their fibers' strength, by the way they are spun. */
export function BundleAndYarn({ system: given }: { readonly system?: string }) {
  const { formats } = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.bundleAndYarn;
  const { cottons } = lessons.figures.lengthArray;
  const [system, setSystem] = useState(optionValue<System>(bundleAndYarnDoc, 'system', given));
  const draw = useCallback(
    (width: number) => ({
      marks: strengthStrips(
        strengthCottons.map((id) => {
          const { bundleCnPerTex, threadCnPerTex, share } = threadStrength(id, system);
          return {
            name: cottons[id],
            bundle: bundleCnPerTex,
            thread: threadCnPerTex,
            bundleText: formats.number(bundleCnPerTex, 0),
            threadText: `${formats.number(threadCnPerTex, 0)} (${formats.percent(100 * share, 0)})`,
          };
        }),
        width,
      ),
      height: strengthStripsHeight(strengthCottons.length),
    }),
    [system, cottons, formats],
  );
  const says = fill(text.says, { system: text.systems[system] });
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={threadSystems.map((value) => ({ value, label: text.systems[value] }))}
      value={system}
      onChoose={setSystem}
      draw={draw}
      head={[text.cotton, text.bundle, ...threadSystems.map((each) => text.systems[each])]}
      rows={strengthCottons.map((id) => ({
        name: cottons[id],
        cells: [
          formats.yarnStrength(threadStrength(id, 'ringCarded').bundleCnPerTex).text,
          ...threadSystems.map((each) => {
            const { threadCnPerTex, share } = threadStrength(id, each);
            return `${formats.yarnStrength(threadCnPerTex).text} (${formats.percent(100 * share, 0)})`;
          }),
        ],
      }))}
    />
  );
}
