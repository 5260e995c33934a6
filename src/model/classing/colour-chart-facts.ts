import type { Facts, FactTable } from '../fact.ts';

const ours =
  'our own simplification, from low-confidence memory of the picture; it passes the two known points (Rd 71.7, +b 9.6) = 42 and (72, 9.0) = 41. NOT the official chart, whose edges are not published as numbers';

/** How the edges lean: brighter cotton may be a little yellower and stay white, and yellowness counts a little as brightness. */
export const chartLean = {
  perRd: { value: 0.05, unit: '+b per Rd', range: [0, 0.1], source: ours, mark: 'assumption' },
  fromRd: { value: 72, unit: 'Rd', range: [70, 74], source: ours, mark: 'assumption' },
  yellownessWeight: { value: 0.8, unit: 'Rd per +b', range: [0.4, 1.2], source: ours, mark: 'assumption' },
  yellownessFrom: { value: 8, unit: '+b', range: [7, 9], source: ours, mark: 'assumption' },
} as const satisfies Facts;

/** Colour groups by yellowness: white, light spotted, spotted, tinged; above the last edge yellow stained. */
export const colourGroups: FactTable<{ readonly group: number; readonly belowB: number; readonly leans: boolean }> = {
  rows: [
    { group: 1, belowB: 9.3, leans: true },
    { group: 2, belowB: 10.6, leans: true },
    { group: 3, belowB: 12.1, leans: true },
    { group: 4, belowB: 13.8, leans: false },
  ],
  unit: '+b at Rd 72',
  source: ours,
  mark: 'assumption',
};

/** Lowest brightness of grades 1 to 7. Brightness is Rd, with a credit for yellowness because the grade lines slope. */
export const colourSteps: FactTable<number> = {
  rows: [81.5, 78, 74.5, 70, 65, 60, 54],
  unit: 'Rd',
  source: ours,
  mark: 'assumption',
};

const ourPima =
  'our own simplification: sound Pima reads creamier than upland and all its grades form one row; placed so that about four bales in ten are grade 1 and half grade 2, as in 2018-19 (AMS MP_CN104)';

/** Lowest brightness of Pima colour grades 1 to 5; darker is 6. */
export const pimaColourSteps: FactTable<number> = {
  rows: [69.2, 65.2, 61.2, 57.2, 53.2],
  unit: 'Rd',
  source: ourPima,
  mark: 'assumption',
};

/** Yellowness beyond what sound Pima has counts against its brightness. */
export const pimaLean = {
  yellownessWeight: { value: 1.5, unit: 'Rd per +b', range: [0.5, 2.5], source: ourPima, mark: 'assumption' },
  soundB: { value: 11.5, unit: '+b', range: [10.5, 13], source: ourPima, mark: 'assumption' },
} as const satisfies Facts;
