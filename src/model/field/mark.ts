import type { Fact, Mark } from '../fact.ts';

type Limits = readonly [low: number, high: number];

const withMark =
  (mark: Mark) =>
  (value: number, unit: string, range: Limits | null, source: string, note?: string): Fact => ({
    value,
    unit,
    ...(range ? { range } : {}),
    source,
    mark,
    ...(note ? { note } : {}),
  });

/** Read in the source named. */
export const published = withMark('published');
/** Arithmetic on marked inputs, or a constant calibrated to marked values. */
export const derived = withMark('derived');
/** Recalled; the source is believed and was not read. */
export const memory = withMark('memory');
/** A modelling choice with no authority. */
export const assumption = withMark('assumption');
