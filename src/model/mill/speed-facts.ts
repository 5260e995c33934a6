import type { Fact, Facts } from '../fact.ts';

const memory = (value: number, range: readonly [number, number], source: string): Fact => ({
  value,
  unit: 'turns/min',
  range,
  source,
  mark: 'memory',
});
const practice = (value: number, range: readonly [number, number], source: string): Fact => ({
  value,
  unit: 'turns/min',
  range,
  source,
  mark: 'common practice',
});

/**
 * How fast the machines of a mill turn, where the 1930s differ then too. Pictures are drawn from them, slowed; no mass and no
 * fibre hangs on them.
 */
export const millSpeeds = {
  present: {
    beater: practice(800, [500, 1000], 'beater of an opening line'),
    card: practice(450, [300, 600], 'cylinder of a card'),
    comber: practice(400, [200, 500], 'combing cycles of a comber, one turn of its cylinder each'),
    spindle: {
      value: 15_000,
      unit: 'turns/min',
      range: [10_000, 25_000],
      source: 'spindle of a ring frame in a question of GATE 2000 (Indian Institutes of Technology): 25s yarn',
      mark: 'published',
    },
    openingRoller: practice(7500, [5000, 10_000], 'opening roller of a rotor machine'),
    rotor: practice(80_000, [35_000, 150_000], 'rotor of a rotor machine; small rotors turn faster'),
    loom: practice(600, [300, 1000], 'picks a minute of a rapier loom'),
    knitting: practice(30, [15, 45], 'circular knitting machine'),
  },
  thirties: {
    beater: memory(800, [500, 1000], 'beater of an opening line of the 1930s'),
    card: memory(165, [150, 180], 'cylinder of a card of the 1930s'),
    comber: memory(100, [80, 130], 'combing cycles of a comber of the 1930s'),
    spindle: memory(9000, [7000, 11_000], 'spindle of a ring frame of the 1930s'),
    loom: memory(160, [140, 200], 'picks a minute of a shuttle loom'),
    knitting: memory(25, [15, 35], 'circular knitting machine of the 1930s'),
  },
} as const satisfies Record<'present' | 'thirties', Facts>;

export type MillSpeed = keyof typeof millSpeeds.present;
