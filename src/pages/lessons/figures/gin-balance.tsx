import { useCallback, useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import {
  type GinBalance as Balance,
  type GinStream,
  ginBalance,
  streamKg,
  streamParts,
} from '../../../lessons/gin-balance.ts';
import { lessonSeed } from '../../../lessons/lesson-season.ts';
import { runSeason } from '../../../model/chain.ts';
import { farmOf } from '../../../model/farms.ts';
import { ginBalanceHeight, ginBalanceMarks } from '../../../scene/lessons/gin-balance.ts';
import { useLesson } from '../lesson-frame.ts';
import { ChoiceFigure } from './choice-figure.tsx';
import { type FigureDoc, optionValue } from './figure.ts';

const harvests = { picked: 'coastal-plain', stripped: 'high-plains-dryland', byHand: 'hand-picked-1930s' } as const;
type Harvest = keyof typeof harvests;
const harvestIds = Object.keys(harvests) as Harvest[];

export const ginBalanceDoc: FigureDoc = {
  name: 'GinBalance',
  words: 'ginBalance',
  options: [{ name: 'harvest', values: harvestIds, usual: 'picked' }],
};

const widest = 600;
const strip = (stream: GinStream) => streamParts.map((part) => ({ part, kg: stream[part] }));

/** One bale's seed cotton through the gin: what each machine takes out, to one scale. */
export function GinBalance({ harvest: given }: { readonly harvest?: string }) {
  const { formats } = useWords();
  const text = useLesson().words.figures.ginBalance;
  const [harvest, setHarvest] = useState(optionValue<Harvest>(ginBalanceDoc, 'harvest', given));
  const all = useMemo(() => {
    const of = (id: Harvest): Balance => ginBalance(runSeason(farmOf(harvests[id])!, lessonSeed, null));
    return { picked: of('picked'), stripped: of('stripped'), byHand: of('byHand') };
  }, []);
  const { into, steps } = all[harvest];
  const kg = (stream: GinStream) => formats.mass(streamKg(stream), 0).text;
  const rows = [
    { key: 'module' as const, left: into, taken: null },
    ...steps.map(({ step, left, taken }) => ({ key: step, left, taken: streamKg(taken) > 0 ? taken : null })),
  ];
  const says = fill(text.says, {
    harvest: text.harvests[harvest],
    into: kg(into),
    bale: kg(steps.at(-1)!.left),
    seed: formats.mass(steps[1]!.taken.seed, 0).text,
  });
  const draw = useCallback(
    (width: number) => ({
      height: ginBalanceHeight(rows.length),
      marks: ginBalanceMarks({
        width,
        mostKg: Math.max(...harvestIds.map((id) => streamKg(all[id].into))),
        parts: text.parts,
        rows: rows.map(({ key, left, taken }) => ({
          key,
          name: text.steps[key],
          left: strip(left),
          leftText: fill(text.goesOn, { mass: kg(left) }),
          taken: taken ? strip(taken) : [],
          takenText: taken ? fill(text.cutOff, { mass: kg(taken) }) : '',
        })),
      }),
    }),
    [harvest, all, formats, text],
  );
  const cell = (value: number) => formats.mass(value, 0).text;
  return (
    <ChoiceFigure
      text={text}
      says={says}
      options={harvestIds.map((id) => ({ value: id, label: text.harvests[id] }))}
      value={harvest}
      onChoose={setHarvest}
      widest={widest}
      draw={draw}
      head={[text.harvests[harvest], ...streamParts.map((part) => text.parts[part])]}
      rows={[
        { name: text.steps.module, stream: into },
        ...steps
          .filter(({ taken }) => streamKg(taken) > 0)
          .map(({ step, taken }) => ({ name: text.takenAt[step], stream: taken })),
        { name: text.bale, stream: steps.at(-1)!.left },
      ].map(({ name, stream }) => ({ name, cells: streamParts.map((part) => cell(stream[part])) }))}
    />
  );
}
