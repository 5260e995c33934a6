import { useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { listedCloth, warpNeOf } from '../../../lessons/listed-cloths.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import { closeCloth, closeClothHeight } from '../../../scene/lessons/close-cloth.ts';
import { useLesson } from '../lesson-frame.ts';
import { numberText, type Writable } from '../number-text.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { drawnThreads } from './drawn-threads.ts';
import { type FigureDoc, optionValue } from './figure.ts';

const cloths = ['gauze', 'quilting', 'percale', 'lawn', 'denim', 'sateenFine'] as const;
type ShownCloth = (typeof cloths)[number];

export const closeClothDoc: FigureDoc = {
  name: 'CloseCloth',
  words: 'closeCloth',
  options: [{ name: 'cloth', values: cloths, usual: 'quilting' }],
};

const times = 14;
const measureMm = 2;
const measureInches = 0.1;

/** A cloth's threads at true spacing and thickness against the dark, and how much of its area they cover. */
export function CloseCloth({ cloth: given }: { readonly cloth?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.closeCloth;
  const [chosen, setChosen] = useState(optionValue<ShownCloth>(closeClothDoc, 'cloth', given));
  const all = useMemo(() => cloths.map((name) => ({ name, cloth: listedCloth(name) })), []);
  const now = all.find(({ name }) => name === chosen)!.cloth;
  const write = (number: Writable) => numberText(number, words, lessons).text;
  type Row = (one: (typeof all)[number]) => string;
  const rows: Record<keyof typeof text.rows, Row> = {
    weave: ({ cloth }) => lessons.figures.weaves[cloth.construction.weave],
    ends: ({ cloth }) => write({ as: 'threads', value: cloth.construction.endsPerInch }),
    picks: ({ cloth }) => write({ as: 'threads', value: cloth.construction.picksPerInch }),
    count: ({ cloth }) => write({ as: 'plain', value: cloth.threadCount }),
    yarn: ({ name }) => write({ as: 'yarnCount', value: Math.round(warpNeOf(name) * 10) / 10 }),
    weight: ({ cloth }) => write({ as: 'clothWeight', value: cloth.gramsPerSquareMetre }),
    cover: ({ cloth }) => write({ as: 'percentage', value: cloth.coverFraction * 100, decimals: 0 }),
  };
  const { unitSystem, formats, messages } = words;
  const draw = useMemo(() => {
    const us = unitSystem === 'us';
    const measure = us
      ? { inches: measureInches, text: `${formats.number(measureInches, 1)}\u00a0${messages.units.inches.sign}` }
      : {
          inches: measureMm / MM_PER_INCH,
          text: `${formats.number(measureMm, 0)}\u00a0${messages.units.millimetres.sign}`,
        };
    return (width: number) => ({
      marks: closeCloth(drawnThreads(chosen, now), width, times, measure),
      height: closeClothHeight(width),
    });
  }, [chosen, words]);
  const says = fill(text.says, {
    cloth: lessons.figures.cloths[chosen],
    times: formats.count(times),
    cover: rows.cover({ name: chosen, cloth: now }),
    count: rows.count({ name: chosen, cloth: now }),
  });
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={cloths.map((name) => ({ value: name, label: lessons.figures.cloths[name] }))}
      value={chosen}
      onChoose={setChosen}
      draw={draw}
      head={[text.pick, ...(Object.keys(rows) as (keyof typeof rows)[]).map((id) => text.rows[id])]}
      rows={all.map((one) => ({
        name: lessons.figures.cloths[one.name],
        cells: Object.values(rows).map((row) => row(one)),
      }))}
    />
  );
}
