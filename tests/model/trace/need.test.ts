import { describe, expect, test } from 'vitest';
import { needOf, quiltInputs, type TraceRequest } from '../../../src/model/trace/need.ts';
import { projectIds } from '../../../src/model/trace/project-facts.ts';

const need = (request: TraceRequest, at: Parameters<typeof needOf>[1] = 'middle') => {
  const found = needOf(request, at);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
};

test('a twin quilt of 65 x 88 in: 11.73 square yards of cloth, 2.68 lb, and 1.25 lb of batting (worked by hand)', () => {
  const twin = need({ project: 'twin-quilt' });
  expect(twin.clothSquareYards).toBeCloseTo(11.73, 2);
  expect(twin.clothKg / 0.45359237).toBeCloseTo(2.68, 2);
  expect(twin.battingKg / 0.45359237).toBeCloseTo(1.25, 6);
});
test('a 65 x 88 in backing with its margin is the worked 73 x 96 in', () => {
  expect(quiltInputs('middle')).toMatchObject({ piecing: 1.3, overInches: 8, ounces: 3.66, battingOunces: 4 });
});
test.each(projectIds)('%s: the low case takes no more than the middle, the high case no less', (project) => {
  const [low, middle, high] = (['low', 'middle', 'high'] as const).map((at) => need({ project }, at));
  expect(low!.clothKg).toBeLessThan(middle!.clothKg);
  expect(high!.clothKg).toBeGreaterThan(middle!.clothKg);
});
test.each([
  // Tops alone, before backing and binding: yardage of 42 in cloth from sewphancy.com.
  ['baby-quilt', 30 * 40, 1, 1.5],
  ['throw-quilt', 50 * 65, 2.5, 3.6],
] as const)('%s: its pieced top takes the published yards', (_, squareInches, low, high) => {
  const yards = (squareInches * quiltInputs('middle').piecing) / 42 / 36;
  expect(yards).toBeGreaterThan(low);
  expect(yards).toBeLessThan(high);
});
test('two of a thing take twice the cloth and the same backing each', () => {
  const [one, two] = [need({ project: 'twin-quilt' }), need({ project: 'twin-quilt', count: 2 })];
  expect(two.clothKg).toBe(2 * one.clothKg);
  expect(two.battingKg).toBe(2 * one.battingKg);
  expect(two.backingYards).toBe(one.backingYards);
});

describe('what cannot be made is named', () => {
  test.each([
    [{ project: 'tent' }, 'project'],
    [{ project: 'tote', count: 0 }, 'count'],
    [{ project: 'tote', count: 1001 }, 'count'],
    [{ yards: 1, widthInches: 5, ouncesPerSquareYard: 4 }, 'widthInches'],
  ] as const)('%o', (request, field) => {
    const found = needOf(request, 'middle');
    expect(found).toMatchObject({ ok: false, problems: [{ field }] });
  });
});
