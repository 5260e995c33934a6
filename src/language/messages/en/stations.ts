import type { StationId } from '../../../model/station.ts';

/** A station's name, what to do there in at most twelve words, and why someone who sews cares. */
interface StationWords {
  readonly name: string;
  readonly instruction: string;
  readonly atTheTable: string;
}

export const stations = {
  planting: {
    name: 'Planting',
    instruction: 'Pick a seed, a date and a row, then plant.',
    atTheTable: 'The kind of seed sets how long the fiber can be, and so how fine your thread can be.',
  },
  bloom: {
    name: 'Bloom',
    instruction: 'Decide how much to water, then watch the squares flower.',
    atTheTable: 'Each flower that holds can become a boll: enough cloth for a patch about four inches square.',
  },
  boll: {
    name: 'Boll',
    instruction: 'Decide whether to drop the leaves, and when.',
    atTheTable: 'Fiber fills its wall in these weeks. Stop the plant early and the fiber stays thin.',
  },
  harvest: {
    name: 'Harvest',
    instruction: 'Choose who or what picks, and how long to wait.',
    atTheTable: 'Rain on open bolls grays the cotton before anyone spins it.',
  },
  module: {
    name: 'Module',
    instruction: 'Pack the seed cotton, cover it and mind its moisture.',
    atTheTable: 'Cotton stored too wet can heat and turn yellow long before it is cloth.',
  },
  cleaning: {
    name: 'Cleaning',
    instruction: 'Choose how much to dry and clean before the gin.',
    atTheTable: 'The specks in unbleached muslin are what no cleaner caught.',
  },
  ginning: {
    name: 'Ginning',
    instruction: 'Choose the stand and the lint cleaners.',
    atTheTable: 'Broken fibers have more ends, and every hair on a yarn starts at a fiber end.',
  },
  pressing: {
    name: 'Pressing',
    instruction: 'Set the weight of a bale and the moisture put back.',
    atTheTable: 'One bale is lint for about 765 dress shirts by one trade list; other lists differ.',
  },
  classing: {
    name: 'Classing',
    instruction: 'Read the grades, then choose a market.',
    atTheTable: 'Length and fineness, read here, decide how fine a yarn can be spun.',
  },
  spinning: {
    name: 'Spinning',
    instruction: 'Choose how to spin, and how fine.',
    atTheTable: 'Longer fiber needs less twist, and less twist makes a softer thread.',
  },
  weaving: {
    name: 'Weaving',
    instruction: 'Choose a weave, the threads per inch and a finish.',
    atTheTable: 'Thread count adds the ends and picks in one inch. Plies are not counted twice.',
  },
  sewing: {
    name: 'Sewing table',
    instruction: 'Choose to prewash, choose a seam, then cut.',
    atTheTable: 'Wash before you cut: cotton cloth can still shrink. Nothing is lost; the threads draw closer.',
  },
} satisfies Record<StationId, StationWords>;
