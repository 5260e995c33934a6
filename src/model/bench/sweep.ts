import { readFibre } from '../fibre.ts';
import { benchFacts, sweepTable } from '../mill/bench-limit-facts.ts';
import { inchesFromMillimetres, nominalMicronaireFromMtex } from '../units.ts';
import { fibreOfBales, trashOfBales } from './lint.ts';
import type { FibreCard, SetUp } from './set-up.ts';
import { type WorkedBench, workBench } from './work-bench.ts';

export type SweepInput = keyof typeof sweepTable.ranges;
export const sweepInputs = Object.keys(sweepTable.ranges) as readonly SweepInput[];

/** One place of a curve. */
export interface SweepPlace {
  /** In, micronaire, percent of short fibre by weight, or Ne. */
  readonly at: number;
  readonly bench: WorkedBench;
}

/** What a mix of bales reads as one: it has no one card to change. */
function cardOfMix({ card, bales }: SetUp): FibreCard {
  if (bales.length === 0) return card;
  const fibre = fibreOfBales(bales);
  const { upperHalfMeanMm, uniformityPercent } = readFibre(fibre);
  const { strengthGPerTex, reflectanceRd, yellownessB, linearDensityMtex } = fibre;
  return {
    ...card,
    kind: bales[0]!.kind,
    lengthIn: inchesFromMillimetres(upperHalfMeanMm),
    uniformityPercent,
    strengthGPerTex,
    micronaire: nominalMicronaireFromMtex(linearDensityMtex),
    reflectanceRd,
    yellownessB,
    trashAreaPercent: trashOfBales(bales),
  };
}

/** The bench with one input changed; a mix of bales stands as one card that reads the same. */
function changed(setUp: SetUp, mix: FibreCard, input: SweepInput, value: number): SetUp {
  switch (input) {
    case 'count':
      return { ...setUp, warp: `${value}Ne`, weft: `${value}Ne` };
    case 'staple':
      return { ...setUp, bales: [], card: { ...mix, lengthIn: value } };
    case 'micronaire':
      return { ...setUp, bales: [], card: { ...mix, micronaire: value } };
    case 'shortFibre':
      return { ...setUp, bales: [], card: { ...mix, uniformityPercent: value } };
  }
}

const decimals = 100;
const inHundredths = (value: number): number => Math.round(value * decimals) / decimals;

/** The benches of a sweep, still to be worked out one at a time. @returns in the order of their input */
export function sweepSetUps(setUp: SetUp, input: SweepInput): readonly SetUp[] {
  const { low, high } = sweepTable.ranges[input];
  const places = benchFacts.sweepPlaces.value;
  const mix = cardOfMix(setUp);
  return Array.from({ length: places }, (_, i) =>
    changed(setUp, mix, input, inHundredths(low + ((high - low) * i) / (places - 1))),
  );
}

/** Works out one place of a sweep. Short fibre is what the uniformity comes to, not the uniformity itself. */
export function sweepPlace(setUp: SetUp, input: SweepInput): SweepPlace {
  const bench = workBench(setUp);
  return { at: inputOf(bench, input), bench };
}

/** Where a bench stands on the axis of an input. */
export function inputOf({ setUp, fibre, reading, warp }: WorkedBench, input: SweepInput): number {
  switch (input) {
    case 'staple':
      return setUp.bales.length > 0 ? inchesFromMillimetres(reading.upperHalfMeanMm) : setUp.card.lengthIn;
    case 'micronaire':
      return setUp.bales.length > 0 ? nominalMicronaireFromMtex(fibre.linearDensityMtex) : setUp.card.micronaire;
    case 'shortFibre':
      return reading.shortFibrePercentByWeight;
    case 'count':
      return warp.singleNe;
  }
}
