import { useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { type BenchOutcomeKey, benchOutcome } from '../../model/bench/outcomes.ts';
import type { SetUp } from '../../model/bench/set-up.ts';
import type { SweepInput, SweepPlace } from '../../model/bench/sweep.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import { allReadings, readingOfOutcome } from '../../workings/bench/all-readings.ts';
import { benchSource, readingText } from './bench-source.ts';
import { benchWords } from './bench-words.ts';
import { optionsOf, SelectField } from './select-field.tsx';
import { SweepChart } from './sweep-chart.tsx';
import { useSweep } from './use-sweep.ts';

/** What a curve can be drawn of, by the name of the figure that prints it. */
const outcomes = ['comfortable', 'fibreEnds', 'tenacity', 'evenness', 'realisation', 'turns', 'lintPerYard'] as const;
const keyOf = (name: (typeof outcomes)[number]): BenchOutcomeKey => (name === 'comfortable' ? 'finestNe' : name);
/** The table holds every so many places of a curve. */
const everyRow = 4;

export interface SweepPanelProps {
  readonly a: SetUp;
  readonly b: SetUp;
}

/** One input changed from end to end, the rest of each bench as it stands: a curve for each, and the same as a table. */
export function SweepPanel({ a, b }: SweepPanelProps) {
  const { language } = useWords();
  const said = benchWords(language);
  const [isOpen, setOpen] = useState(false);
  const [input, setInput] = useState<SweepInput>('staple');
  const [name, setName] = useState<(typeof outcomes)[number]>('comfortable');
  const swept = useSweep(a, b, isOpen ? input : null);
  const names = Object.fromEntries(outcomes.map((key) => [key, said.numbers[key] ?? key])) as Record<
    (typeof outcomes)[number],
    string
  >;
  const own = ({ card }: SetUp, places: readonly SweepPlace[], setUp: SetUp): number => {
    if (input === 'staple') return card.lengthIn;
    if (input === 'micronaire') return card.micronaire;
    const nearest = places.find(({ bench }) => bench.setUp.warp === setUp.warp);
    return nearest?.at ?? places[0]!.at;
  };
  return (
    <details class="patch bench-sweep" data-cut="1" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{said.sweep.heading}</summary>
      <div class="bench-pair">
        <SelectField
          label={said.sweep.input}
          value={input}
          options={optionsOf(said.sweep.inputs)}
          onChoose={setInput}
        />
        <SelectField label={said.sweep.outcome} value={name} options={optionsOf(names)} onChoose={setName} />
      </div>
      {swept ? (
        <>
          <p class="sweep-key">
            <span data-side="a">{said.sides.a}</span> <span data-side="b">{said.sides.b}</span>{' '}
            <span class="caption">
              ○ {said.sweep.strained} · × {said.sweep.limit} · ▲ {said.sweep.here}
            </span>
          </p>
          <SweepChart
            swept={swept}
            input={input}
            outcome={keyOf(name)}
            here={{ a: own(a, swept.a, a), b: own(b, swept.b, b) }}
          />
          <SweepTable a={swept.a} b={swept.b} input={input} outcome={keyOf(name)} name={names[name]} />
        </>
      ) : (
        <p role="status">{said.sweep.working}</p>
      )}
    </details>
  );
}

interface SweepTableProps {
  readonly a: readonly SweepPlace[];
  readonly b: readonly SweepPlace[];
  readonly input: SweepInput;
  readonly outcome: BenchOutcomeKey;
  readonly name: string;
}

/** Some places of both curves, each number opening its working. */
function SweepTable({ a, b, input, outcome, name }: SweepTableProps) {
  const words = useWords();
  const said = benchWords(words.language);
  const rowsOf = (side: 'a' | 'b', places: readonly SweepPlace[]) =>
    places
      .filter((_, at) => at % everyRow === 0)
      .map(({ at, bench }) => {
        const reading =
          benchOutcome(outcome, bench) === null ? undefined : readingOfOutcome(outcome, allReadings(bench));
        return { side, at, reading, source: reading && benchSource(reading, name, words, said, `sweep/${side}/${at}`) };
      });
  return (
    <details>
      <summary>{said.sweep.table}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">
              {said.sides.a} / {said.sides.b}
            </th>
            <th scope="col" class="number">
              {said.sweep.axes[input]}
            </th>
            <th scope="col" class="number">
              {name}
            </th>
          </tr>
        </thead>
        <tbody>
          {[...rowsOf('a', a), ...rowsOf('b', b)].flatMap(({ side, at, reading, source }) => [
            <tr key={`${side}${at}`}>
              <th scope="row">{said.sides[side]}</th>
              <td class="number">{words.formats.number(at, at < 10 ? 2 : 0)}</td>
              <td class="number">
                {reading ? (
                  <WorkingNumber text={readingText(reading, words, said)} source={source} />
                ) : (
                  said.sweep.limit
                )}
              </td>
            </tr>,
            <WorkingRow key={`${side}${at}/working`} sources={[source]} columns={3} />,
          ])}
        </tbody>
      </table>
    </details>
  );
}
