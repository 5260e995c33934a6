import { useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { type SpunThread, spunThreads } from '../../../lessons/spun-threads.ts';
import { yarnDiameterMm } from '../../../model/cloth/diameter.ts';
import type { Yarn } from '../../../model/mill/yarn.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import { type ThreadRow, threadRows, threadRowsHeight } from '../../../scene/lessons/thread-rows.ts';
import { useLesson } from '../lesson-frame.ts';
import { numberText, type Writable } from '../number-text.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

const counts = [10, 20, 30, 40, 60] as const;

export const spunThreadsDoc: FigureDoc = {
  name: 'SpunThreads',
  words: 'spunThreads',
  options: [{ name: 'count', values: counts.map(String), usual: '30' }],
};

const times = 20;
const padPx = 62;
const mmPerCm = 10;
const endsPerHair = 5;

/** A thread as the picture takes it. */
const drawnThread = (yarn: Yarn): NonNullable<ThreadRow['thread']> => ({
  diameterMm: yarnDiameterMm(yarn.tex),
  turnsPerMm: yarn.turnsPerInch / MM_PER_INCH,
  cvPercent: yarn.cvPercent,
  endsPerMm: yarn.fibreEndsPerCm / mmPerCm,
  plies: 1,
});

/** One cotton spun carded, combed and on rotors to one count, side by side. */
export function SpunThreads({ count: given }: { readonly count?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.spunThreads;
  const [count, setCount] = useState(Number(optionValue(spunThreadsDoc, 'count', given)));
  const threads = useMemo(() => spunThreads(count), [count]);
  const write = (number: Writable) => numberText(number, words, lessons).text;
  const countText = write({ as: 'yarnCount', value: count });
  const rows: Record<keyof typeof text.rows, (thread: SpunThread) => Writable | null> = {
    thread: ({ kilometresPerPound: value }) => (value === null ? null : { as: 'distance', value }),
    share: ({ threadPercent: value }) => (value === null ? null : { as: 'percentage', value, decimals: 0 }),
    strength: ({ yarn }) => yarn && { as: 'yarnStrength', value: yarn.tenacityCnPerTex },
    uneven: ({ yarn }) => yarn && { as: 'percentage', value: yarn.cvPercent, decimals: 0 },
    ends: ({ yarn }) => yarn && { as: 'plain', value: (yarn.fibreEndsPerCm * MM_PER_INCH) / mmPerCm },
    turns: ({ yarn }) => yarn && { as: 'plain', value: yarn.turnsPerInch },
    finest: ({ ceilingNe }) => ({ as: 'yarnCount', value: Math.floor(ceilingNe) }),
  };
  const cell = (number: Writable | null) => (number ? write(number) : text.none);
  const draw = useMemo(
    () => (width: number) => ({
      marks: threadRows({
        rows: threads.map((thread) => ({
          id: thread.system,
          name: text.systems[thread.system],
          note: thread.yarn ? cell(rows.strength(thread)) : text.tooFine,
          thread: thread.yarn && drawnThread(thread.yarn),
        })),
        width,
        times,
        endsPerHair,
        padPx,
      }),
      height: threadRowsHeight(threads.length, padPx),
    }),
    [threads, words],
  );
  const says = [
    fill(text.says, { count: countText, times: words.formats.count(times) }),
    ...(threads.some(({ yarn }) => yarn === null) ? [text.saysNone] : []),
  ].join(' ');
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={counts.map((each) => ({ value: each, label: write({ as: 'yarnCount', value: each }) }))}
      value={count}
      onChoose={setCount}
      draw={draw}
      head={[countText, ...threads.map(({ system }) => text.systems[system])]}
      rows={(Object.keys(rows) as (keyof typeof rows)[]).map((row) => ({
        name: text.rows[row],
        cells: threads.map((thread) => cell(rows[row](thread))),
      }))}
    />
  );
}
