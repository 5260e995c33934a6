import { useId } from 'preact/hooks';
import type { Quantity } from '../language/quantity-formats.ts';
import { useWords } from '../language/words.ts';
import type { FibreReading } from '../model/fibre.ts';
import { ArrayTable } from './array-table.tsx';
import { FibreArray } from './fibre-array.tsx';
import { type Change, WhatChanged } from './what-changed.tsx';
import type { WorkingSource } from './working-source.ts';

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
  readonly workings?: FibreWorkings;
}

/** Which of the two states of the card a number belongs to. */
export type FibreState = 'now' | 'before';

/** How the numbers of the card were come by. */
export interface FibreWorkings {
  reading(key: keyof FibreReading, state: FibreState, name: string): WorkingSource;
  /** The length that a share of the fibers exceeds. */
  array(share: number, state: FibreState, name: string): WorkingSource;
}

/** The fiber of a lot: a sorted array on an indigo pad, its readings before and after, and the array as a table. */
export function FibreCard({ lengthsMm, beforeMm, reading, readingBefore, more = [], note, workings }: FibreCardProps) {
  const { messages, formats } = useWords();
  const { fibre: words, common } = messages;
  const id = useId();
  const line = (
    key: keyof FibreReading,
    name: keyof typeof words.readings,
    write: (value: number) => Quantity,
  ): Change => ({
    label: words.readings[name],
    help: words.readingHelp[name],
    after: write(reading[key]).text,
    ...(readingBefore ? { before: write(readingBefore[key]).text } : {}),
    ...(workings
      ? {
          working: workings.reading(key, 'now', words.readings[name]),
          workingBefore: workings.reading(key, 'before', `${words.readings[name]}, ${common.before}`),
        }
      : {}),
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
      <ArrayTable lengthsMm={lengthsMm} {...(beforeMm ? { beforeMm } : {})} {...(workings ? { workings } : {})} />
    </section>
  );
}
