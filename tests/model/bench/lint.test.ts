import { describe, expect, test } from 'vitest';
import { fibreOfBales, fibreOfCard, poundOfLint, trashOfBales } from '../../../src/model/bench/lint.ts';
import { cardOf, type LaidBale } from '../../../src/model/bench/set-up.ts';
import { trashAreaPercent } from '../../../src/model/classing/trash-area.ts';
import { micronaireOf, readFibre } from '../../../src/model/fibre.ts';
import { meanLengthMm, shortFibrePercent } from '../../../src/model/length/statistics.ts';
import { totalKg } from '../../../src/model/lot.ts';
import { KG_PER_POUND } from '../../../src/model/units.ts';

const bale = (some: Partial<LaidBale>): LaidBale => ({ ...cardOf('uplandMedium'), netLb: 480, ...some });

test('the fibre behind a card reads as the card', () => {
  const card = cardOf('uplandMedium');
  const fibre = fibreOfCard(card);
  const reading = readFibre(fibre);
  expect(reading.upperHalfMeanMm / 25.4).toBeCloseTo(card.lengthIn, 6);
  expect(reading.uniformityPercent).toBeCloseTo(card.uniformityPercent, 3);
  expect(micronaireOf(fibre.linearDensityMtex, fibre.maturityRatio)).toBeCloseTo(card.micronaire, 9);
});

describe('a lay-down', () => {
  test('of 67 % at 1.3 dtex and 33 % at 1.65 dtex is of 1.4 dtex (Rieter encyclopaedia, rotor spinning: harmonic)', () => {
    const mic = (dtex: number) => (dtex * 100) / 39.370079;
    const mix = fibreOfBales([bale({ micronaire: mic(1.3), netLb: 670 }), bale({ micronaire: mic(1.65), netLb: 330 })]);
    expect(mix.linearDensityMtex / 100).toBeCloseTo(1.4, 2);
  });
  test('of bales alike is one of them', () => {
    const one = fibreOfCard(bale({}));
    const mix = fibreOfBales([bale({}), bale({ netLb: 500 })]);
    expect(mix.linearDensityMtex).toBeCloseTo(one.linearDensityMtex, 9);
    expect(meanLengthMm(mix.lengths, 'number')).toBeCloseTo(meanLengthMm(one.lengths, 'number'), 9);
  });
  test('averages what is weighed: mean length and short fibre by weight, at one fineness', () => {
    const parts = [bale({ lengthIn: 1, netLb: 480 }), bale({ lengthIn: 1.2, netLb: 480 })];
    const mix = fibreOfBales(parts);
    const mean = (of: (lengths: typeof mix.lengths) => number) =>
      parts.reduce((sum, part) => sum + of(fibreOfCard(part).lengths) / 2, 0);
    expect(meanLengthMm(mix.lengths, 'weight')).toBeCloseTo(
      mean((lengths) => meanLengthMm(lengths, 'weight')),
      9,
    );
    expect(shortFibrePercent(mix.lengths, 'weight')).toBeCloseTo(
      mean((l) => shortFibrePercent(l, 'weight')),
      9,
    );
  });
  test('of unlike cottons classes less uniform than either', () => {
    const mix = readFibre(fibreOfBales([bale({}), { ...cardOf('pima'), netLb: 480 }]));
    expect(mix.uniformityPercent).toBeLessThan(81.4);
  });
  test('of no bale is refused', () => {
    expect(() => fibreOfBales([])).toThrow(RangeError);
  });
  test('shows the trash of its bales by weight', () => {
    expect(
      trashOfBales([bale({ trashAreaPercent: 0.2, netLb: 300 }), bale({ trashAreaPercent: 0.8, netLb: 100 })]),
    ).toBeCloseTo(0.35, 12);
  });
});

test('a pound of lint weighs a pound and shows its trash', () => {
  const lot = poundOfLint(fibreOfCard(cardOf('uplandMedium')), 0.4);
  expect(totalKg(lot)).toBeCloseTo(KG_PER_POUND, 12);
  expect(trashAreaPercent(lot)).toBeCloseTo(0.4, 9);
});
