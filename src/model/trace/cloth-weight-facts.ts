import type { Facts } from '../fact.ts';

const unit = 'oz/yd2';
const seller = 'a seller’s chart, aaenterprises.in';

/** Weights of named cloths, to be asked for instead of a number. Sellers and makers differ: the range is part of the fact. */
export const clothWeightFacts = {
  gauze: { value: 2.1, unit, range: [1.1, 3], source: 'double gauze, two layers of 32 x 28 of 40s', mark: 'memory' },
  lawn: { value: 2.1, unit, range: [1.7, 2.9], source: '90 x 88 of 60s', mark: 'memory' },
  voile: { value: 1.4, unit, range: [1.4, 3.5], source: `60 x 56 of 60s; 80 to 120 g/m2 in ${seller}`, mark: 'memory' },
  percale: {
    value: 3.5,
    unit,
    range: [2.9, 4.4],
    source: `type 180 of 38s to 40s; 100 to 150 g/m2 in ${seller}`,
    mark: 'memory',
  },
  chambray: { value: 3.6, unit, range: [3, 4.5], source: '84 x 76 of 30s and 36s', mark: 'memory' },
  quilting: {
    value: 3.66,
    unit,
    range: [3.4, 5],
    source: '68 x 68, 45 in at 3.5 yd/lb (maker page); sellers say up to 5',
    mark: 'published',
  },
  flannel: {
    value: 3.8,
    unit,
    range: [3.5, 5.5],
    source: '44 x 40 of 20s and 13s, before it is napped',
    mark: 'memory',
  },
  poplin: { value: 4, unit, range: [3.2, 4.7], source: `110 to 160 g/m2 in ${seller}; the middle`, mark: 'published' },
  oxford: { value: 4.2, unit, range: [3.8, 5], source: '88 x 44 of 40s, two as one, and 12s', mark: 'memory' },
  muslin: { value: 4.3, unit, range: [4.2, 4.8], source: 'type 128 sheeting, about 68 x 60 of 22s', mark: 'memory' },
  jersey: { value: 5, unit, range: [4.1, 5.9], source: `140 to 200 g/m2 in ${seller}; the middle`, mark: 'published' },
  twill: { value: 6, unit, range: [4.6, 7.3], source: '108 x 56 of 20s', mark: 'derived' },
  canvas: {
    value: 10,
    unit,
    range: [8.8, 14.7],
    source: '10 oz canvas; 300 to 500 g/m2 in a seller’s chart',
    mark: 'common practice',
  },
  denim: { value: 11.2, unit, range: [7, 13], source: '68 x 38 of 7s; 7 to 13 oz (denim-jean.com)', mark: 'published' },
} as const satisfies Facts;
