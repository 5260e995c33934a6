import { expect, test } from 'vitest';
import { qrSvg } from '../../../src/pages/teach/qr-picture.ts';

const text = 'https://a-school-host.example/seamfield/#/teach/join?pupils=24&v=1&farm=coastal-plain&seed=7';
const svg = qrSvg(text);
const size = Number(/viewBox="0 0 (\d+) /.exec(svg)?.[1]);
const dark = new Set([...svg.matchAll(/M(\d+) (\d+)h1v1h-1z/g)].map(([, x, y]) => `${x},${y}`));
const isDark = (x: number, y: number) => dark.has(`${x},${y}`);

test('the code has the size, quiet zone and finder patterns of ISO/IEC 18004 (6.3.3, 6.3.8)', () => {
  // Sides are 17 + 4 × version squares, and four quiet ones lie on each side.
  expect((size - 8 - 17) % 4).toBe(0);
  for (let i = 0; i < size; i++)
    for (let quiet = 0; quiet < 4; quiet++)
      for (const [x, y] of [
        [i, quiet],
        [quiet, i],
        [i, size - 1 - quiet],
        [size - 1 - quiet, i],
      ] as const)
        expect(isDark(x, y)).toBe(false);
  for (const [left, top] of [
    [4, 4],
    [size - 11, 4],
    [4, size - 11],
  ] as const) {
    for (let y = 0; y < 7; y++) {
      for (let x = 0; x < 7; x++) {
        const ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
        expect(isDark(left + x, top + y)).toBe(ring !== 2);
      }
    }
  }
});

test('equal texts give equal codes, and a longer text needs more squares', () => {
  expect(qrSvg(text)).toBe(svg);
  const longer = Number(/viewBox="0 0 (\d+) /.exec(qrSvg(text.repeat(3)))?.[1]);
  expect(longer).toBeGreaterThan(size);
});
