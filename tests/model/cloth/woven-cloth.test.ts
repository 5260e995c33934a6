import { describe, expect, test } from 'vitest';
import { clothFinishes } from '../../../src/model/cloth/facts.ts';
import { makeCloth } from '../../../src/model/cloth/making.ts';
import { wovenCloth } from '../../../src/model/cloth/woven-cloth.ts';
import { totalKg } from '../../../src/model/lot.ts';
import { yarnLot, yarnOf } from './yarn-lot.ts';

const yarn = yarnOf(30);
const grey = {
  weave: 'plain' as const,
  warpTex: yarn.tex,
  weftTex: yarn.tex,
  endsPerInch: 68,
  picksPerInch: 68,
  warpCrimpPercent: 6,
  weftCrimpPercent: 7,
};

describe.each(clothFinishes)('%s', (finish) => {
  const made = makeCloth(yarnLot, 0.4977, 0.02, finish);
  const cloth = wovenCloth(made, yarn, grey, 172);
  test('the weight described is the mass on the scale over the area', () => {
    expect(cloth.gramsPerSquareMetre).toBeCloseTo((totalKg(made.finished.masses) * 1000) / cloth.squareMetres, 8);
  });
  test('what has not shrunk yet will', () => {
    const whole = (1 - 0.05) * (1 - 0.035);
    const sofar = 1 - cloth.finishShrinkPercent.length / 100;
    expect(sofar * (1 - cloth.shrinkLeftPercent.length / 100)).toBeCloseTo(whole, 12);
  });
});

test('a sett above the handweaver’s highest is called tight', () => {
  const made = makeCloth(yarnLot, 0.5, 0.02, 'bleached');
  expect(wovenCloth(made, yarn, grey, 172).notes).toEqual([]);
  expect(wovenCloth(made, yarn, { ...grey, endsPerInch: 80, picksPerInch: 80 }, 172).notes).toEqual(['tightSett']);
});
