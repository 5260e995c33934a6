import { useCallback, useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { lessonSeason } from '../../../lessons/lesson-season.ts';
import { type TaggedBale, taggedBales } from '../../../lessons/tagged-bale.ts';
import { baleShapeFacts } from '../../../model/gin/press-facts.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import { baleAndTag, baleAndTagHeight } from '../../../scene/lessons/bale-and-tag.ts';
import { useLesson } from '../lesson-frame.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

const shown = [1, 23, 42, 60] as const;
type Shown = (typeof shown)[number];

export const baleAndTagDoc: FigureDoc = {
  name: 'BaleAndTag',
  words: 'baleAndTag',
  options: [{ name: 'bale', values: shown.map(String), usual: '23' }],
};

/** One bale of the example season: tag, weights, and what its number leads back to. */
export function BaleAndTag({ bale: given }: { readonly bale?: string }) {
  const { formats } = useWords();
  const text = useLesson().words.figures.baleAndTag;
  const [chosen, setChosen] = useState(Number(optionValue(baleAndTagDoc, 'bale', given)) as Shown);
  const season = lessonSeason();
  const all = useMemo(() => taggedBales(season), [season]);
  const bale = all.find(({ number }) => number === chosen)!;
  const mass = (kg: number) => formats.mass(kg, 0).text;
  const inches = (value: number) => formats.length(value, 0).text;
  const nearest = (value: number, step: number) => formats.number(Math.round(value / step) * step, 0);
  const outOf = (n: number, all: number) => fill(text.outOf, { n: formats.count(n), all: formats.count(all) });
  const plants = (one: TaggedBale) => nearest(one.bolls / season.field.bollsPerPlant, 100);
  const bolls = (one: TaggedBale) => nearest(one.bolls, 1000);
  const draw = useCallback(
    (width: number) => {
      const scene = {
        width,
        longIn: baleShapeFacts.universalLongIn.value,
        thickIn: baleShapeFacts.universalThickIn.value,
        ties: baleShapeFacts.ties.value,
        tag: { gin: bale.ginCode, ginIs: text.ginIs, bale: bale.running, baleIs: text.baleIs },
        tareShare: bale.tareKg / bale.grossKg,
        back: [
          { name: text.back.bale, amount: outOf(bale.number, all.length) },
          { name: text.back.module, amount: outOf(bale.module, bale.modules) },
          { name: text.back.plants, amount: plants(bale) },
          { name: text.back.bolls, amount: bolls(bale) },
        ],
        labels: {
          long: inches(baleShapeFacts.universalLongIn.value),
          thick: inches(baleShapeFacts.universalThickIn.value),
          sample: text.sample,
          gross: fill(text.gross, { mass: mass(bale.grossKg) }),
          net: fill(text.net, { mass: mass(bale.netKg) }),
          tare: fill(text.tare, { mass: mass(bale.tareKg) }),
          back: text.leadsBack,
        },
      };
      return { marks: baleAndTag(scene), height: baleAndTagHeight(scene) };
    },
    [bale, formats, text],
  );
  const says = fill(text.says, {
    n: formats.count(bale.number),
    tag: `${bale.ginCode}\u00a0${bale.running}`,
    gross: mass(bale.grossKg),
    net: mass(bale.netKg),
    tare: mass(bale.tareKg),
    module: outOf(bale.module, bale.modules),
    bolls: bolls(bale),
  });
  const columns: Record<keyof typeof text.columns, (one: TaggedBale) => string> = {
    tag: (one) => one.ginCode + one.running,
    gross: (one) => mass(one.grossKg),
    tare: (one) => mass(one.tareKg),
    net: (one) => mass(one.netKg),
    module: (one) => formats.count(one.module),
    staple: ({ record }) => formats.fibreLength(record.reading.lengthIn * MM_PER_INCH).text,
    micronaire: ({ record }) => formats.micronaire(record.reading.micronaire).text,
    color: ({ record }) => `${record.color}, ${formats.count(record.leaf)}`,
    bolls,
  };
  const ids = Object.keys(columns) as (keyof typeof columns)[];
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={shown.map((number) => ({ value: number, label: formats.count(number) }))}
      value={chosen}
      onChoose={setChosen}
      draw={draw}
      head={[text.pick, ...ids.map((id) => text.columns[id])]}
      rows={all
        .filter(({ number }) => shown.some((one) => one === number))
        .map((one) => ({ name: formats.count(one.number), cells: ids.map((id) => columns[id](one)) }))}
    />
  );
}
