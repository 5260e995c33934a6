import type { MassEntry } from '../model/ledger.ts';
import type { Season } from '../model/season.ts';
import { kilogramsFromPounds, POUNDS_PER_STATISTICAL_BALE } from '../model/units.ts';

/** Mass of a stream, kg for each statistical bale, 480 lb net, that the season pressed. */
export interface GinStream {
  readonly lint: number;
  readonly seed: number;
  /** Burs, sticks, leaf, motes and dirt. */
  readonly trash: number;
  readonly water: number;
}
export const streamParts = ['lint', 'seed', 'trash', 'water'] as const satisfies readonly (keyof GinStream)[];

/** A step of the gin: what it takes out, what the press adds in water, and what goes on. */
interface GinStep {
  readonly step: 'cleaning' | 'stand' | 'lintCleaners' | 'press';
  readonly taken: GinStream;
  readonly added: GinStream;
  readonly left: GinStream;
}

/** A gin's work for one statistical bale. */
export interface GinBalance {
  readonly into: GinStream;
  /** Seed as it is weighed at the seed house: with its water, its linters and the little trash that goes with it, kg. */
  readonly seedKg: number;
  readonly steps: readonly GinStep[];
}

const nothing: GinStream = { lint: 0, seed: 0, trash: 0, water: 0 };
export const streamKg = (stream: GinStream): number => streamParts.reduce((sum, part) => sum + stream[part], 0);
const combined = (a: GinStream, b: GinStream, sign: 1 | -1): GinStream => ({
  lint: a.lint + sign * b.lint,
  seed: a.seed + sign * b.seed,
  trash: a.trash + sign * b.trash,
  water: a.water + sign * b.water,
});

/** What some accounts hold, shared out. */
function streamOf(entries: readonly MassEntry[], accounts: readonly string[], bales: number): GinStream {
  return entries
    .filter(({ account }) => accounts.includes(account))
    .map(({ dryKg: { lint, seed, burs, sticks, leaf, motes, dirt }, waterKg }) => ({
      lint: lint / bales,
      seed: seed / bales,
      trash: (burs + sticks + leaf + motes + dirt) / bales,
      water: waterKg / bales,
    }))
    .reduce((sum, one) => combined(sum, one, 1), nothing);
}

/**
 * The gin's ledgers for one statistical bale, from the module to the tied bale. Bales differ in weight and the last of a season is
 * a remnant, so what was pressed is divided by 480 lb and not by the number of bales.
 * @throws Error when the season pressed none
 */
export function ginBalance({ cleaning, ginning, pressing }: Season): GinBalance {
  if (!cleaning || !ginning || !pressing || pressing.bales.length === 0)
    throw new Error('gin balance: this season pressed no bale');
  const netKg = pressing.bales.reduce((sum, bale) => sum + bale.netKg, 0);
  const count = netKg / kilogramsFromPounds(POUNDS_PER_STATISTICAL_BALE);
  const into = streamOf(cleaning.ledger.in, ['lot'], count);
  const seedKg = streamKg(streamOf(ginning.ledger.out, ['seedHouse'], count));
  const taken: readonly [GinStep['step'], GinStream, GinStream][] = [
    [
      'cleaning',
      streamOf(cleaning.ledger.out, ['ginTrash', 'evaporated'], count),
      streamOf(cleaning.ledger.in, ['moistureAdded'], count),
    ],
    [
      'stand',
      streamOf(ginning.ledger.out, ['seedHouse', 'ginTrash'], count),
      streamOf(ginning.ledger.in, ['moistureAdded'], count),
    ],
    ['lintCleaners', streamOf(ginning.ledger.out, ['lintCleanerWaste'], count), nothing],
    ['press', nothing, streamOf(pressing.ledger.in, ['moistureAdded'], count)],
  ];
  let now = into;
  const steps = taken.map(([step, out, added]): GinStep => {
    now = combined(combined(now, added, 1), out, -1);
    return { step, taken: out, added, left: now };
  });
  return { into, steps, seedKg };
}
