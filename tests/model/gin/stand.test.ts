import { describe, expect, test } from 'vitest';
import { readFibre } from '../../../src/model/fibre.ts';
import { ginAtStand, ginnedFibre, splitAtStand } from '../../../src/model/gin/stand.ts';
import { addMasses, parts, waterGroups } from '../../../src/model/lot.ts';
import { delivered, fibreOf } from './hand-made-lot.ts';

const lot = delivered({ method: 'spindle', foreignMatter: 0.04, lintShare: 0.425 });

describe.each(['saw', 'roller'] as const)('a %s stand', (kind) => {
  const { lint, seed, waste } = splitAtStand(lot, kind);
  test('parts all that enters into three streams', () => {
    const sum = addMasses(addMasses(lint, seed), waste);
    for (const part of parts) expect(sum.dryKg[part]).toBeCloseTo(lot.dryKg[part], 6);
    for (const group of waterGroups) expect(sum.waterKg[group]).toBeCloseTo(lot.waterKg[group], 6);
  });
  test('gives no stream less than nothing', () => {
    for (const stream of [lint, seed, waste])
      for (const part of parts) expect(stream.dryKg[part]).toBeGreaterThanOrEqual(0);
  });
  test('names its accounts', () => {
    expect(ginAtStand(lot, kind).removed.map(({ account }) => account)).toEqual(['seedHouse', 'ginTrash']);
  });
});

test('behind a roller: more lint, more trash in lint and in seed — Gillum & Armijo 2007; Armijo & Gillum 2010', () => {
  const [saw, roller] = [splitAtStand(lot, 'saw'), splitAtStand(lot, 'roller')];
  expect(roller.lint.dryKg.lint).toBeGreaterThan(saw.lint.dryKg.lint);
  for (const part of ['burs', 'leaf', 'motes'] as const) {
    expect(roller.lint.dryKg[part]).toBeGreaterThan(saw.lint.dryKg[part]);
    expect(roller.seed.dryKg[part]).toBeGreaterThan(saw.seed.dryKg[part]);
  }
});

describe('fibre', () => {
  const medium = fibreOf('medium');
  test('is longer behind a roller, with fewer neps', () => {
    const [saw, roller] = [ginnedFibre(medium, 'saw', 6), ginnedFibre(medium, 'roller', 6)];
    expect(readFibre(roller).upperHalfMeanMm).toBeGreaterThan(readFibre(saw).upperHalfMeanMm);
    expect(roller.nepsRatio).toBeLessThan(saw.nepsRatio);
  });
  test('breaks more when dry', () => {
    const short = (moisture: number) => readFibre(ginnedFibre(medium, 'saw', moisture)).shortFibrePercentByWeight;
    expect(short(4)).toBeGreaterThan(short(6));
    expect(short(6)).toBeGreaterThan(short(8));
    expect(short(9)).toBe(short(8));
  });
});
