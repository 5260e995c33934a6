import { expect, test } from 'vitest';
import { benchYarn, pliedVariationPercent } from '../../../src/model/bench/bench-yarn.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { quiltingBench, quiltingSetUp } from './benches.ts';

const { lot } = quiltingBench;

test('two singles together vary less by the root of two (Texcoms Textile Technical Handbook 2023)', () => {
  expect(pliedVariationPercent(15, 2)).toBeCloseTo(15 / Math.SQRT2, 12);
  const single = benchYarn(lot, quiltingSetUp, '30Ne', 'warp', null);
  const plied = benchYarn(lot, quiltingSetUp, '30/2Ne', 'warp', null);
  expect(plied.cvPercent!).toBeCloseTo(single.cvPercent! / Math.SQRT2, 9);
  expect(plied.fibreEndsPerCm!).toBeCloseTo(2 * single.fibreEndsPerCm!, 9);
});

test('the same count in other numbers is the same yarn', () => {
  const ne = benchYarn(lot, quiltingSetUp, '30Ne', 'warp', null);
  const tex = benchYarn(lot, quiltingSetUp, `${ne.number.singleTex}tex`, 'warp', null);
  expect(tex.singleNe).toBeCloseTo(30, 9);
  expect(tex.cvPercent).toBeCloseTo(ne.cvPercent!, 9);
});

test('a twist of one’s own stands for the table’s', () => {
  expect(benchYarn(lot, quiltingSetUp, '25Ne', 'warp', 5.08).turnsPerInch).toBeCloseTo(25.4, 9);
});

test('a yarn out of reach has a verdict, a twist it would want, and no figures of a yarn', () => {
  const yarn = benchYarn(lot, quiltingSetUp, '100Ne', 'warp', null);
  expect(yarn.spinning.verdict).toMatchObject({ status: 'impossible', reason: 'fibresInSection' });
  expect(yarn.turnsPerInch).toBeGreaterThan(30);
  expect(yarn.cvPercent).toBeNull();
});

test('what is no yarn number is refused', () => {
  expect(() => benchYarn(lot, quiltingSetUp, 'thick', 'warp', null)).toThrow(RangeError);
});

test('the pound of lint is all there after spinning', () => {
  expect(closingErrorRelative(quiltingBench.warp.spinning.ledger)).toBeLessThan(1e-9);
});
