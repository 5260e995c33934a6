import type { Fact } from '../fact.ts';
import { lent, lentRows, type Market } from './market.ts';
import { sanJoaquin } from './market-san-joaquin-facts.ts';

const source = 'USDA-AMS Daily Spot Quotations, MP_CN003, Southeast, 26 May 2023';
const quoted = { unit: 'points', source, mark: 'published' } as const;
const base: Fact = { value: 82.35, unit: 'cents/lb', source, mark: 'published' };
const lender = sanJoaquin.baseCentsPerLb;
const plastic = sanJoaquin.extraneous.rows.filter(({ kind }) => kind === 'plastic');

/** Southeast. Colours 42 and yellower, uniformity and plastic were not read for this market and are filled. */
export const southeast: Market = {
  id: 'southeast',
  quoted: '26 May 2023',
  year: 2023,
  baseCentsPerLb: base,
  staples: [32, 33, 34, 35, 36, 37, 38],
  leafAxis: true,
  grades: {
    ...quoted,
    rows: [
      { colours: ['11', '21'], leaf: [1, 2], points: [-225, -50, 150, 250, 325, 375, 375] },
      { colours: ['11', '21'], leaf: [3, 3], points: [-225, -50, 150, 225, 300, 350, 350] },
      { colours: ['11', '21'], leaf: [4, 4], points: [-225, -125, 75, 175, 225, 250, 250] },
      { colours: ['11', '21'], leaf: [5, 5], points: [-475, -325, -225, -75, -25, -25, -25] },
      { colours: ['11', '21'], leaf: [6, 6], points: [-600, -450, -400, -325, -300, -300, -300] },
      { colours: ['11', '21'], leaf: [7, 7], points: [-725, -575, -550, -450, -425, -425, -425] },
      { colours: ['31'], leaf: [1, 2], points: [-225, -100, 75, 225, 300, 325, 325] },
      { colours: ['31'], leaf: [3, 3], points: [-225, -100, 75, 225, 275, 300, 300] },
      { colours: ['31'], leaf: [4, 4], points: [-225, -125, 75, 175, 200, 225, 225] },
      { colours: ['31'], leaf: [5, 5], points: [-475, -325, -225, -75, -50, -50, -50] },
      { colours: ['31'], leaf: [6, 6], points: [-600, -450, -400, -375, -350, -350, -350] },
      { colours: ['31'], leaf: [7, 7], points: [-725, -575, -550, -500, -475, -475, -475] },
      { colours: ['41'], leaf: [1, 2], points: [-275, -150, 50, 150, 175, 175, 200] },
      { colours: ['41'], leaf: [3, 3], points: [-275, -150, 50, 125, 150, 150, 175] },
      { colours: ['41'], leaf: [4, 4], points: [-275, -200, 0, 100, 150, 150, 175] },
      { colours: ['41'], leaf: [5, 5], points: [-550, -450, -300, -175, -125, -125, -125] },
      { colours: ['41'], leaf: [6, 6], points: [-675, -550, -525, -450, -425, -425, -425] },
      { colours: ['41'], leaf: [7, 7], points: [-775, -675, -650, -600, -575, -575, -575] },
      { colours: ['51'], leaf: [1, 2], points: [-475, -350, -225, -175, -150, -150, -150] },
      { colours: ['51'], leaf: [3, 3], points: [-550, -375, -300, -225, -175, -175, -175] },
      { colours: ['51'], leaf: [4, 4], points: [-575, -375, -325, -275, -250, -250, -250] },
      { colours: ['51'], leaf: [5, 5], points: [-775, -650, -550, -500, -475, -475, -475] },
      { colours: ['51'], leaf: [6, 6], points: [-850, -675, -625, -625, -600, -600, -600] },
      { colours: ['51'], leaf: [7, 7], points: [-925, -800, -775, -775, -750, -750, -750] },
      { colours: ['61'], leaf: [1, 5], points: [-775, -700, -625, -600, -600, -600, -600] },
      { colours: ['61'], leaf: [6, 6], points: [-950, -875, -825, -800, -800, -800, -800] },
      { colours: ['61'], leaf: [7, 7], points: [-1075, -950, -900, -875, -875, -875, -875] },
      { colours: ['71'], leaf: [1, 6], points: [-1075, -1000, -950, -950, -950, -950, -950] },
      { colours: ['71'], leaf: [7, 7], points: [-1100, -1025, -975, -975, -975, -975, -975] },
      { colours: ['12', '22'], leaf: [1, 2], points: [-275, -100, 50, 150, 250, 250, 275] },
      { colours: ['12', '22'], leaf: [3, 3], points: [-275, -100, 50, 125, 225, 225, 250] },
      { colours: ['12', '22'], leaf: [4, 4], points: [-275, -125, 0, 100, 200, 200, 225] },
      { colours: ['12', '22'], leaf: [5, 5], points: [-525, -425, -300, -100, -75, -75, -75] },
      { colours: ['12', '22'], leaf: [6, 6], points: [-650, -525, -525, -450, -425, -425, -425] },
      { colours: ['12', '22'], leaf: [7, 7], points: [-750, -650, -650, -600, -575, -575, -575] },
      { colours: ['32'], leaf: [1, 2], points: [-325, -175, -25, 0, 50, 50, 50] },
      { colours: ['32'], leaf: [3, 3], points: [-350, -200, -50, 0, 25, 25, 25] },
      { colours: ['32'], leaf: [4, 4], points: [-450, -200, -150, -100, -50, -50, -50] },
      { colours: ['32'], leaf: [5, 5], points: [-625, null, null, null, null, null, null] },
    ],
  },
  micronaire: {
    ...quoted,
    rows: [
      // 2.4 and lower: the step between these bands in West Texas, 31 May 2007, 121 points at 45.43 c, 219 at 82.35 c.
      { from: 0, points: -1294, filled: 'step' },
      { from: 2.5, points: -1075 },
      { from: 2.7, points: -675 },
      { from: 3, points: -525 },
      { from: 3.3, points: -400 },
      { from: 3.5, points: 0 },
      { from: 3.7, points: 0 },
      { from: 4.3, points: 0 },
      { from: 5, points: -200 },
      { from: 5.3, points: -375 },
    ],
  },
  strength: {
    ...quoted,
    rows: [
      { from: 0, points: -725, filled: 'step' },
      { from: 21, points: -725 },
      { from: 22, points: -675 },
      { from: 23, points: -650 },
      { from: 24, points: -625 },
      { from: 25, points: -600 },
      { from: 26, points: -300 },
      { from: 27, points: 0 },
      { from: 29, points: 0 },
      { from: 30, points: 25 },
      { from: 31, points: 50 },
      { from: 33, points: 50 },
    ],
  },
  uniformity: lent(base, lender, sanJoaquin.uniformity),
  extraneous: {
    ...quoted,
    rows: [
      { kind: 'prep', level: 1, points: -200 },
      { kind: 'prep', level: 2, points: -800 },
      { kind: 'other', level: 1, points: -550 },
      { kind: 'other', level: 2, points: -800 },
      ...lentRows(base, lender, plastic),
    ],
  },
};
