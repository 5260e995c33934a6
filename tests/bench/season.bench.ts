import { bench, describe } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';

describe('one season from planter to sewing table', () => {
  for (const farm of farms) {
    let seed = 0;
    bench(farm.id, () => {
      runSeason(farm, ++seed, null);
    });
  }
});
