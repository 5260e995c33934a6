import { describe, expect, test } from 'vitest';
import { type ClassingOutcome, classBales, readLot } from '../../../src/model/classing/class-bales.ts';
import { type Lot, totalKg } from '../../../src/model/lot.ts';
import { kilogramsFromPounds } from '../../../src/model/units.ts';
import { fibreOf, lintLot, present, pressedBales, southeast, trashLb } from './lots.ts';

describe('a present bale', () => {
  const fibre = fibreOf({ lengthIn: 1.12, micronaire: 4.2, strengthGPerTex: 30 });
  const lot = lintLot(fibre, 9);
  const outcome = classBales(lot, pressedBales(9), southeast, present(5));

  test('the lot reads as the fibre was made, darkened by its trash', () => {
    const { lengthIn, micronaire, strengthGPerTex, reflectanceRd, trashAreaPercent } = readLot(lot);
    expect(lengthIn).toBeCloseTo(1.12, 3);
    expect(micronaire).toBeCloseTo(4.2, 6);
    expect(strengthGPerTex).toBe(30);
    expect(reflectanceRd).toBeCloseTo(fibre.reflectanceRd - 3 * trashAreaPercent, 9);
  });
  test('keeps its tag and weights, and is priced', () => {
    const [first] = outcome.classed;
    expect(first).toMatchObject({
      number: 1,
      tag: '000000000001',
      mark: null,
      module: 1,
      byEye: null,
      basis: 'market',
    });
    expect(first!.netLb).toBeCloseTo(480, 9);
    expect(first!.grossLb).toBeCloseTo(484, 9);
    expect(first!.valueUsd).toBeGreaterThan(300);
  });
  test('readings are rounded as they are printed', () => {
    for (const { reading } of outcome.classed) {
      expect(reading.lengthIn * 100).toBeCloseTo(Math.round(reading.lengthIn * 100), 9);
      expect(reading.micronaire * 10).toBeCloseTo(Math.round(reading.micronaire * 10), 9);
    }
  });
  test('the sample is half a pound a bale', () => {
    expect(outcome.sample.kg).toBeCloseTo(kilogramsFromPounds(4.5), 9);
    expect(outcome.sample.moisturePercentDryBasis).toBeCloseTo((100 * 0.06) / 0.94, 6);
    expect(outcome.sample.readyToTest).toBe(false);
  });
  test('module averaging gives the bales of a module one length and strength, and leaves them their own colour', () => {
    const averaged = classBales(lot, pressedBales(9), { ...southeast, moduleAveraging: true }, present(5)).classed;
    const firstModule = averaged.filter(({ module }) => module === 1);
    expect(firstModule).toHaveLength(4);
    expect(new Set(firstModule.map(({ reading }) => reading.strengthGPerTex)).size).toBe(1);
    expect(new Set(firstModule.map(({ reading }) => reading.lengthIn)).size).toBe(1);
    expect(firstModule.map(({ reading }) => reading.reflectanceRd)).toEqual(
      outcome.classed.slice(0, 4).map(({ reading }) => reading.reflectanceRd),
    );
    expect(firstModule.map(({ ownReading }) => ownReading)).toEqual(
      outcome.classed.slice(0, 4).map(({ reading }) => reading),
    );
  });
  test('water beyond 7.5 % is not paid for: the same lint pressed at 12 % sells for what it fetches at 7.5 % — Hughs et al. 2004', () => {
    const pressedAt = (moisture: number) => {
      const lintKg = lot.dryKg.lint;
      const wet: Lot = { ...lot, waterKg: { ...lot.waterKg, lint: (lintKg * moisture) / (1 - moisture) } };
      const netLb = (480 * totalKg(wet)) / totalKg(lot);
      return classBales(wet, pressedBales(9, netLb), southeast, present(5));
    };
    const usd = (sold: ClassingOutcome) => sold.classed.reduce((sum, { valueUsd }) => sum + valueUsd, 0);
    const [dry, limit, damp] = [0.05, 0.075, 0.12].map(pressedAt);
    expect(limit!.moisture).toMatchObject({ overLimit: false, colourAtRisk: false });
    expect(damp!.moisture).toMatchObject({ overLimit: true, colourAtRisk: true });
    expect(damp!.moisture.percent).toBeCloseTo(12, 9);
    expect(usd(dry!)).toBeLessThan(usd(limit!));
    // The trash's own few pounds are counted with the lint, which takes a tenth of a percent more off.
    expect(usd(damp!) / usd(limit!)).toBeGreaterThan(0.998);
    expect(usd(damp!)).toBeLessThanOrEqual(usd(limit!));
    for (const bale of damp!.classed) expect(bale.waterRule).toBe('waterDeducted');
  });
  test('a call of extraneous matter stands on the bale that pays for it', () => {
    const many = classBales(lintLot(fibre, 200), pressedBales(200), southeast, { ...present(5), stripped: true });
    for (const { extraneous, points } of many.classed) {
      const line = points.find(({ item }) => item === 'extraneous')!;
      expect(extraneous.length > 0).toBe(line.points < 0);
    }
    expect(many.classed.some(({ extraneous }) => extraneous.length > 0)).toBe(true);
  });
  test('another seed gives other readings', () => {
    const other = classBales(lot, pressedBales(9), southeast, present(6)).classed;
    expect(other.map(({ reading }) => reading)).not.toEqual(outcome.classed.map(({ reading }) => reading));
  });
  test('no bales, no records and no sample', () => {
    const none = classBales(lintLot(fibre, 0), [], southeast, present(5));
    expect(none.classed).toEqual([]);
    expect(none.sample.kg).toBe(0);
  });
});

