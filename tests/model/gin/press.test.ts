import { describe, expect, test } from 'vitest';
import { pressBales, tareKg } from '../../../src/model/gin/press.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { totalKg } from '../../../src/model/lot.ts';
import { openStream } from '../../../src/model/random.ts';
import { poundsFromKilograms } from '../../../src/model/units.ts';
import { delivered } from './hand-made-lot.ts';

const lint = (moisturePercent: number, seedCottonKg = 10_000) =>
  delivered({ method: 'spindle', foreignMatter: 0.02, lintShare: 0.999, moisturePercent, seedCottonKg });
const press = (moisture: number, restoreToPercent = 6, era: 'present' | 'thirties' = 'present', kg?: number) =>
  pressBales(lint(moisture, kg), { netPounds: 480, restoreToPercent }, era, openStream(11, 'press'));

describe('bales', () => {
  test('hold the lot', () => {
    const { bales, lot, ledger } = press(5);
    expect(bales.reduce((sum, { netKg }) => sum + netKg, 0) / totalKg(lot)).toBeCloseTo(1, 12);
    expect(closingErrorRelative(ledger)).toBeLessThan(1e-12);
    expect(bales.map(({ number }) => number)).toEqual(bales.map((_, index) => index + 1));
  });
  test('weigh gross what they weigh net and their wrapping', () => {
    for (const { netKg, grossKg, tareKg: tare } of press(5).bales) expect(grossKg).toBe(netKg + tare);
    expect(poundsFromKilograms(tareKg('cottonBagging', 'wire8'))).toBeCloseTo(7, 9);
  });
  test('carry tags of their own now, marks in the 1930s', () => {
    const now = press(5).bales;
    expect(new Set(now.map(({ tag }) => tag)).size).toBe(now.length);
    expect(now.every(({ tag, mark }) => /^\d{12}$/.test(tag!) && mark === null)).toBe(true);
    const then = press(5, 6, 'thirties');
    expect(then.bales[11]).toMatchObject({ tag: null, mark: 'SF 12' });
    expect(then.densityLbPerCubicFoot).toBeNull();
    expect(then.pressForceMN).toBeNull();
  });
  test('the force lies near the measured one', () => {
    const { pressForceMN, densityLbPerCubicFoot } = press(5, 5);
    expect(pressForceMN).toBeGreaterThan(3);
    expect(pressForceMN).toBeLessThan(3.8);
    expect(Math.abs(densityLbPerCubicFoot! - 28.2)).toBeLessThan(0.6);
  });
});

describe('moisture at the slide', () => {
  test('is added up to the wanted percent, never taken', () => {
    expect(press(4.3, 5.5).moisturePercent).toBeCloseTo(5.5, 9);
    expect(press(7, 5.5).moisturePercent).toBeCloseTo(7, 9);
  });
  test('above 7.5 % is a warning — National Cotton Council policy, in Hughs et al. 2004', () => {
    expect(press(5, 7.5).warnings).toEqual([]);
    expect(press(5, 8).warnings).toEqual(['baleTooDamp']);
    expect(press(9, 5).warnings).toEqual(['baleTooDamp']);
    expect(press(9, 5, 'thirties').warnings).toEqual([]);
  });
});

describe('a lot too small for even bales', () => {
  test('says so', () => {
    expect(press(5, 5, 'present', 150).warnings).toEqual(['oddWeight']);
  });
  test('presses no bale tighter than the others: its last bale is light, and a remnant under half weight', () => {
    const { bales, densityLbPerCubicFoot, warnings } = press(5, 5, 'present', 300);
    expect(bales.map(({ remnant }) => remnant)).toEqual([false, true]);
    expect(poundsFromKilograms(bales[0]!.netKg)).toBeCloseTo(480, 6);
    expect(poundsFromKilograms(bales[1]!.netKg)).toBeLessThan(240);
    expect(densityLbPerCubicFoot).toBeCloseTo(480 / 17, 6);
    expect(warnings).toEqual(['oddWeight']);
  });
  test('a light bale of more than half weight is no remnant', () => {
    expect(press(5, 5, 'present', 150).bales.map(({ remnant }) => remnant)).toEqual([false]);
  });
});
