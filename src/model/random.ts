import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/**
 * One stream for each place that needs chance. A stream's number is its place in this list, so new
 * names go at the end: then no old season changes.
 */
export const streamNames = [
  'weather',
  'plant',
  'field',
  'harvest',
  'module',
  'gin',
  'press',
  'classing',
  'mill',
  'cloth',
  'scene',
  'doubt',
  'sheets',
] as const;
export type StreamName = (typeof streamNames)[number];

/** A seeded source of numbers. The same seed and stream give the same numbers, whatever other streams did. */
export interface Random {
  /** Uniform in [0, 1). */
  uniform(): number;
  /** Integer from low to high, both included. */
  integer(low: number, high: number): number;
  /** Normal with mean 0 and standard deviation 1. */
  normal(): number;
}

/**
 * Opens the stream of a name: the seed's generator jumped ahead by 2^64 draws, once more for each place in the list, so that
 * changing how the gin draws never changes the weather.
 * @param seed any safe integer; its low 32 bits count
 * @param stream which stream
 * @param substream jumps further, for example one per bale, so that re-classing a bale repeats its reading
 */
export function openStream(seed: number, stream: StreamName, substream = 0): Random {
  // Mixing the substream into the seed instead of jumping keeps a thousand bales cheap.
  const generator = xoroshiro128plus((seed ^ Math.imul(substream, 0x9e3779b1)) | 0);
  // One jump at the least: straight from a small seed the first draws are all alike.
  for (let jumps = streamNames.indexOf(stream) + 1; jumps > 0; jumps--) generator.jump();
  const uniform = () => uniformFloat64(generator);
  return {
    uniform,
    integer: (low, high) => uniformInt(generator, low, high),
    // Box-Muller; 1 - u keeps the logarithm away from zero.
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
}
