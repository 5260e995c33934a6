import { useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { type Swatch, type SwatchOrder, swatches, swatchOrders } from '../../../lessons/swatches.ts';
import { swatchCard, swatchCardHeight } from '../../../scene/lessons/swatch-card.ts';
import { useLesson } from '../lesson-frame.ts';
import { numberText, type Writable } from '../number-text.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { drawnThreads } from './drawn-threads.ts';
import { type FigureDoc, optionValue } from './figure.ts';

export const swatchGuideDoc: FigureDoc = {
  name: 'SwatchGuide',
  words: 'swatchGuide',
  options: [{ name: 'order', values: swatchOrders, usual: 'weight' }],
};

const times = 8;

/** Twelve cotton cloths as swatches at one magnification, from light to heavy or from open to close. */
export function SwatchGuide({ order: given }: { readonly order?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const { swatchGuide: text, cloths, weaves } = lessons.figures;
  const [order, setOrder] = useState(optionValue<SwatchOrder>(swatchGuideDoc, 'order', given));
  const all = useMemo(() => swatches(order), [order]);
  const write = (number: Writable) => numberText(number, words, lessons).text;
  const columns: Record<keyof typeof text.columns, (swatch: Swatch) => string> = {
    weight: ({ cloth }) => write({ as: 'clothWeight', value: cloth.gramsPerSquareMetre }),
    cover: ({ cloth }) => write({ as: 'percentage', value: cloth.coverFraction * 100, decimals: 0 }),
    count: ({ cloth }) => write({ as: 'plain', value: cloth.threadCount }),
    weave: ({ cloth }) => weaves[cloth.construction.weave],
    drape: ({ drape }) => text.drapes[drape],
  };
  const draw = useMemo(
    () => (width: number) => ({
      marks: swatchCard({
        swatches: all.map((swatch) => ({
          id: swatch.id,
          name: cloths[swatch.id],
          note: columns[order](swatch),
          threads: drawnThreads(swatch.id, swatch.cloth),
        })),
        width,
        times,
      }),
      height: swatchCardHeight(width, all.length),
    }),
    [all, words],
  );
  const says = fill(text.says[order], { times: words.formats.count(times) });
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={swatchOrders.map((each) => ({ value: each, label: text.orders[each] }))}
      value={order}
      onChoose={setOrder}
      draw={draw}
      head={[text.cloth, ...(Object.keys(columns) as (keyof typeof columns)[]).map((id) => text.columns[id])]}
      rows={all.map((swatch) => ({
        name: cloths[swatch.id],
        cells: Object.values(columns).map((column) => column(swatch)),
      }))}
    />
  );
}
