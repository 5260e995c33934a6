import { describe, expect, test } from 'vitest';
import { eyeGrade, gradeByEye, thirtiesPrice } from '../../../src/model/classing/by-eye.ts';
import { openStream } from '../../../src/model/random.ts';

describe('one grade from colour and leaf', () => {
  test.each([
    ['31', 3, 'Middling'],
    ['31', 1, 'Middling'],
    ['31', 4, 'Strict Low Middling'],
    ['21', 5, 'Strict Low Middling'],
    ['11', 8, 'Low Middling'],
    ['71', 8, 'Below Grade'],
    ['35', 6, 'Below Grade'],
    ['32', 5, 'Strict Low Middling Light Spotted'],
    ['81', 2, 'Below Grade'],
  ])('colour %s with leaf %i is %s', (code, leaf, name) => {
    expect(eyeGrade(code, leaf).colorName).toBe(name);
  });
});

test('trash darkens the instrument, not the eye', () => {
  const clean = { lengthIn: 1, uniformityPercent: 80, strengthGPerTex: 26, micronaire: 4.5, yellownessB: 8 };
  const leafy = { ...clean, reflectanceRd: 75 - 3 * 0.4, trashAreaPercent: 0.4 };
  const bale = gradeByEye(leafy, 1.1, openStream(1, 'classing'));
  expect(bale).toMatchObject({ color: '31', colorName: 'Middling', leaf: 3 });
});
test('500 lb at the 1937 average of 8.41 c is $42.05 (Walsh 1944)', () => {
  expect(thirtiesPrice({ netLb: 500 })).toMatchObject({ valueUsd: 42.05, priceYear: 1937, basis: 'seasonAverage' });
});
