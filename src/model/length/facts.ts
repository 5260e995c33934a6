import type { Fact } from '../fact.ts';

const calibrated =
  'calibrated jointly to 65 published length targets (short, medium and long upland and Pima at each gin stage; Armijo et al. 2019, Hughs et al. 2013, Byler 2005, USDA crop means)';

/** Breaks per mm of a 25 mm fibre that a machine makes, at 6 % lint moisture. The rate grows as length to the power 2.5. */
export const machineBreakagePerMm = {
  rollerStand: { value: 0.0008, unit: 'breaks/mm', range: [0.0004, 0.0015], source: calibrated, mark: 'assumption' },
  sawStand: { value: 0.0033, unit: 'breaks/mm', range: [0.0025, 0.005], source: calibrated, mark: 'assumption' },
  sawLintCleaner: { value: 0.0022, unit: 'breaks/mm', range: [0.0015, 0.003], source: calibrated, mark: 'assumption' },
  rollerLintCleaner: {
    value: 0.0011,
    unit: 'breaks/mm',
    range: [0.0005, 0.002],
    source: 'half a saw cleaner; gives the published uniformity change of -0.2 to -0.8 (Armijo et al. 2019)',
    mark: 'assumption',
  },
  stripper: {
    value: 0.0015,
    unit: 'breaks/mm',
    range: [0, 0.003],
    source:
      'gives short fibre +0.9 point and mean length -0.4 mm against picking, as published (ASAE, Alternate harvesting systems and cotton quality)',
    mark: 'derived',
  },
  card: {
    value: 0.0015,
    unit: 'breaks/mm',
    range: [0, 0.003],
    source: 'keeps the published "carding without noticeable shortening" (Rieter encyclopaedia, influence of length)',
    mark: 'assumption',
  },
} as const satisfies Record<string, Fact>;

/** How breakage by a machine grows with length. */
export const breakageLaw = {
  exponent: {
    value: 2.5,
    unit: 'power of length',
    range: [2, 3],
    source: `rate of breakage; 2 to 3 fit equally well, ${calibrated}; 2.5 is published for roller carding (J. Text. Mach. Soc. Japan 15(6):214)`,
    mark: 'derived',
  },
  referenceLengthMm: {
    value: 25,
    unit: 'mm',
    range: [20, 30],
    source: 'the length at which the breaks of a machine are stated: near the mean of upland',
    mark: 'assumption',
  },
  steps: {
    value: 4,
    unit: 'steps a machine',
    range: [3, 10],
    source:
      'second-order steps: with half the step the mean length of cotton moves by less than 0.002 mm, short fibre by less than 0.0005 points',
    mark: 'derived',
  },
} as const satisfies Record<string, Fact>;

/** How breakage answers to lint moisture at the machine. */
export const moistureBreakage = {
  slopePerPoint: {
    value: 0.12,
    unit: '1/point',
    range: [0.1, 0.2],
    source: 'gives short fibre -0.5 point for each point of moisture, 3.7 to 6.9 % (78-bale atomizing-nozzle study)',
    mark: 'derived',
    note: 'breakage is multiplied by exp(-slope x (moisture - 6)); physical sign published: the pull-off force is 55 % of fibre strength at 7 % and the ratio worsens on drying (Moore & Griffin 1964)',
  },
  referencePercent: {
    value: 6,
    unit: '% wet basis',
    range: [5, 7],
    source: 'moisture at which the breakage table is quoted',
    mark: 'assumption',
  },
  heldAbovePercent: {
    value: 8,
    unit: '% wet basis',
    range: [7, 9],
    source: 'no data above 6.9 %; the effect is held flat',
    mark: 'assumption',
  },
} as const satisfies Record<string, Fact>;

/** Multiplies a machine's breakage for the moisture of the lint in it. */
export function moistureFactor(lintMoisturePercent: number): number {
  const { slopePerPoint, referencePercent, heldAbovePercent } = moistureBreakage;
  const points = Math.min(lintMoisturePercent, heldAbovePercent.value) - referencePercent.value;
  return Math.exp(-slopePerPoint.value * points);
}
