import { useCallback, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { farmSummer, type SummerFarmId, summerEvents, summerFarmIds } from '../../../lessons/plant-summer.ts';
import { plantSummerHeight, plantSummerMarks } from '../../../scene/lessons/plant-summer.ts';
import { useLesson } from '../lesson-frame.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

export const plantSummerDoc: FigureDoc = {
  name: 'PlantSummer',
  words: 'plantSummer',
  options: [{ name: 'farm', values: summerFarmIds, usual: 'coastal-plain' }],
};

const pieces = {
  planted: 'seed',
  emerged: 'seedling',
  firstSquare: 'square',
  firstFlower: 'flower',
  firstOpenBoll: 'openBoll',
  picked: 'sack',
} as const;
const countKeys = ['squares', 'greenBolls', 'openBolls'] as const;

/** The summer of one plant on a farm, from the top down: its stages, and what hangs on it day by day. */
export function PlantSummer({ farm: given }: { readonly farm?: string }) {
  const { formats } = useWords();
  const text = useLesson().words.figures.plantSummer;
  const [farm, setFarm] = useState(optionValue<SummerFarmId>(plantSummerDoc, 'farm', given));
  const summers = summerFarmIds.map((id) => ({ id, ...farmSummer(id) }));
  const { events } = farmSummer(farm);
  const says = fill(text.says, {
    farm: text.farms[farm],
    planted: formats.day(events.planted),
    flower: formats.day(events.firstFlower),
    open: formats.day(events.firstOpenBoll),
  });
  const draw = useCallback(
    (width: number) => {
      const { days, events: on, most, kind } = farmSummer(farm);
      const dayOf = (dayOfYear: number) => dayOfYear - on.planted;
      const marks = plantSummerMarks({
        width,
        kind,
        mostCount: Math.max(...summers.flatMap((one) => countKeys.map((key) => one.most[key].count))),
        months: formats.monthStarts
          .filter((start) => start >= on.planted)
          .map((start) => ({ day: dayOf(start), name: formats.monthShort(start) })),
        rows: summerEvents.map((event) => ({
          piece: pieces[event],
          day: dayOf(on[event]),
          name: text.events[event],
          date: formats.day(on[event]),
        })),
        counts: countKeys.map((key) => ({
          key,
          head: text.counts[key],
          counts: days.map((day) => day[key]),
          most: formats.number(most[key].count, 0),
        })),
      });
      return { marks, height: plantSummerHeight(dayOf(on.picked)) };
    },
    [farm, formats, text],
  );
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={summerFarmIds.map((id) => ({ value: id, label: text.farms[id] }))}
      value={farm}
      onChoose={setFarm}
      draw={draw}
      head={[text.pick, ...summers.map(({ id }) => text.farms[id])]}
      rows={[
        ...summerEvents.map((event) => ({
          name: text.events[event],
          cells: summers.map((one) => formats.day(one.events[event])),
        })),
        ...countKeys.map((key) => ({
          name: text.most[key],
          cells: summers.map((one) => formats.number(one.most[key].count, 1)),
        })),
        { name: text.openOfHundred, cells: summers.map((one) => formats.number(one.openOfHundred, 0)) },
      ]}
    />
  );
}
