import { describe, expect, test } from 'vitest';
import {
  ceilingNe,
  fibresInSection,
  judgeCount,
  limitNeOfClassCard,
  stapleLimitNe,
} from '../../../src/model/mill/limits.ts';

const medium = { mtex: 172, meanInches: 0.9 };

test('finer cotton leaves more fibres in the section of the same yarn', () => {
  expect(fibresInSection(20, 140)).toBeGreaterThan(fibresInSection(20, 180));
});

test('longer and finer cotton has the higher staple limit', () => {
  expect(stapleLimitNe(1.1, 150)).toBeGreaterThan(stapleLimitNe(1.0, 150));
  expect(stapleLimitNe(1.0, 140)).toBeGreaterThan(stapleLimitNe(1.0, 170));
});

test('a class card: combed goes finest, rotor coarsest and never past 40', () => {
  const limits = limitNeOfClassCard(4.2);
  expect(limits.ringCombed).toBeGreaterThan(limits.ringCarded);
  expect(limits.ringCarded).toBeGreaterThan(limits.rotor);
  expect(limitNeOfClassCard(3).rotor).toBe(40);
});

describe('a count is judged', () => {
  const judge = (system: 'ringCarded' | 'ringCombed' | 'rotor', ne: number, mtex = medium.mtex) =>
    judgeCount(system, ne, mtex, medium.meanInches);
  test('comfortable, with no reason', () => {
    expect(judge('ringCarded', 24)).toMatchObject({ status: 'comfortable', reason: null, nearestFeasibleNe: 24 });
  });
  test('strained past the staple limit', () => {
    const limit = stapleLimitNe(medium.meanInches, medium.mtex);
    expect(judge('ringCarded', limit + 0.01)).toMatchObject({ status: 'strained', reason: 'staple' });
    expect(judge('ringCarded', limit - 0.01).status).toBe('comfortable');
    expect(judge('ringCombed', 1.15 * limit + 0.01)).toMatchObject({ status: 'strained', reason: 'staple' });
    expect(judge('ringCombed', limit + 0.01).status).toBe('comfortable');
  });
  test('impossible with too few fibres, and the nearest whole count named', () => {
    const ceiling = ceilingNe('ringCarded', medium.mtex);
    const verdict = judge('ringCarded', 60);
    expect(verdict).toMatchObject({ status: 'impossible', reason: 'fibresInSection', fewestFibres: 75 });
    expect(verdict.fibresInSection).toBeLessThan(75);
    expect(verdict.nearestFeasibleNe).toBe(Math.floor(ceiling));
    expect(judge('ringCarded', verdict.nearestFeasibleNe).status).not.toBe('impossible');
    expect(judge('ringCarded', verdict.nearestFeasibleNe + 1).status).toBe('impossible');
  });
  test('rotor is strained between 100 and 120 fibres and stops at 40s', () => {
    expect(judge('rotor', 30)).toMatchObject({ status: 'strained', reason: 'fibresInSection' });
    expect(judge('rotor', 41, 120)).toMatchObject({
      status: 'impossible',
      reason: 'rotorCount',
      nearestFeasibleNe: 40,
    });
  });
  test('fibre too short for any staple limit strains every ring count', () => {
    expect(judgeCount('ringCarded', 4, 172, 0.3)).toMatchObject({ status: 'strained', reason: 'staple' });
  });
});
