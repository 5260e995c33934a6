import { describe, expect, test } from 'vitest';
import { type Face, letterWidth, textWidth } from '../../../src/scene/cloth/letter-widths.ts';
import { advancesOf } from './read-font.ts';

/** The packaged faces and their size adjustment in fonts.css. */
const faces: readonly (readonly [Face, string, number])[] = [
  ['roman', 'alegreya-sans-500', 1.09],
  ['bold', 'alegreya-sans-800', 1.09],
  ['italic', 'alegreya-sans-500-italic', 1.09],
  ['display', 'bricolage-grotesque-800', 1],
];
const letters = [
  ...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyzáéíóúñüÁÉÍÓÚÑÜ',
  ...' \u00a0.,:;·!¡?¿()"\'’‘“”-–—/&%$¢°²³¹º×−+½¼¾…',
];

describe.each(faces)('%s, by the horizontal metrics of its font file (OpenType hmtx)', (face, file, adjusted) => {
  const advance = advancesOf(`public/fonts/${file}.woff2`);

  test('no letter is wider than the table says, nor much narrower', () => {
    const off = letters.filter((letter) => {
      const own = advance(letter)! * adjusted;
      const said = letterWidth(letter, face);
      return said === undefined || said < own - 1e-9 || said > own + 0.05;
    });
    expect(off).toEqual([]);
  });

  test('a figure takes the room of the widest', () => {
    const widest = Math.max(...[...'0123456789'].map((figure) => advance(figure)! * adjusted));
    for (const figure of '0123456789') {
      expect(letterWidth(figure, face)).toBeGreaterThanOrEqual(widest);
      expect(letterWidth(figure, face)).toBeLessThan(widest + 0.05);
    }
  });
});

test('a line is as wide as its letters, and the face decides', () => {
  expect(textWidth('Wi', 10, { display: true })).toBeCloseTo(10 * (1.04 + 0.32), 9);
  expect(textWidth('lint', 20)).toBeLessThan(textWidth('lint', 20, { bold: true }));
});
