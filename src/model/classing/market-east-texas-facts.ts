import type { Fact } from '../fact.ts';
import { lent, type Market } from './market.ts';
import { sanJoaquin } from './market-san-joaquin-facts.ts';
import { southeast } from './market-southeast-facts.ts';

const source = 'USDA-AMS Daily Spot Quotations, MP_CN006, East and South Texas, 13 March 2025';
const base: Fact = { value: 61.28, unit: 'cents/lb', source, mark: 'published' };

/** East and South Texas. Only the grade table of white cotton was read; the rest is filled. The first column serves staples 26 to 31. */
export const eastTexas: Market = {
  id: 'eastTexas',
  quoted: '13 March 2025',
  year: 2025,
  baseCentsPerLb: base,
  staples: [31, 32, 33, 34, 35, 36, 37, 38],
  leafAxis: true,
  grades: {
    unit: 'points',
    source,
    mark: 'published',
    rows: [
      { colours: ['11', '21'], leaf: [1, 2], points: [-500, -450, -275, 175, 500, 850, 925, 975] },
      { colours: ['11', '21'], leaf: [3, 3], points: [-550, -500, -300, 125, 475, 825, 900, 950] },
      { colours: ['11', '21'], leaf: [4, 4], points: [-625, -500, -300, 25, 150, 375, 400, 450] },
      { colours: ['11', '21'], leaf: [5, 5], points: [-650, -525, -450, -100, 25, 150, 275, 275] },
      { colours: ['11', '21'], leaf: [6, 6], points: [-750, -600, -575, -300, -275, -150, -50, -50] },
      { colours: ['11', '21'], leaf: [7, 7], points: [-825, -700, -675, -375, -350, -225, -150, -150] },
      { colours: ['31'], leaf: [1, 2], points: [-575, -500, -300, 100, 450, 750, 825, 875] },
      { colours: ['31'], leaf: [3, 3], points: [-600, -525, -325, 75, 425, 725, 825, 875] },
      { colours: ['31'], leaf: [4, 4], points: [-675, -575, -325, 0, 150, 325, 400, 450] },
      { colours: ['31'], leaf: [5, 5], points: [-700, -575, -475, -100, 0, 75, 200, 200] },
      { colours: ['31'], leaf: [6, 6], points: [-775, -625, -600, -300, -275, -175, -125, -125] },
      { colours: ['31'], leaf: [7, 7], points: [-850, -725, -700, -375, -350, -250, -225, -225] },
      { colours: ['41'], leaf: [1, 2], points: [-675, -500, -325, 50, 175, 450, 550, 625] },
      { colours: ['41'], leaf: [3, 3], points: [-725, -525, -325, 25, 175, 310, 410, 485] },
      { colours: ['41'], leaf: [4, 4], points: [-750, -600, -450, 0, 110, 185, 260, 335] },
      { colours: ['41'], leaf: [5, 5], points: [-900, -675, -600, -225, -90, 35, 85, 110] },
      { colours: ['41'], leaf: [6, 6], points: [-975, -775, -725, -375, -350, null, null, null] },
    ],
  },
  micronaire: lent(base, southeast.baseCentsPerLb, southeast.micronaire),
  strength: lent(base, southeast.baseCentsPerLb, southeast.strength),
  uniformity: lent(base, sanJoaquin.baseCentsPerLb, sanJoaquin.uniformity),
  extraneous: lent(base, southeast.baseCentsPerLb, southeast.extraneous),
};
