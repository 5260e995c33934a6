import { describe, expect, test } from 'vitest';
import { sewingTable } from '../../../src/model/cloth/sew.ts';
import { weave } from '../../../src/model/cloth/weave.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { totalKg } from '../../../src/model/lot.ts';
import { yarnLot, yarnOf } from './yarn-lot.ts';

const woven = (finish: 'grey' | 'printed') =>
  weave(yarnLot, yarnOf(30), { structure: 'plain', endsPerInch: 68, picksPerInch: 68, finish });
const origin = { bolls: 150_000, baleNetKg: 240 };
const sew = (finish: 'grey' | 'printed', prewash: boolean, seamInches = 0.25) => {
  const { lot, cloth } = woven(finish);
  return sewingTable(lot, cloth!, { prewash, seamInches }, origin);
};

describe.each([
  ['grey', true],
  ['grey', false],
  ['printed', true],
  ['printed', false],
] as const)('%s, prewash %s', (finish, prewash) => {
  const outcome = sew(finish, prewash);
  test('nothing is left over', () => {
    expect(closingErrorRelative(outcome.ledger)).toBeLessThan(1e-12);
    expect(outcome.ledger.out.map(({ account }) => account)).not.toContain('lot');
  });
  test('a marker of 82.5 % leaves the rest as offcuts', () => {
    expect(outcome.offcutsKg / (outcome.offcutsKg + outcome.piecesKg)).toBeCloseTo(0.175, 12);
  });
  test('only grey cloth washes starch out', () => {
    const washedOut = outcome.ledger.out.some(({ account }) => account === 'effluent');
    expect(washedOut).toBe(finish === 'grey' && prewash);
  });
});

test('prewashing takes the shrinkage now: less area, heavier, none left', () => {
  const washed = sew('printed', true);
  const unwashed = sew('printed', false);
  expect(washed.squareMetres / unwashed.squareMetres).toBeCloseTo(0.965 * 0.98, 12);
  expect(washed.gramsPerSquareMetre).toBeGreaterThan(unwashed.gramsPerSquareMetre);
  expect(washed.shrinkLeftPercent).toEqual({ length: 0, width: 0 });
  expect(unwashed.shrinkLeftPercent.length).toBe(3.5);
});

test('the patch is the square of finished cloth a boll made; seams come off its side', () => {
  const { cloth } = woven('printed');
  const { patchInchesPerBoll, sewnPatchInches } = sew('printed', true, 0.5);
  expect((patchInchesPerBoll! * 0.0254) ** 2 * origin.bolls).toBeCloseTo(cloth!.squareMetres, 6);
  expect(sewnPatchInches).toBeCloseTo(patchInchesPerBoll! - 1, 12);
});

test('yards a bale: running yards over bales of 480 lb', () => {
  const { lot, cloth } = woven('printed');
  const outcome = sewingTable(
    lot,
    cloth!,
    { prewash: false, seamInches: 0.25 },
    { bolls: 1, baleNetKg: 480 * 0.45359237 * 2 },
  );
  expect(outcome.yardsPerBale).toBeCloseTo(cloth!.runningYards / 2, 9);
  expect(totalKg(lot)).toBeCloseTo(outcome.piecesKg + outcome.offcutsKg, 9);
});

test('nothing counted, nothing claimed', () => {
  const { lot, cloth } = woven('printed');
  expect(sewingTable(lot, cloth!, { prewash: false, seamInches: 0.25 }, { bolls: 0, baleNetKg: 0 })).toMatchObject({
    patchInchesPerBoll: null,
    sewnPatchInches: null,
    yardsPerBale: null,
  });
});
