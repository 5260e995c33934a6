import type { Facts } from '../fact.ts';
import { MM_PER_INCH } from '../units.ts';

const calibrated =
  'calibrated to the lengths and uniformities that classing offices report (USDA crop means); plain tangent theory gives 67 to 71 % where 80 to 83 is classed';

/** How the classing instrument sees a beard of fibres. */
export const beardFacts = {
  weightExponent: {
    value: 1.7,
    unit: 'power of length',
    range: [1.5, 1.9],
    source: `${calibrated}; that longer fibres are caught more often is published`,
    mark: 'assumption',
    note: '1.5 with a scale of 0.88 fits as well',
  },
  lengthScale: {
    value: 0.83,
    unit: 'ratio',
    range: [0.8, 0.88],
    source: `${calibrated}; stands for crimp, the weighting and the staple tradition together`,
    mark: 'assumption',
  },
  startMm: {
    value: 3.8,
    unit: 'mm',
    range: [3.5, 4.2],
    source: 'the scan starts 0.15 in from the clamp',
    mark: 'memory',
  },
} as const satisfies Facts;

/** Points of the length array that the trade has names for. */
export const arrayFacts = {
  shortBelowMm: {
    value: MM_PER_INCH / 2,
    unit: 'mm',
    source: 'short fibre content: fibres shorter than half an inch, by definition of the trade',
    mark: 'published',
  },
  upperQuartile: {
    value: 0.25,
    unit: 'fraction of the weight',
    source: 'ASTM D1440-96, 3.1: the length exceeded by 25 % of the fibres by weight',
    mark: 'published',
  },
} as const satisfies Facts;
