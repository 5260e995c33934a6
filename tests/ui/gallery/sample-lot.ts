import type { FibreReading } from '../../../src/model/fibre.ts';
import type { CountLedger, MassLedger } from '../../../src/model/ledger.ts';
import { breakAtRandom } from '../../../src/model/length/breakage.ts';
import { gaussianByMass } from '../../../src/model/length/length-distribution.ts';
import { lengthArrayMm, shortFibrePercent } from '../../../src/model/length/statistics.ts';
import { type PartMasses, partMasses } from '../../../src/model/lot.ts';
import { kilogramsFromPounds } from '../../../src/model/units.ts';

const pounds = (some: Partial<PartMasses>): PartMasses =>
  partMasses(Object.fromEntries(Object.entries(some).map(([part, value]) => [part, kilogramsFromPounds(value ?? 0)])));

/** A made-up gin ledger that closes, for looking at the parts. */
export const sampleLedger: MassLedger = {
  station: 'ginning',
  in: [
    {
      account: 'lot',
      dryKg: pounds({ lint: 492.6, seed: 666.7, burs: 5.4, sticks: 3.2, leaf: 24.6, motes: 9.1, dirt: 2.2 }),
      waterKg: kilogramsFromPounds(89.8),
    },
  ],
  out: [
    {
      account: 'seedHouse',
      dryKg: pounds({ lint: 3.0, seed: 665.4, burs: 1.3, sticks: 0.8, leaf: 2.5, motes: 2.3, dirt: 0.7 }),
      waterKg: kilogramsFromPounds(57.3),
    },
    {
      account: 'ginTrash',
      dryKg: pounds({ lint: 3.9, seed: 0.9, burs: 2.7, sticks: 1.4, leaf: 4.9, motes: 3.2, dirt: 0.9 }),
      waterKg: kilogramsFromPounds(1.4),
    },
    {
      account: 'lintCleanerWaste',
      dryKg: pounds({ lint: 15.4, seed: 0.2, burs: 1.0, sticks: 0.6, leaf: 10.0, motes: 2.3, dirt: 0.4 }),
      waterKg: kilogramsFromPounds(2.1),
    },
    {
      account: 'lot',
      dryKg: pounds({ lint: 470.3, seed: 0.2, burs: 0.4, sticks: 0.4, leaf: 7.2, motes: 1.3, dirt: 0.2 }),
      waterKg: kilogramsFromPounds(29),
    },
  ],
};

export const sampleCounts: readonly CountLedger[] = [
  {
    station: 'bloom',
    whole: { name: 'squares', count: 812_400.4 },
    shares: [
      { name: 'flowers', count: 511_300.7 },
      { name: 'squaresShed', count: 289_000.3 },
      { name: 'squaresUnopened', count: 12_099.4 },
    ],
  },
  {
    station: 'boll',
    whole: { name: 'flowers', count: 511_300.7 },
    shares: [
      { name: 'bolls', count: 300_100.2 },
      { name: 'bollsShed', count: 211_200.5 },
    ],
  },
];

const inBoll = gaussianByMass(27.5, 0.22);
const ginned = breakAtRandom(inBoll, 0.006);
const count = 120;
export const sampleLengths = { before: lengthArrayMm(inBoll, count), after: lengthArrayMm(ginned, count) };
export const sampleReadings: { before: FibreReading; after: FibreReading } = {
  before: {
    upperHalfMeanMm: 29.6,
    uniformityPercent: 84.1,
    shortFibrePercentByWeight: shortFibrePercent(inBoll, 'weight'),
    strengthGPerTex: 30.1,
    micronaire: 4.2,
  },
  after: {
    upperHalfMeanMm: 28.2,
    uniformityPercent: 81.3,
    shortFibrePercentByWeight: shortFibrePercent(ginned, 'weight'),
    strengthGPerTex: 29.8,
    micronaire: 4.2,
  },
};
