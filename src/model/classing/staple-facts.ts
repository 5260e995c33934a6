import type { Facts, FactTable } from '../fact.ts';
import type { CottonKind } from '../fibre.ts';

/** One line of a staple chart: the code and the shortest length, in hundredths of an inch, that still gets it. */
interface StapleStep {
  readonly code32nds: number;
  readonly fromHundredths: number;
}

/** Upland: upper half mean length to staple in thirty-seconds. Codes 25 and 27 do not exist. */
const uplandStaple: FactTable<StapleStep> = {
  rows: [
    { code32nds: 24, fromHundredths: 0 },
    { code32nds: 26, fromHundredths: 80 },
    { code32nds: 28, fromHundredths: 86 },
    { code32nds: 29, fromHundredths: 90 },
    { code32nds: 30, fromHundredths: 93 },
    { code32nds: 31, fromHundredths: 96 },
    { code32nds: 32, fromHundredths: 99 },
    { code32nds: 33, fromHundredths: 102 },
    { code32nds: 34, fromHundredths: 105 },
    { code32nds: 35, fromHundredths: 108 },
    { code32nds: 36, fromHundredths: 111 },
    { code32nds: 37, fromHundredths: 114 },
    { code32nds: 38, fromHundredths: 118 },
    { code32nds: 39, fromHundredths: 121 },
    { code32nds: 40, fromHundredths: 124 },
    { code32nds: 41, fromHundredths: 127 },
    { code32nds: 42, fromHundredths: 130 },
    { code32nds: 43, fromHundredths: 133 },
    { code32nds: 44, fromHundredths: 136 },
  ],
  unit: '0.01 in',
  source: 'Classification of Upland Cotton, USDA-AMS',
  mark: 'published',
  note: 'instrument maker: 44 only above 1.38 in; the AMS print is used',
};

/** American Pima has its own chart. */
const pimaStaple: FactTable<StapleStep> = {
  rows: [
    { code32nds: 40, fromHundredths: 0 },
    { code32nds: 42, fromHundredths: 121 },
    { code32nds: 44, fromHundredths: 126 },
    { code32nds: 46, fromHundredths: 132 },
    { code32nds: 48, fromHundredths: 137 },
    { code32nds: 50, fromHundredths: 143 },
    { code32nds: 52, fromHundredths: 148 },
  ],
  unit: '0.01 in',
  source: 'American Pima column of a trade staple chart (textilesbar.com), to 50; 52 begins where it ends',
  mark: 'published',
  note: 'that chart sets 1.32 to 1.36 in beside 45, where only the even 46 can be meant',
};

/** Which chart reads a cotton's length. */
export const stapleChart: Readonly<Record<CottonKind, FactTable<StapleStep>>> = {
  upland: uplandStaple,
  pima: pimaStaple,
};

const regulation = '7 CFR 28.303, hand-array upper quartile length of each upland staple';
/** The line through the middles of the regulation's ranges: staple 32 at 1.082 in, .041 in for each thirty-second. */
export const handArray = {
  inchOfStapleIn: { value: 1.082, unit: 'in', range: [1.072, 1.092], source: regulation, mark: 'published' },
  stepIn: {
    value: 0.041,
    unit: 'in per 1/32 in of staple',
    source: `${regulation}; beyond 1-1/4 in steps of .041`,
    mark: 'published',
  },
  shortest32nds: {
    value: 24,
    unit: '1/32 in',
    source: 'code of all below 13/16 in the chart of instrument lengths (under 0.79 in), where the regulation begins',
    mark: 'published',
  },
} as const satisfies Facts;
