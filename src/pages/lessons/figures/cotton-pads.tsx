import { useMemo, useState } from 'preact/hooks';
import { type ReadCotton, readSample, type SampleCottonId } from '../../../lessons/sample-cottons.ts';
import { ChoiceRow } from '../../../ui/choice-row.tsx';
import { FibreArray } from '../../../ui/fibre-array.tsx';
import { FigureFrame } from './figure-frame.tsx';
import { NumberTable } from './number-table.tsx';

/** Fibers laid out on the pad. */
const fibreCount = 100;

/** One cotton laid out. */
export type CottonPad<Id extends SampleCottonId> = ReadCotton & { readonly id: Id };

export interface CottonPadsProps<Id extends SampleCottonId> {
  readonly ids: readonly Id[];
  /** The cotton that is shown first. */
  readonly first: Id;
  readonly text: { readonly title: string; readonly pick: string; readonly cottons: Readonly<Record<Id, string>> };
  /** What the pad shows, in a sentence. */
  readonly says: (pad: CottonPad<Id>) => string;
  readonly note: string;
  /** Rows of the table, each over all cottons. */
  readonly rows: readonly { readonly name: string; readonly cell: (pad: CottonPad<Id>) => string }[];
}

/** Cottons on a hand sorter's pad, one at a time on one ruler, and their numbers side by side. */
export function CottonPads<Id extends SampleCottonId>({ ids, first, text, says, note, rows }: CottonPadsProps<Id>) {
  const [chosen, setChosen] = useState(first);
  const all = useMemo(() => ids.map((id): CottonPad<Id> => ({ id, ...readSample(id, fibreCount) })), [ids]);
  const now = all.find(({ id }) => id === chosen)!;
  const longestMm = Math.max(...all.map(({ lengthsMm }) => lengthsMm[0]!));
  return (
    <FigureFrame
      title={text.title}
      says={says(now)}
      note={note}
      controls={
        <ChoiceRow
          label={text.pick}
          options={ids.map((id) => ({ value: id, label: text.cottons[id] }))}
          value={chosen}
          onChoose={setChosen}
        />
      }
      picture={<FibreArray lengthsMm={now.lengthsMm} upperHalfMeanMm={now.upperHalfMeanMm} rulerToMm={longestMm} />}
      table={
        <NumberTable
          head={[text.pick, ...ids.map((id) => text.cottons[id])]}
          rows={rows.map(({ name, cell }) => ({ name, cells: all.map(cell) }))}
        />
      }
    />
  );
}
