import { useWords } from '../../language/words.ts';
import { type BenchOutcomeKey, benchOutcome } from '../../model/bench/outcomes.ts';
import type { SweepInput, SweepPlace } from '../../model/bench/sweep.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import { allReadings, readingOfOutcome } from '../../workings/bench/all-readings.ts';
import { placeSwept } from '../../workings/bench/sweep-readings.ts';
import { benchSource, readingText } from './bench-source.ts';
import { benchWords } from './bench-words.ts';

/** The table holds every so many places of a curve. */
const everyRow = 4;

interface SweepTableProps {
  readonly a: readonly SweepPlace[];
  readonly b: readonly SweepPlace[];
  readonly input: SweepInput;
  readonly outcome: BenchOutcomeKey;
  readonly name: string;
}

/** Some places of both curves, each number opening its working. */
export function SweepTable({ a, b, input, outcome, name }: SweepTableProps) {
  const words = useWords();
  const said = benchWords(words.language);
  const rowsOf = (side: 'a' | 'b', places: readonly SweepPlace[]) =>
    places
      .filter((_, at) => at % everyRow === 0)
      .map(({ at, bench }) => {
        const reading =
          benchOutcome(outcome, bench) === null ? undefined : readingOfOutcome(outcome, allReadings(bench));
        const where = `sweep/${side}/${at}`;
        const place = placeSwept(input, at);
        return {
          side,
          at,
          place: readingText(place, words, said),
          number: reading ? readingText(reading, words, said) : said.sweep.limit,
          sources: [
            benchSource(place, said.sweep.inputs[input], words, said, where),
            reading && benchSource(reading, name, words, said, where),
          ] as const,
        };
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
              {said.sweep.inputs[input]}
            </th>
            <th scope="col" class="number">
              {name}
            </th>
          </tr>
        </thead>
        <tbody>
          {[...rowsOf('a', a), ...rowsOf('b', b)].flatMap(({ side, at, place, number, sources }) => [
            <tr key={`${side}${at}`}>
              <th scope="row">{said.sides[side]}</th>
              <td class="number">
                <WorkingNumber text={place} source={sources[0]} />
              </td>
              <td class="number">
                <WorkingNumber text={number} source={sources[1]} />
              </td>
            </tr>,
            <WorkingRow key={`${side}${at}/working`} sources={sources} columns={3} />,
          ])}
        </tbody>
      </table>
    </details>
  );
}
