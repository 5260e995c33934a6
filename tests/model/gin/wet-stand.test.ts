import { describe, expect, test } from 'vitest';
import { ginAtStand } from '../../../src/model/gin/stand.ts';
import { standRun } from '../../../src/model/gin/wet-stand.ts';
import { totalDryKg, totalKg } from '../../../src/model/lot.ts';
import { delivered } from './hand-made-lot.ts';

describe('the pace of a stand', () => {
  test('is its own at 6 to 7.5 % lint moisture — Hughs et al. 2004; Valco', () => {
    for (const percent of [3, 6, 7, 7.5])
      expect(standRun(percent)).toEqual({ verdict: 'runs', paceShare: 1, rakedOutFraction: 0 });
  });
  test('falls with damp lint, to the 19 of 42 bales an hour of wet modules — Texas A&M, deltafarmpress.com', () => {
    const [damp, wet] = [standRun(10), standRun(12)];
    expect(damp.verdict).toBe('slows');
    expect(damp.paceShare).toBeLessThan(1);
    expect(wet.paceShare).toBeLessThan(damp.paceShare);
    expect(Math.abs(wet.paceShare - 19 / 42)).toBeLessThan(0.01);
    expect(wet.rakedOutFraction).toBeLessThan(0.03);
  });
  test('a choked stand loses cotton, never more than wet modules lost: 26 % turnout for 34 — Texas A&M', () => {
    expect(standRun(13).verdict).toBe('chokes');
    expect(standRun(15).rakedOutFraction).toBeGreaterThan(standRun(13).rakedOutFraction);
    expect(standRun(25).rakedOutFraction).toBeLessThanOrEqual(0.25);
  });
});

test('what is raked out is trash: lint, seed and water', () => {
  const lot = (moisturePercent: number) =>
    delivered({ method: 'spindle', foreignMatter: 0.04, lintShare: 0.425, moisturePercent });
  const wet = ginAtStand(lot(15), 'saw');
  const trash = wet.removed.find(({ account }) => account === 'ginTrash')!.masses;
  const dry = ginAtStand(lot(7), 'saw').removed.find(({ account }) => account === 'ginTrash')!.masses;
  expect(trash.dryKg.lint / lot(15).dryKg.lint).toBeGreaterThan(dry.dryKg.lint / lot(7).dryKg.lint + 0.05);
  expect(trash.dryKg.seed / lot(15).dryKg.seed).toBeGreaterThan(0.05);
  const out = wet.removed.reduce((sum, { masses }) => sum + totalDryKg(masses.dryKg), totalDryKg(wet.out.dryKg));
  expect(out / totalDryKg(lot(15).dryKg)).toBeCloseTo(1, 12);
  const weight = wet.removed.reduce((sum, { masses }) => sum + totalKg(masses), totalKg(wet.out));
  expect(weight / totalKg(lot(15))).toBeCloseTo(1, 12);
});
