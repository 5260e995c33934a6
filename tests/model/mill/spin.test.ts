import { describe, expect, test } from 'vitest';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { moistureFraction, totalDryKg, totalKg } from '../../../src/model/lot.ts';
import { spin } from '../../../src/model/mill/spin.ts';
import { baledLint, pimaFibre } from './lint-lot.ts';

const bale = baledLint(0.02);
const carded = { system: 'ringCarded', countNe: 30, noilPercent: 14 } as const;
const combed = { ...carded, system: 'ringCombed' } as const;
const accounts = (outcome: ReturnType<typeof spin>) => outcome.ledger.out.map(({ account }) => account);

describe('carded yarn', () => {
  const outcome = spin(bale, carded);
  test('the ledger closes, with every destination named', () => {
    expect(closingErrorRelative(outcome.ledger)).toBeLessThan(1e-12);
    expect(accounts(outcome)).toEqual(
      expect.arrayContaining(['millTrash', 'cardStrips', 'invisibleLoss', 'hardWaste', 'lot']),
    );
    expect(accounts(outcome)).not.toContain('comberNoil');
  });
  test('the yarn holds the standard regain, and its length weighs what it weighs', () => {
    const moisture = moistureFraction(outcome.lot, 'lint');
    expect(moisture / (1 - moisture)).toBeCloseTo(0.085, 12);
    expect((outcome.yarnKilometres * outcome.yarn!.tex) / 1000).toBeCloseTo(totalKg(outcome.lot), 9);
  });
  test('blowroom and card together take 90 to 98 % of the trash', () => {
    const trash = ({ dryKg }: { dryKg: typeof bale.dryKg }) => totalDryKg(dryKg) - dryKg.lint;
    const left = trash(outcome.steps[1]!.out) / trash(bale);
    expect(left).toBeLessThan(0.1);
    expect(left).toBeGreaterThan(0.02);
  });
  test('fibre is shown after the card alone', () => {
    expect(outcome.fibreAfter.map(({ after }) => after)).toEqual(['card']);
    expect(outcome.lot.fibre).toBe(outcome.fibreAfter[0]!.fibre);
  });
  test('each step starts with what the one before let through', () => {
    expect(outcome.steps.map(({ machine }) => machine)).toEqual(['blowroom', 'card', 'spinningFrame']);
    for (const [i, later] of outcome.steps.slice(1).entries()) expect(later.in).toBe(outcome.steps[i]!.out);
  });
});

describe('combed yarn', () => {
  const outcome = spin(bale, combed);
  test('gives less yarn, more even and stronger, and noil in the ledger', () => {
    const plain = spin(bale, carded);
    expect(outcome.yarnRealisation).toBeLessThan(plain.yarnRealisation!);
    expect(outcome.yarn!.cvPercent).toBeLessThan(plain.yarn!.cvPercent);
    expect(outcome.yarn!.tenacityCnPerTex).toBeGreaterThan(plain.yarn!.tenacityCnPerTex);
    expect(accounts(outcome)).toContain('comberNoil');
    expect(closingErrorRelative(outcome.ledger)).toBeLessThan(1e-12);
  });
  test('the noil is the wanted share of the lint fed to the comber', () => {
    const step = outcome.steps.find(({ machine }) => machine === 'comber')!;
    expect(step.removed[0]!.masses.dryKg.lint / step.in.dryKg.lint).toBeCloseTo(0.14, 12);
  });
  test('fibre is shown after card and comber', () => {
    expect(outcome.fibreAfter.map(({ after }) => after)).toEqual(['card', 'comber']);
  });
});

test('a count past the fibre stops: nothing spun, the lot entered as bale', () => {
  const outcome = spin(bale, { ...carded, countNe: 80 });
  expect(outcome.stopped).toMatchObject({ reason: 'fibresInSection', countNe: 80 });
  expect(outcome.stopped!.nearestFeasibleNe).toBeLessThan(80);
  expect(outcome.lot).toBe(bale);
  expect(outcome.yarn).toBeNull();
  expect(accounts(outcome)).toEqual(['bale']);
  expect(closingErrorRelative(outcome.ledger)).toBe(0);
});

test('Pima spins 70s combed, medium upland only under strain', () => {
  expect(spin(baledLint(0.02, pimaFibre), { ...combed, countNe: 70 }).verdict.status).not.toBe('impossible');
  expect(spin(bale, { ...combed, countNe: 70 }).verdict).toMatchObject({ status: 'strained', reason: 'staple' });
});

test('bone-dry lint takes water up, wet lint gives it off', () => {
  const dry = spin({ ...bale, waterKg: { lint: 0, seed: 0, trash: 0 } }, carded);
  expect(dry.ledger.in.map(({ account }) => account)).toContain('moistureTakenUp');
  const wet = spin({ ...bale, waterKg: { lint: 60, seed: 1, trash: 2 } }, carded);
  expect(accounts(wet)).toContain('evaporated');
});

test('the use sets the twist and nothing else', () => {
  const warp = spin(bale, carded);
  const knitting = spin(bale, carded, 'knitting');
  expect(knitting.yarn!.turnsPerInch).toBeLessThan(warp.yarn!.turnsPerInch);
  expect(knitting.lot.dryKg).toEqual(warp.lot.dryKg);
});
