import { useCallback, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { bollDay, bollDays } from '../../../lessons/boll-days.ts';
import { varietyOf } from '../../../model/field/varieties.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import { bollGrowth, bollGrowthHeight } from '../../../scene/lessons/boll-growth.ts';
import type { FibreRule } from '../../../scene/stations/boll/fibre-rule.ts';
import { RulerSlider } from '../../../ui/ruler-slider.tsx';
import { useLesson } from '../lesson-frame.ts';
import { DrawnPicture } from './drawn-picture.tsx';
import { type FigureDoc, optionValue } from './figure.ts';
import { FigureFrame } from './figure-frame.tsx';
import { NumberTable } from './number-table.tsx';

export const bollGrowthDoc: FigureDoc = {
  name: 'BollGrowth',
  words: 'bollGrowth',
  options: [{ name: 'day', values: bollDays.map(String), usual: '17' }],
};

const seeds = Math.round(varietyOf('uplandMedium', 'present').seedsPerBoll);
const ruleInches = 1.5;
const ruleCentimetres = 4;

/** A rule in the reader's units, a little longer than the longest fiber. */
function ruleOf(us: boolean): FibreRule {
  const [count, mm] = us ? [ruleInches * 4, MM_PER_INCH / 4] : [ruleCentimetres * 2, 5];
  return {
    mm: count * mm,
    ticks: Array.from({ length: count + 1 }, (_, i) =>
      i % (us ? 4 : 2) === 0 ? { mm: i * mm, text: String(i / (us ? 4 : 2)) } : { mm: i * mm },
    ),
  };
}

/** A boll from flower to opening: first its fibers get long, then their walls get thick. */
export function BollGrowth({ day: given }: { readonly day?: string }) {
  const { formats, unitSystem } = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.bollGrowth;
  const [day, setDay] = useState(Number(optionValue(bollGrowthDoc, 'day', given)));
  const now = bollDay(day);
  const length = formats.fibreLength(now.mm).text;
  const wall = formats.percent(100 * now.wall, 0);
  const says = fill(text.says, { day: formats.days(day).text, length, wall });
  const draw = useCallback(
    (width: number) => ({
      marks: bollGrowth(
        {
          fibre: bollDay(day),
          rule: ruleOf(unitSystem === 'us'),
          seeds,
          labels: { boll: text.boll, section: text.section },
        },
        width,
      ),
      height: bollGrowthHeight(width),
    }),
    [day, unitSystem, text],
  );
  return (
    <FigureFrame
      title={text.title}
      says={says}
      note={text.note}
      controls={
        <RulerSlider
          label={text.pick}
          value={day}
          low={1}
          high={45}
          step={1}
          quantityOf={(value) => formats.days(value)}
          onChange={setDay}
        />
      }
      picture={<DrawnPicture alt={says} draw={draw} />}
      table={
        <NumberTable
          head={[text.pick, text.length, text.wall]}
          rows={bollDays.map(bollDay).map((each) => ({
            name: formats.count(each.day),
            cells: [formats.fibreLength(each.mm).text, formats.percent(100 * each.wall, 0)],
          }))}
        />
      }
    />
  );
}
