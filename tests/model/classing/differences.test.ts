import { describe, expect, test } from 'vitest';
import { bandPoints, gradePoints } from '../../../src/model/classing/differences.ts';
import { markets } from '../../../src/model/classing/markets.ts';

const { southeast, sanJoaquin, eastTexas, westTexas } = markets;

describe('gaps, each worked by hand from the tables', () => {
  test.each([
    // 41-4-32 in the Southeast -275, less the East Texas step from -600 to -750: 150 at 61.28 c are 202 at 82.35 c.
    ['short staple', southeast, '41', 4, 30, -477, ['shortStaple']],
    ['shorter than any quotation', southeast, '41', 4, 24, -477, ['shortStaple', 'heldShortest']],
    // 41-4-34 in the Valley 0, East Texas 0 to -450: 605 at 82.38 c.
    ['short staple in the Valley', sanJoaquin, '41', 4, 33, -605, ['shortStaple']],
    // 32-4-34 -150, less the leaf step of 22 from 0 to -300.
    ['leaf step', southeast, '32', 5, 34, -450, ['leafStep']],
    // nearest quoted is 32-4-34 -150; West Texas -105 against -47: 58 at 45.43 c are 105 at 82.35 c.
    ['colour step', southeast, '42', 4, 34, -255, ['colourStep']],
    // East Texas 41-6-35 is quoted; 41-6-36 is 41-5-36 35 less the leaf step of 31 from 75 to -175.
    ['single cell', eastTexas, '41', 6, 36, -215, ['leafStep']],
    ['below grade', southeast, '81', 4, 34, -950, ['belowGrade']],
    ['below leaf grade', southeast, '41', 8, 34, -650, ['belowGrade']],
    ['longest staples share a column', southeast, '41', 4, 41, 175, []],
    ['no leaf axis', westTexas, '41', 7, 35, 70, ['noLeafAxis']],
    // 54 at staple 32 -1124, and 44 from -1036 to -849.
    ['hole in the surface', westTexas, '54', 4, 34, -937, ['colourStep', 'noLeafAxis']],
    ['first column of East Texas serves 26 to 31', eastTexas, '41', 4, 26, -750, []],
  ] as const)('%s', (_name, market, colour, leaf, staple, points, filled) => {
    expect(gradePoints(market, colour, leaf, staple)).toEqual({ points, filled });
  });
});

test('bands are read after rounding to tenths', () => {
  expect(bandPoints(southeast.micronaire, 4.96).points).toBe(-200);
  expect(bandPoints(southeast.micronaire, 4.94).points).toBe(0);
  // 375 at 82.35 c are 279 at 61.28 c.
  expect(bandPoints(eastTexas.micronaire, 5.4)).toEqual({ points: -279, filled: ['otherMarket'] });
});
