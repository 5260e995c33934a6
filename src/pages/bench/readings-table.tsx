import { Fragment } from 'preact';
import { useWords } from '../../language/words.ts';
import { TrustMark } from '../../ui/trust-mark.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import type { BenchReading } from '../../workings/bench/bench-reading.ts';
import { benchSource, readingName, readingText } from './bench-source.ts';
import { benchWords } from './bench-words.ts';

export interface ReadingsTableProps {
  readonly readings: readonly BenchReading[];
  /** Tells the numbers of this table from those of others. */
  readonly where: string;
  readonly caption: string;
  /** Hides the caption from sight, where a heading says the same. */
  readonly captionUnseen?: boolean;
}

/** Figures of a bench, each opening its working and saying what it rests on. */
export function ReadingsTable({ readings, where, caption, captionUnseen = false }: ReadingsTableProps) {
  const words = useWords();
  const said = benchWords(words.language);
  return (
    <table class="bench-readings">
      <caption class={captionUnseen ? 'unseen' : undefined}>{caption}</caption>
      <tbody>
        {readings.map((reading) => {
          const name = readingName(reading, words, said);
          const source = benchSource(reading, name, words, said, where);
          return (
            <Fragment key={reading.key}>
              <tr>
                <th scope="row">{name}</th>
                <td class="number">
                  <WorkingNumber text={readingText(reading, words, said)} source={source} />
                  {reading.rests ? <TrustMark trust={reading.rests} label={name} /> : null}
                </td>
              </tr>
              <WorkingRow sources={[source]} columns={2} />
            </Fragment>
          );
        })}
      </tbody>
    </table>
  );
}
