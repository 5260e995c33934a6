import { benchFacts } from '../../model/mill/bench-limit-facts.ts';
import { inchesFromMillimetres } from '../../model/units.ts';
import { count, exact, procedure, read, step } from '../steps.ts';
import type { Origin } from '../working.ts';
import { type BenchReading, onBench, reading } from './bench-reading.ts';

const inDrawing: Origin = { at: 'drawing' };
const fixed = (value: number, decimals: number) => ({ as: 'number', value, decimals }) as const;

/** How many times its size a thread is drawn. @param acrossMm the thread's own width, mm */
export const timesDrawn = (key: 'sectionTimes' | 'clothTimes', acrossMm: number, times: number): BenchReading =>
  reading(
    key,
    procedure(
      [
        step('threadAcross', exact(acrossMm, 'millimetres'), onBench),
        step('threadDrawn', exact(acrossMm * times, 'millimetres'), inDrawing),
      ],
      count(times),
    ),
  );

/** Fibres drawn in a yarn that is cut through: those of one single, whole, for each single. */
export const fibresDrawn = (inSingle: number, singles: number): BenchReading =>
  reading(
    'fibresDrawn',
    procedure(
      [step('fibresInSection', exact(inSingle, 'fibres'), onBench), step('plies', exact(singles), onBench)],
      count(Math.round(inSingle) * singles),
    ),
  );

/** Length of yarn that is weighed at a time for its evenness. */
export const cutWeighed: BenchReading = reading(
  'evennessCut',
  procedure(
    [step('evennessCut', exact(benchFacts.evennessCutMm.value, 'millimetres'), read(benchFacts.evennessCutMm))],
    {
      as: 'text',
      text: `${benchFacts.evennessCutMm.value}\u00a0mm`,
    },
  ),
);

/** Length of the strip that hangs over a table's edge. @param lengthMm as it is drawn */
export const overhangDrawn = (lengthMm: number): BenchReading =>
  reading(
    'overhang',
    procedure([step('overhangLength', exact(lengthMm, 'millimetres'), inDrawing)], {
      as: 'length',
      value: inchesFromMillimetres(lengthMm),
      decimals: 1,
    }),
  );

const card = { source: 'ISO/IEC 7810, ID-1: 85.60 x 53.98 mm', mark: 'published' } as const;

/** Width of a bank card. */
export const cardWidth = (widthMm: number): BenchReading =>
  reading(
    'cardWidth',
    procedure([step('cardWidth', exact(widthMm, 'millimetres'), read(card))], {
      as: 'text',
      text: `${widthMm.toFixed(2)}\u00a0mm`,
    }),
  );

const cssPixel = { source: 'CSS Values and Units, W3C: 1 in = 96 px', mark: 'published' } as const;

/** Dots of the picture in a centimeter. @param isUsual nobody has laid a card on this screen */
export const dotsPerCm = (pxPerMm: number, isUsual: boolean): BenchReading =>
  reading(
    'dotsPerCm',
    procedure([step('dotsPerMm', exact(pxPerMm), isUsual ? read(cssPixel) : { at: 'chosen' })], fixed(pxPerMm * 10, 1)),
  );
