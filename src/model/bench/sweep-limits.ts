import type { SpinningReason, SpinningVerdict } from '../mill/limits.ts';
import type { SweepPlace } from './sweep.ts';

/** Where a curve crosses a limit of its yarn. */
export interface SweepLimit {
  /** 'comfort' where strain begins, 'reach' where the count can no longer be spun. */
  readonly bounds: 'comfort' | 'reach';
  /** What binds on the far side. */
  readonly reason: SpinningReason;
  /** Place on the curve's axis. */
  readonly at: number;
}

const finest = {
  comfort: ({ comfortableNe }: SpinningVerdict) => comfortableNe,
  reach: ({ ceilingNe }: SpinningVerdict) => ceilingNe,
} as const;

const isPast = { comfort: 'strained', reach: 'impossible' } as const;

/** How far the count wanted lies from a limit, Ne: below zero past it. */
const room = ({ bench }: SweepPlace, bounds: SweepLimit['bounds']): number =>
  finest[bounds](bench.warp.spinning.verdict) - bench.warp.singleNe;

/**
 * The limits that a curve crosses, in the order of its axis. Between two places the limit is taken as straight: it is for the
 * count and the staple, and bends little for the others.
 * @param places in the order of their axis
 */
export function sweepLimits(places: readonly SweepPlace[]): SweepLimit[] {
  return places
    .slice(1)
    .flatMap((to, i) => {
      const from = places[i]!;
      return (['comfort', 'reach'] as const).flatMap((bounds): SweepLimit[] => {
        const [before, after] = [room(from, bounds), room(to, bounds)];
        if (before >= 0 === after >= 0) return [];
        const { status, reason } = (before < 0 ? from : to).bench.warp.spinning.verdict;
        // Where both limits lie between the same two places, the yarn past them is out of reach, and that is what is told.
        if (reason === null || status !== isPast[bounds]) return [];
        return [{ bounds, reason, at: from.at + ((to.at - from.at) * before) / (before - after) }];
      });
    })
    .sort((a, b) => a.at - b.at);
}
