import { describe, expect, test } from 'vitest';
import { readFibre } from '../../../src/model/fibre.ts';
import { ginLot } from '../../../src/model/gin/gin-lot.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { delivered, sawAndTwo } from './hand-made-lot.ts';

const lot = delivered({ method: 'spindle', foreignMatter: 0.04, lintShare: 0.425, moisturePercent: 5 });
const gin = (decisions: Partial<typeof sawAndTwo>) => ginLot(lot, { ...sawAndTwo, ...decisions });

describe('the line', () => {
  test('is the stand and as many lint cleaners as wanted', () => {
    expect(gin({ lintCleaners: 3, moistureAddedPoints: 1 }).machines.map(({ machine }) => machine)).toEqual([
      'conditioner',
      'sawStand',
      'lintCleaner1',
      'lintCleaner2',
      'lintCleaner3',
    ]);
    expect(gin({ lintCleaners: 0 }).fibreAfter.map(({ after }) => after)).toEqual(['stand']);
    expect(gin({ stand: 'roller' }).machines[0]!.machine).toBe('rollerStand');
  });
  test('closes its ledger for each stand and cleaner', () => {
    for (const stand of ['saw', 'roller'] as const)
      for (const lintCleaner of ['saw', 'roller', 'air'] as const)
        for (const moistureAddedPoints of [0, 1.5])
          expect(closingErrorRelative(gin({ stand, lintCleaner, moistureAddedPoints }).ledger)).toBeLessThan(1e-12);
  });
  test('reports the fibre that leaves with the lint', () => {
    const { fibreAfter, lot: lint } = gin({});
    expect(fibreAfter.at(-1)!.fibre).toBe(lint.fibre);
  });
});

test('moisture added before the stand spares the fibre', () => {
  const dry = gin({});
  const damp = gin({ moistureAddedPoints: 2 });
  expect(damp.standMoisturePercent).toBeCloseTo(7, 9);
  expect(dry.standMoisturePercent).toBeCloseTo(5, 9);
  expect(readFibre(damp.lot.fibre).upperHalfMeanMm).toBeGreaterThan(readFibre(dry.lot.fibre).upperHalfMeanMm);
  expect(readFibre(damp.lot.fibre).shortFibrePercentByWeight).toBeLessThan(
    readFibre(dry.lot.fibre).shortFibrePercentByWeight,
  );
});

test('strength and fineness pass the gin unchanged — Dever et al. 1986; van der Sluijs 2020', () => {
  const before = readFibre(lot.fibre);
  const after = readFibre(gin({ lintCleaners: 3 }).lot.fibre);
  expect(after.strengthGPerTex).toBe(before.strengthGPerTex);
  expect(after.micronaire).toBe(before.micronaire);
});

test('the seed house takes nearly all the seed and leaves nearly none in the lint', () => {
  const { seedHouse, lot: lint } = gin({});
  expect(seedHouse.dryKg.seed / lot.dryKg.seed).toBeGreaterThan(0.99);
  expect(lint.dryKg.seed / lot.dryKg.seed).toBeLessThan(0.001);
});
