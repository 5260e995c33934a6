import { useCallback, useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { type WashedCloth, type WashedClothId, washedCloth, washedClothIds } from '../../../lessons/washed-cloth.ts';
import { yarnDiameterMm } from '../../../model/cloth/diameter.ts';
import { inchesFromMillimetres } from '../../../model/units.ts';
import { threadWaves } from '../../../scene/lessons/thread-waves.ts';
import { useLesson } from '../lesson-frame.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

export const washedThreadDoc: FigureDoc = {
  name: 'WashedThread',
  words: 'washedThread',
  options: [{ name: 'cloth', values: washedClothIds, usual: 'quilting' }],
};

/** Threads that cross the one shown. */
const crossings = 10;
const inches = (tex: number): number => inchesFromMillimetres(yarnDiameterMm(tex));

/** One thread of a cloth seen from the side, before and after the first wash, and drawn straight: its length stays. */
export function WashedThread({ cloth: given }: { readonly cloth?: string }) {
  const { formats } = useWords();
  const text = useLesson().words.figures.washedThread;
  const [chosen, setChosen] = useState(optionValue<WashedClothId>(washedThreadDoc, 'cloth', given));
  const all = useMemo(() => washedClothIds.map((id) => ({ id, cloth: washedCloth(id) })), []);
  const now = all.find(({ id }) => id === chosen)!.cloth;
  const percent = (value: number) => formats.percent(value, 0);
  const draw = useCallback(
    (width: number) =>
      threadWaves({
        width,
        crossings,
        diameterIn: inches(now.bought.warpTex),
        crossingDiameterIn: inches(now.bought.weftTex),
        rows: (['bought', 'washed'] as const).map((key) => ({
          key,
          name: fill(text.rows[key], { shorter: percent(now.lengthPercent) }),
          spacingIn: 1 / now[key].picksPerInch,
          crimpPercent: now[key].warpCrimpPercent,
        })),
        straight: text.rows.straight,
      }),
    [now, formats, text],
  );
  const says = fill(text.says, {
    cloth: text.cloths[chosen],
    shorter: percent(now.lengthPercent),
    before: percent(now.bought.warpCrimpPercent),
    after: percent(now.washed.warpCrimpPercent),
  });
  const columns: Record<keyof typeof text.columns, (cloth: WashedCloth) => string> = {
    length: (cloth) => percent(cloth.lengthPercent),
    width: (cloth) => percent(cloth.widthPercent),
    crimpBefore: (cloth) => percent(cloth.bought.warpCrimpPercent),
    crimpAfter: (cloth) => percent(cloth.washed.warpCrimpPercent),
    weightBefore: (cloth) => formats.clothWeight(cloth.boughtGrams).text,
    weightAfter: (cloth) => formats.clothWeight(cloth.washedGrams).text,
  };
  const ids = Object.keys(columns) as (keyof typeof columns)[];
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={washedClothIds.map((id) => ({ value: id, label: text.cloths[id] }))}
      value={chosen}
      onChoose={setChosen}
      draw={draw}
      head={[text.pick, ...ids.map((id) => text.columns[id])]}
      rows={all.map(({ id, cloth }) => ({ name: text.cloths[id], cells: ids.map((each) => columns[each](cloth)) }))}
    />
  );
}
