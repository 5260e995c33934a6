import { expect, test } from 'vitest';
import { type Swatch, swatches } from '../../src/lessons/swatches.ts';

const byId = (all: readonly Swatch[]) => new Map(all.map((swatch) => [swatch.id, swatch]));

test('each order runs up, and holds every cloth once', () => {
  const weights = swatches('weight').map(({ cloth }) => cloth.gramsPerSquareMetre);
  const covers = swatches('cover').map(({ cloth }) => cloth.coverFraction);
  for (const row of [weights, covers]) expect([...row].sort((a, b) => a - b)).toEqual(row);
  expect(new Set(swatches('cover').map(({ id }) => id)).size).toBe(covers.length);
});

test('weights lie in the bands of sellers: quilting 120 to 170, percale 100 to 150, denim 200 to 400, canvas 300 to 500 g/m2', () => {
  const known = byId(swatches('weight'));
  const bands = { quilting: [120, 170], percale: [100, 150], denim: [200, 400], duckTen: [300, 500] } as const;
  for (const [id, [low, high]] of Object.entries(bands)) {
    const grams = known.get(id as Swatch['id'])!.cloth.gramsPerSquareMetre;
    expect(grams).toBeGreaterThanOrEqual(low);
    expect(grams).toBeLessThanOrEqual(high);
  }
});

test('voile falls, denim stands', () => {
  const known = byId(swatches('weight'));
  expect(known.get('voile')!.drape).toBe('fluid');
  expect(known.get('denim')!.drape).toBe('crisp');
});
