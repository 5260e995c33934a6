import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Shelves } from '../../src/scene/shelves.ts';

test('squares lie inside their pages, a texel apart from each other', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 150 }), { minLength: 1, maxLength: 80 }), (sides) => {
      const shelves = new Shelves(100);
      const laid = sides.map((side) => ({ side, ...shelves.place(side) }));
      for (const { page, x, y, side } of laid) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
        expect(Math.max(x, y) + side).toBeLessThanOrEqual(shelves.pages[page]!);
      }
      laid.forEach((a, i) => {
        for (const b of laid.slice(i + 1)) {
          if (a.page !== b.page) continue;
          const apartX = a.x + a.side + 1 <= b.x || b.x + b.side + 1 <= a.x;
          const apartY = a.y + a.side + 1 <= b.y || b.y + b.side + 1 <= a.y;
          expect(apartX || apartY).toBe(true);
        }
      });
    }),
  );
});

test('small squares share a page, and one larger than a page has its own', () => {
  const shelves = new Shelves(100);
  expect([30, 30, 30, 30].map((side) => shelves.place(side))).toEqual([
    { page: 0, x: 0, y: 0 },
    { page: 0, x: 31, y: 0 },
    { page: 0, x: 62, y: 0 },
    { page: 0, x: 0, y: 31 },
  ]);
  expect(shelves.place(130)).toEqual({ page: 1, x: 0, y: 0 });
  expect(shelves.pages).toEqual([100, 130]);
});
