import { useId } from 'preact/hooks';
import { fill } from '../language/fill.ts';
import type { Quantity } from '../language/quantity-formats.ts';
import { useWords } from '../language/words.ts';
import type { FibreReading } from '../model/fibre.ts';
import { FibreArray } from './fibre-array.tsx';
import { type Change, WhatChanged } from './what-changed.tsx';
import type { WorkingSource } from './working-view.tsx';

export interface FibreCardProps {
  /** Lengths of the fibers laid out, mm, longest first. */
  readonly lengthsMm: readonly number[];
  /** The same for the state before; drawn as a chalk outline. */
  readonly beforeMm?: readonly number[];
  readonly reading: FibreReading;
  readonly readingBefore?: FibreReading;
  /** Grades and whatever else stands below the readings, already in words. */
  readonly more?: readonly Change[];
  /** A line under the card: how these readings were come by. */
  readonly note?: string;
  /** How a reading was come by. */
  readonly workingOf?: (key: keyof FibreReading, name: string) => WorkingSource;
}

// At these shares of the fibers the table twin reads the array.
const twinShares = [0.01, 0.1, 0.25, 0.5, 0.75, 0.9];

/** The fiber of a lot: a sorted array on an indigo pad, its readings before and after, and the array as a table. */
export function FibreCard({ lengthsMm, beforeMm, reading, readingBefore, more = [], note, workingOf }: FibreCardProps) {
  const { messages, formats } = useWords();
  const { fibre: words, common } = messages;
  const id = useId();
  const at = (lengths: readonly number[], share: number): Quantity =>
    formats.fibreLength(lengths[Math.min(lengths.length - 1, Math.floor(share * lengths.length))] ?? 0);
  const line = (
    key: keyof FibreReading,
    name: keyof typeof words.readings,
    write: (value: number) => Quantity,
  ): Change => ({
    label: words.readings[name],
    help: words.readingHelp[name],
    after: write(reading[key]).text,
    ...(readingBefore ? { before: write(readingBefore[key]).text } : {}),
    ...(workingOf ? { working: workingOf(key, words.readings[name]) } : {}),
  });
  const changes: Change[] = [
    line('upperHalfMeanMm', 'upperHalfMean', formats.fibreLength),
    line('uniformityPercent', 'uniformity', (value) => formats.percentage(value)),
    line('shortFibrePercentByWeight', 'shortFibre', (value) => formats.percentage(value)),
    line('strengthGPerTex', 'strength', formats.strength),
    line('micronaire', 'micronaire', formats.micronaire),
    ...more,
  ];
  return (
    <section class="fibre-card" aria-labelledby={id}>
      <h2 id={id}>{words.heading}</h2>
      <FibreArray
        lengthsMm={lengthsMm}
        upperHalfMeanMm={reading.upperHalfMeanMm}
        {...(beforeMm ? { beforeMm } : {})}
        {...(readingBefore ? { upperHalfMeanBeforeMm: readingBefore.upperHalfMeanMm } : {})}
      />
      <WhatChanged heading={words.reading} changes={changes} headingUnseen />
      {note ? <p class="caption">{note}</p> : null}
      <details class="twin-table">
        <summary>{common.table}</summary>
        <table>
          <caption>{fill(words.array, { n: formats.count(lengthsMm.length) })}</caption>
          <thead>
            <tr>
              <th scope="col">{words.share}</th>
              {beforeMm ? (
                <th scope="col" class="number">
                  {common.before}
                </th>
              ) : null}
              <th scope="col" class="number">
                {beforeMm ? common.after : words.axis}
              </th>
            </tr>
          </thead>
          <tbody>
            {twinShares.map((share) => (
              <tr key={share}>
                <th scope="row">{formats.percent(share * 100, 0)}</th>
                {beforeMm ? <td class="number">{at(beforeMm, share).text}</td> : null}
                <td class="number">{at(lengthsMm, share).text}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  );
}
