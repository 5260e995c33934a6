import { useCallback, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { fiberSection, sectionCottons } from '../../../lessons/fiber-section.ts';
import { micronaireClass } from '../../../model/classing/descriptors.ts';
import { fiberSections, fiberSectionsHeight } from '../../../scene/lessons/fiber-sections.ts';
import { RulerSlider } from '../../../ui/ruler-slider.tsx';
import { useLesson } from '../lesson-frame.ts';
import { DrawnPicture } from './drawn-picture.tsx';
import { type FigureDoc, optionValue } from './figure.ts';
import { FigureFrame } from './figure-frame.tsx';
import { NumberTable } from './number-table.tsx';

const readings = ['3.7', '4.2', '5.0'] as const;

export const fiberSectionsDoc: FigureDoc = {
  name: 'FiberSections',
  words: 'fiberSections',
  options: [{ name: 'micronaire', values: readings, usual: '4.2' }],
};

/** One micronaire reading, and the two different fibers that may stand behind it. */
export function FiberSections({ micronaire: given }: { readonly micronaire?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const { formats } = words;
  const text = lessons.figures.fiberSections;
  const [micronaire, setMicronaire] = useState(Number(optionValue(fiberSectionsDoc, 'micronaire', given)));
  const ripeness = (value: number) => fill(text.ripe, { ratio: formats.number(value, 1) });
  const reading = formats.micronaire(micronaire).text;
  const market = text.market[micronaireClass(micronaire)];
  const draw = useCallback(
    (width: number) => ({
      marks: fiberSections(
        sectionCottons.map((cotton) => {
          const section = fiberSection(cotton, micronaire);
          return { ...section, name: text.cottons[cotton], lines: [ripeness(section.maturityRatio)] };
        }),
        width,
      ),
      height: fiberSectionsHeight(width, 1),
    }),
    [micronaire, text],
  );
  const says = fill(text.says, { reading, market });
  return (
    <FigureFrame
      title={text.title}
      says={says}
      note={text.note}
      controls={
        <RulerSlider
          label={text.pick}
          value={micronaire}
          low={2.8}
          high={5.4}
          step={0.1}
          quantityOf={(value) => formats.micronaire(value)}
          onChange={setMicronaire}
        />
      }
      picture={<DrawnPicture alt={says} draw={draw} />}
      table={
        <NumberTable
          head={[text.pick, ...sectionCottons.map((cotton) => text.cottons[cotton]), text.marketHead]}
          rows={readings.map(Number).map((each) => ({
            name: formats.micronaire(each).text,
            cells: [
              ...sectionCottons.map((cotton) => {
                const { maturityRatio, linearDensityMtex } = fiberSection(cotton, each);
                return fill(text.cell, {
                  ratio: formats.number(maturityRatio, 2),
                  mass: formats.number(linearDensityMtex, 0),
                });
              }),
              text.market[micronaireClass(each)],
            ],
          }))}
        />
      }
    />
  );
}
