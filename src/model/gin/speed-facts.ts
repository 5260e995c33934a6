import type { Fact } from '../fact.ts';

/** How fast a hand-cranked gin cleaned cotton. */
export const handGinFacts = {
  lintLbPerDay: {
    value: 50,
    unit: 'lb of lint/day',
    range: [50, 80],
    source:
      'the stated task at a hand-cranked gin in Georgia, and 60 to 80 lb a day reached (letter of 24 November 1793, Founders Online, National Archives, founders.archives.gov)',
    mark: 'published',
    note: 'the task was set for one man, most likely enslaved; the cylinder was 2 ft 2 in. long',
  },
  mostLintLbPerDay: {
    value: 80,
    unit: 'lb of lint/day',
    range: [60, 80],
    source: 'same letter: the most that it says was reached',
    mark: 'published',
  },
} as const satisfies Record<string, Fact>;

/** How fast the wheels of a gin turn. They move no mass in the model: pictures show them, slowed by a stated factor. */
export const turningFacts = {
  saws: {
    value: 700,
    unit: 'turns/min',
    range: [600, 900],
    source: 'saws of a gin stand, 600-900 (USDA Agriculture Handbook 503)',
    mark: 'memory',
  },
  brush: {
    value: 1500,
    unit: 'turns/min',
    range: [1200, 2000],
    source: 'the brush passes the saws faster than they go themselves (USDA Agriculture Handbook 503, in kind)',
    mark: 'memory',
  },
  roller: {
    value: 120,
    unit: 'turns/min',
    range: [90, 400],
    source: 'ginning roller of 15 in., conventional to high speed (USDA Agriculture Handbook 503, in kind)',
    mark: 'memory',
  },
  rotaryKnife: {
    value: 300,
    unit: 'turns/min',
    source: 'best rate of a rotary-knife stand on Pima (Gillum & Armijo 1999)',
    mark: 'published',
  },
  lintCleaner: {
    value: 1000,
    unit: 'turns/min',
    range: [800, 1200],
    source: 'saw cylinder of a lint cleaner (USDA Agriculture Handbook 503)',
    mark: 'memory',
  },
} as const satisfies Record<string, Fact>;

/** How fast the wheels of the cleaning line turn, on the same terms. */
export const cleaningTurningFacts = {
  disperser: {
    value: 300,
    unit: 'turns/min',
    range: [200, 500],
    source: 'spiked cylinders of a module feeder’s dispersing head (ARS Stoneville, Overview of a Cotton Gin, in kind)',
    mark: 'assumption',
  },
  cylinder: {
    value: 480,
    unit: 'turns/min',
    range: [480, 1100],
    source: 'spiked cylinders of a seed-cotton cleaner, 480 to 1,100 compared (Whitelock & Anthony 2003)',
    mark: 'published',
    note: 'faster cylinders clean better and lose more fibre',
  },
  extractorSaw: {
    value: 350,
    unit: 'turns/min',
    range: [300, 450],
    source: 'saw cylinders of stick machines and extractor-feeders (USDA Agriculture Handbook 503)',
    mark: 'memory',
  },
  brush: {
    value: 1000,
    unit: 'turns/min',
    range: [700, 1300],
    source: 'the doffing brush passes the saw faster than it goes itself (USDA Agriculture Handbook 503, in kind)',
    mark: 'memory',
  },
} as const satisfies Record<string, Fact>;

/** How often the tramper of a press goes down. */
export const trampingFacts = {
  tramper: {
    value: 10,
    unit: 'strokes/min',
    range: [6, 15],
    source:
      'tramper of a double-box press, a few strokes for each batt that the slide brings (USDA Agriculture Handbook 503, in kind)',
    mark: 'memory',
  },
} as const satisfies Record<string, Fact>;
