import type { ClothDescription } from '../cloth/describe-cloth.ts';
import type { WorkedBench } from './work-bench.ts';

/** What two benches are compared by, in the order in which it is told. */
export const benchOutcomeKeys = [
  'shortFibre',
  'fibresInSection',
  'finestNe',
  'turns',
  'evenness',
  'tenacity',
  'fibreEnds',
  'realisation',
  'weight',
  'threadCount',
  'cover',
  'thickness',
  'bendingLength',
  'strip',
  'shrinkLength',
  'lintPerYard',
  'spindleTime',
] as const;
export type BenchOutcomeKey = (typeof benchOutcomeKeys)[number];

const woven = ({ cloth }: WorkedBench): ClothDescription | null =>
  cloth.description.kind === 'woven' ? cloth.description : null;

const outcomes: Readonly<Record<BenchOutcomeKey, (bench: WorkedBench) => number | null>> = {
  shortFibre: ({ reading }) => reading.shortFibrePercentByWeight,
  fibresInSection: ({ warp }) => warp.spinning.verdict.fibresInSection,
  finestNe: ({ warp }) => Math.max(0, warp.spinning.verdict.comfortableNe),
  turns: ({ warp }) => warp.turnsPerInch,
  evenness: ({ warp }) => warp.cvPercent,
  tenacity: ({ warp }) => warp.spinning.yarn?.tenacityCnPerTex ?? null,
  fibreEnds: ({ warp }) => warp.fibreEndsPerCm,
  realisation: ({ warp }) => (warp.spinning.yarnRealisation === null ? null : 100 * warp.spinning.yarnRealisation),
  weight: ({ cloth }) => cloth.description.gramsPerSquareMetre,
  threadCount: (bench) => woven(bench)?.threadCount ?? null,
  cover: (bench) => woven(bench)?.clothCover ?? null,
  thickness: (bench) => woven(bench)?.thicknessMm ?? null,
  bendingLength: ({ cloth }) => cloth.drape.bendingLengthMm,
  strip: ({ cloth }) => cloth.warpNewtons,
  shrinkLength: ({ cloth }) => cloth.shrinkPercent.length,
  lintPerYard: ({ lintGramsPerYard }) => lintGramsPerYard,
  spindleTime: ({ spindleMinutesPerYard }) => spindleMinutesPerYard,
};

/** One outcome of a bench in the model's unit; null where it has none, such as a thread count of a knit. */
export const benchOutcome = (key: BenchOutcomeKey, bench: WorkedBench): number | null => outcomes[key](bench);

/** One difference between two benches. */
export interface BenchDifference {
  readonly key: BenchOutcomeKey;
  readonly before: number;
  readonly after: number;
  /** After over before, less one; infinite where there was none before. */
  readonly share: number;
}

/**
 * What differs between two benches, the largest share first. What only one of them has is left out, and what is alike.
 * @param least share of a difference that is told, fraction
 */
export function benchDifferences(before: WorkedBench, after: WorkedBench, least: number): BenchDifference[] {
  return benchOutcomeKeys
    .flatMap((key) => {
      const [one, other] = [benchOutcome(key, before), benchOutcome(key, after)];
      if (one === null || other === null) return [];
      const share = one === other ? 0 : other / one - 1;
      return Math.abs(share) >= least && share !== 0 ? [{ key, before: one, after: other, share }] : [];
    })
    .sort((a, b) => Math.abs(b.share) - Math.abs(a.share));
}
