import { expect, test } from 'vitest';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { statedAverages } from '../../../src/model/trace/chain-averages.ts';
import { seasonAverages, seasonClothOunces } from '../../../src/model/trace/season-chain.ts';
import {
  bollsOf,
  clothOfKg,
  forwardFromBolls,
  seedCottonOfKg,
  squareYardsOf,
  startIds,
  traceForward,
} from '../../../src/model/trace/trace-forward.ts';

const stated = statedAverages('middle');

test('a bale at 40 in rows, 5.0 g bolls and 35 % lint: 9.5 bolls a foot (Mississippi State boll-count table)', () => {
  const chain = { ...stated, bollGrams: 5, ginTurnout: 0.35, rowInches: 40 };
  expect(bollsOf('bale', chain) / 13_068).toBeCloseTo(9.5, 1);
});
test('a foot of row and an acre hold the same bolls for their size', () => {
  const feet = (43_560 * 12) / stated.rowInches;
  expect(bollsOf('rowFoot', stated) * feet).toBeCloseTo(bollsOf('acre', stated), 6);
  expect(bollsOf('acre', stated)).toBe(246_000);
});
test('a module of 5,000 lb makes about four bales (three module types and ginning: a round one holds a quarter of 16)', () => {
  const bales = bollsOf('module', stated) / bollsOf('bale', stated);
  expect(bales).toBeGreaterThan(3.5);
  expect(bales).toBeLessThan(4.5);
});
test('a bale makes 1,376 yd of 45 in quilting cotton (worked by hand with yields of 0.95, 0.98 and 0.88)', () => {
  const cloth = clothOfKg(480 * 0.45359237, 0.88, 0.98, 0.95);
  const yards = squareYardsOf(cloth, 3.66) / (45 / 36);
  expect(Math.abs(yards / 1376 - 1)).toBeLessThan(0.005);
});
test('a boll of 4 g is 4 g at the gin where nothing is left or taken along', () => {
  expect(seedCottonOfKg(1, 4, 1)).toBeCloseTo(0.004, 15);
});
test.each(farms.map((farm) => [farm.id, farm] as const))(
  '%s: one boll makes the patch of its sewing table',
  (_, farm) => {
    const season = runSeason(farm, 1, null);
    const forward = traceForward(
      { start: 'boll', count: 1, ouncesPerSquareYard: seasonClothOunces(season)! },
      seasonAverages(season),
    );
    if (!forward.ok) throw new Error('boll');
    expect(forward.value.squareSideInches / season.sewing!.patchInchesPerBoll!).toBeCloseTo(1, 12);
  },
);
test.each(startIds)('from %s: three of them make three times as much', (start) => {
  const [one, three] = [1, 3].map((count) => traceForward({ start, count, ouncesPerSquareYard: 4 }));
  if (!one?.ok || !three?.ok) throw new Error(start);
  expect(three.value.clothKg / one.value.clothKg).toBeCloseTo(3, 12);
});
test('no bolls, no cloth; what is not known is named', () => {
  expect(forwardFromBolls(0, 4, stated).clothKg).toBe(0);
  expect(traceForward({ start: 'moon', count: 1, ouncesPerSquareYard: 4 })).toMatchObject({ ok: false });
  expect(traceForward({ start: 'boll', count: 0, ouncesPerSquareYard: 4 })).toMatchObject({
    ok: false,
    problems: [{ field: 'count' }],
  });
});
