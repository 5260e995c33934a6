import { describe, expect, test } from 'vitest';
import { colourOf, named, pimaColour, uplandColour } from '../../../src/model/classing/colour.ts';

describe('our colour chart', () => {
  test('yellower cotton moves through the groups, darker cotton down the grades', () => {
    expect([8, 9.6, 11, 12.5, 14.5].map((b) => uplandColour(72, b)[1])).toEqual(['1', '2', '3', '4', '5']);
    expect([82, 79, 75, 71, 66, 61, 55, 50].map((rd) => uplandColour(rd, 8))).toEqual([
      '11',
      '21',
      '31',
      '41',
      '51',
      '61',
      '71',
      '81',
    ]);
  });
  test('groups keep to the grades that exist', () => {
    expect(uplandColour(80, 14.5)).toBe('25');
    expect(uplandColour(50, 14.5)).toBe('85');
    expect(uplandColour(78, 13)).toBe('24');
  });
  test('Pima has grades 1 to 6 of its own', () => {
    expect([72, 67, 63, 59, 55, 50].map((rd) => pimaColour(rd, 11))).toEqual(['1', '2', '3', '4', '5', '6']);
    expect(Number(pimaColour(71, 13.5))).toBeGreaterThan(1);
    expect(colourOf('pima', 72, 11)).toEqual({ color: '1', colorName: 'American Pima 1' });
  });
  test('a code that does not exist has no name', () => {
    expect(() => named('14')).toThrow(RangeError);
  });
});