describe('a bale of 1937', () => {
  const lot = lintLot(fibreOf({ lengthIn: 0.98, uniformityPercent: 80, reflectanceRd: 78 }), 6, trashLb.picked2);
  const bales = pressedBales(6, 500).map((bale) => ({ ...bale, tag: null, mark: `B${bale.number}` }));
  const decisions = { market: 'southeast', moduleAveraging: true } as const;
  const { classed } = classBales(lot, bales, decisions, { ...present(4), era: 'thirties' });

  test('is graded by eye, with its staple in sixteenths, and bears a mark for a tag', () => {
    for (const bale of classed) {
      expect(bale.tag).toBeNull();
      expect(bale.byEye!.staple.name).toMatch(/^(1-1\/32|1|31\/32|15\/16|29\/32)$/);
      expect(bale.byEye!.staple.sixteenthsName).toMatch(/^(1|15\/16|7\/8)$/);
      expect(bale.staple32nds).toBe(bale.byEye!.staple.thirtySeconds);
      expect(bale.colorName).toMatch(/Middling/);
      expect(bale.extraneous).toEqual([]);
    }
  });
  test('sells at the season average of 8.41 c, 500 lb for $42.05 (Walsh 1944)', () => {
    expect(classed[0]).toMatchObject({ valueUsd: 42.05, basis: 'seasonAverage', priceYear: 1937, premiumPoints: 0 });
  });
  test('pressed damp, is paid as it weighs: no limit of moisture held before 2006 — Federal Register 71:51422', () => {
    const wet: Lot = { ...lot, waterKg: { ...lot.waterKg, lint: (lot.dryKg.lint * 0.1) / 0.9 } };
    const damp = classBales(wet, bales, decisions, { ...present(4), era: 'thirties' });
    expect(damp.moisture.percent).toBeCloseTo(10, 9);
    expect(damp.moisture.overLimit).toBe(false);
    for (const bale of damp.classed) expect(bale).toMatchObject({ paidLb: bale.netLb, waterRule: 'none' });
  });
  test('has no module mean: the instrument of today reads each bale for itself', () => {
    for (const { reading, ownReading } of classed) expect(reading).toEqual(ownReading);
    expect(new Set(classed.map(({ reading }) => reading.strengthGPerTex)).size).toBeGreaterThan(1);
  });
});
