import { useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { type LadderId, type LadderThread, ladder, ladderIds } from '../../../lessons/thread-ladder.ts';
import { threadRows, threadRowsHeight } from '../../../scene/lessons/thread-rows.ts';
import { useLesson } from '../lesson-frame.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';
import { thicknessText } from './thickness-text.ts';

export const threadLadderDoc: FigureDoc = {
  name: 'ThreadLadder',
  words: 'threadLadder',
  options: [{ name: 'threads', values: ladderIds, usual: 'cloth' }],
};

const times = 20;
const padPx = 46;

/** Threads of cloths from thick to fine, or three that one label may stand for, with every number they carry. */
export function ThreadLadder({ threads: given }: { readonly threads?: string }) {
  const words = useWords();
  const { words: lessons } = useLesson();
  const text = lessons.figures.threadLadder;
  const [chosen, setChosen] = useState(optionValue<LadderId>(threadLadderDoc, 'threads', given));
  const threads = useMemo(() => ladder(chosen), [chosen]);
  const names: Readonly<Record<string, string>> = text.names;
  const number = (value: number, decimals: number) => words.formats.number(value, decimals);
  const systems: Record<keyof typeof text.systems, (thread: LadderThread) => string> = {
    ne: ({ numbers }) => number(numbers.ne, Number.isInteger(Math.round(numbers.ne * 1e6) / 1e6) ? 0 : 1),
    tex: ({ numbers }) => number(numbers.tex, 1),
    nm: ({ numbers }) => number(numbers.nm, 1),
    denier: ({ numbers }) => number(numbers.denier, 0),
    ticket: ({ numbers }) => number(numbers.metricTicket, 0),
    thickness: ({ diameterMm }) => thicknessText(diameterMm, words),
  };
  const draw = useMemo(
    () => (width: number) => ({
      marks: threadRows({
        rows: threads.map((thread) => ({
          id: thread.id,
          name: names[thread.id] ?? thread.id,
          note: `Ne\u00a0${systems.ne(thread)} · ${systems.tex(thread)}\u00a0${words.messages.units.tex.sign}`,
          thread: { ...thread, cvPercent: 0, endsPerMm: 0 },
        })),
        width,
        times,
        endsPerHair: 0,
        padPx,
      }),
      height: threadRowsHeight(threads.length, padPx),
    }),
    [threads, words],
  );
  const says = fill(text.says[chosen], { times: words.formats.count(times) });
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={ladderIds.map((id) => ({ value: id, label: text.picks[id] }))}
      value={chosen}
      onChoose={setChosen}
      draw={draw}
      head={[text.thread, ...(Object.keys(systems) as (keyof typeof systems)[]).map((id) => text.systems[id])]}
      rows={threads.map((thread) => ({
        name: names[thread.id] ?? thread.id,
        cells: Object.values(systems).map((write) => write(thread)),
      }))}
    />
  );
}
