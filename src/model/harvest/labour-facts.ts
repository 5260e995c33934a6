import type { Fact } from '../fact.ts';

/** Who picked, how much was asked of them, and what it paid: figures of the records, for the pages that tell of it. No mass moves by them. */
export const labourFacts = {
  childTaskLb: {
    value: 10,
    unit: 'lb',
    source: 'C. Ball, Slavery in the United States, 1837: the daily task of several children',
    mark: 'published',
    note: 'some mothers of small children had 40 lb',
  },
  menPoundsPerDay: {
    value: 160,
    unit: 'lb',
    source:
      'plantation book of 1844 near Natchez, mean of 28 men and boys on one Saturday of October (Phillips, American Negro Slavery, 1918, ch. 12)',
    mark: 'published',
  },
  womenPoundsPerDay: {
    value: 125,
    unit: 'lb',
    source: 'same, mean of 18 women and girls',
    mark: 'published',
    note: 'the same chapter has 157 lb as the mean of a gang of 51 in 1859, and 65 lb for Georgia in 1830',
  },
  fewestBollsPerPound: {
    value: 60,
    unit: 'bolls/lb',
    source: 'sixty to eighty bolls to a pound of seed cotton (Phillips, American Negro Slavery, 1918, ch. 12)',
    mark: 'published',
  },
  mostBollsPerPound: {
    value: 80,
    unit: 'bolls/lb',
    source: 'same',
    mark: 'published',
  },
  enslaved1790: {
    value: 697681,
    unit: 'people',
    range: [694280, 697897],
    source: 'United States census of 1790; printed totals differ by a few thousand',
    mark: 'memory',
  },
  enslaved1860: {
    value: 3953760,
    unit: 'people',
    range: [3950000, 3954000],
    source: 'United States census of 1860',
    mark: 'memory',
  },
  cropperShare: {
    value: 0.5,
    unit: 'fraction',
    source:
      'croppers who supply only their labor receive half of the crop (USDA Bulletin 337, 1916, 878 records of 1913 from the Yazoo-Mississippi Delta)',
    mark: 'published',
  },
  handDollarsPerBale: {
    value: 45,
    unit: 'USD a bale',
    source: 'cost of picking a bale by hand, California 1949 (University of California Bulletin 743)',
    mark: 'published',
  },
  machineDollarsPerBale: {
    value: 25.76,
    unit: 'USD a bale',
    source: 'same, by machine',
    mark: 'published',
  },
} as const satisfies Record<string, Fact>;

/** A steelyard of the cotton house. */
export const steelyardFacts = {
  poiseLb: {
    value: 10,
    unit: 'lb',
    range: [4, 15],
    source: 'the sliding weight of a field steelyard; an example of ours',
    mark: 'assumption',
  },
  hookArmIn: {
    value: 2,
    unit: 'in',
    range: [1, 3],
    source: 'from the point of hanging to the hook of the sack; an example of ours',
    mark: 'assumption',
  },
} as const satisfies Record<string, Fact>;
