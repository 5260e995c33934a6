import { describe, expect, test } from 'vitest';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { parts } from '../../../src/model/lot.ts';
import { followPart } from '../../../src/pages/season/follow-part.ts';

describe.each(farms)('$id', (farm) => {
  const season = runSeason(farm, 1, null);
  test.each([...parts, 'water' as const])('%s ends in full where its moves say', (part) => {
    const { stops, sourcesKg, destinationsKg } = followPart(season.ledgers, part);
    expect(Math.abs(destinationsKg - sourcesKg)).toBeLessThanOrEqual(1e-9 * sourcesKg);
    const went = stops.flatMap(({ moves }) => moves).filter(({ side }) => side === 'destination');
    const last = season.ledgers.at(-1)!.station;
    const still = stops.find(({ station }) => station === last)?.onKg ?? 0;
    expect(went.reduce((sum, { kg }) => sum + kg, still)).toBeCloseTo(destinationsKg, 6);
  });
  test('a move left out is noticed', () => {
    const [first, ...rest] = season.ledgers;
    const torn = [{ ...first!, out: first!.out.filter(({ account }) => account === 'lot') }, ...rest];
    const { sourcesKg, destinationsKg } = followPart(torn, 'lint');
    expect(Math.abs(destinationsKg - sourcesKg)).toBeGreaterThan(1e-9 * sourcesKg);
  });
});
