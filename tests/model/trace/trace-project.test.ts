import { describe, expect, test } from 'vitest';
import { problemLine } from '../../../src/model/problem.ts';
import type { ChainAverages } from '../../../src/model/trace/chain-averages.ts';
import type { TraceRequest } from '../../../src/model/trace/need.ts';
import { projectIds } from '../../../src/model/trace/project-facts.ts';
import { traceProject } from '../../../src/model/trace/trace-project.ts';

const trace = (request: TraceRequest, averages?: Partial<ChainAverages>) => {
  const result = traceProject(request, averages);
  if (!result.ok) throw new Error(problemLine(result.problems[0]!));
  return result.value;
};

test.each(projectIds)('%s can be traced', (project) => {
  const { lintKg, clothKg, battingKg, bolls } = trace({ project });
  expect(lintKg).toBeGreaterThan(clothKg + battingKg);
  expect(bolls).toBeGreaterThan(20);
});

test('own yardage is its area and weight', () => {
  const own = trace({ yards: 3, widthInches: 44, ouncesPerSquareYard: 4.3 });
  expect(own.clothSquareYards).toBeCloseTo((3 * 36 * 44) / 1296, 12);
  expect(own.clothKg).toBeCloseTo((own.clothSquareYards * 4.3 * 0.45359237) / 16, 12);
  expect(own).toMatchObject({ project: null, battingKg: 0, backingYards: null });
});

test('the worked twin quilt: 1,370 bolls with yields of 0.95, 0.98 and 0.90, a turnout of 38 % and bolls of 4 g (by hand)', () => {
  const worked = {
    finishingYield: 0.95,
    weavingYield: 0.98,
    yarnRealisation: 0.9,
    battingYield: 0.9,
    ginTurnout: 0.38,
    deliveredPerGrown: 1,
    bollGrams: 4,
  };
  const { bolls, battingKg } = trace({ project: 'twin-quilt' }, worked);
  expect(battingKg / 0.9 / 0.45359237).toBeCloseTo(1.39, 2);
  expect(Math.abs(bolls / 1370 - 1)).toBeLessThan(0.01);
});

test('batting is lint that is never spun', () => {
  const quilt = trace({ project: 'twin-quilt' });
  expect(quilt.lintKg).toBeCloseTo(quilt.yarnKg / 0.9 + quilt.battingKg / 0.9, 12);
});

describe('the way back answers to the chain', () => {
  const base = trace({ project: 'twin-quilt' });
  test.each<[string, Partial<ChainAverages>]>([
    ['more waste in the mill', { yarnRealisation: 0.7 }],
    ['more lost in finishing', { finishingYield: 0.9 }],
    ['lower turnout', { ginTurnout: 0.3 }],
    ['smaller bolls', { bollGrams: 3 }],
  ])('%s: more bolls', (_name, averages) => {
    expect(trace({ project: 'twin-quilt' }, averages).bolls).toBeGreaterThan(base.bolls);
  });
  test('fewer bolls a plant: more field, the same bolls', () => {
    const sparse = trace({ project: 'twin-quilt' }, { bollsPerPlant: 3 });
    expect(sparse.squareMetres).toBeCloseTo(2 * base.squareMetres, 9);
    expect(sparse.bolls).toBe(base.bolls);
  });
});

describe('bad requests are named', () => {
  test('an unknown project, with those there are', () => {
    const result = traceProject({ project: 'tent' });
    expect(result).toMatchObject({ ok: false, problems: [{ field: 'project', value: 'tent' }] });
    if (!result.ok) expect(problemLine(result.problems[0]!)).toContain('twin-quilt');
  });
  test('every number out of its limits', () => {
    const result = traceProject({ yards: 0, widthInches: Number.NaN, ouncesPerSquareYard: 41 });
    expect(result.ok).toBe(false);
    if (!result.ok) {
      expect(result.problems.map(({ field }) => field)).toEqual(['yards', 'widthInches', 'ouncesPerSquareYard']);
    }
  });
});
