import { describe, expect, test } from 'vitest';
import { flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import { baleAndTag, baleAndTagHeight } from '../../../src/scene/lessons/bale-and-tag.ts';
import { wordFaults } from '../../pages/season/pictures/scene-checks.ts';

const scene = (width: number) => ({
  width,
  longIn: 55,
  thickIn: 33,
  ties: 6,
  tag: { gin: '00000', ginIs: 'gin code, invented', bale: '0000023', baleIs: 'number of the bale' },
  tareShare: 3 / 497,
  back: [
    { name: 'Bale', amount: '23 of 61' },
    { name: 'Module', amount: '6 of 16' },
    { name: 'Plants', amount: '8,200' },
    { name: 'Bolls', amount: '58,000' },
  ],
  labels: {
    long: '55 in',
    thick: '33 in',
    sample: 'sample cut here',
    gross: 'Gross, on the scale: 497 lb',
    net: 'Net, cotton: 494 lb',
    tare: 'Tare: 3 lb',
    back: 'Where the number leads back to',
  },
});

describe.each([300, 366, 469, 560])('at %i px', (width) => {
  const marks = baleAndTag(scene(width));
  test('all words keep apart and in the picture', () => {
    const height = baleAndTagHeight(scene(width));
    expect(wordFaults({ width, height, still: marks, over: [], parts: [], moving: [], lapSeconds: 1 })).toEqual([]);
  });
  test('the whole number stands on the tag, and as many ties hold the bale as are given', () => {
    const number = [...groupsOf(marks)].find(({ name }) => name === 'number')!;
    const words = [...flatMarks(number.marks)].flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    expect(words.join('')).toBe('000000000023');
    expect([...groupsOf(marks)].find(({ name }) => name === 'ties')?.count).toBe(6);
  });
  test('the wrapping is cut off the strip to scale', () => {
    const wide = [...flatMarks(marks)]
      .flatMap((mark) => (mark.kind === 'patch' && ['lint', 'madder'].includes(mark.ink) ? [mark] : []))
      .map(({ points, ink }) => ({
        ink,
        wide: Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x)),
      }));
    const tare = wide.find(({ ink }) => ink === 'madder')!.wide;
    expect(tare / (width - 12)).toBeCloseTo(3 / 497, 3);
  });
});
