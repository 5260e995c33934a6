import { describe, expect, test } from 'vitest';
import { weave } from '../../../src/model/cloth/weave.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { yarnLot, yarnOf } from './yarn-lot.ts';

const quilting = { structure: 'plain', endsPerInch: 68, picksPerInch: 68, finish: 'bleached' } as const;
const yarn = yarnOf(30);

describe.each(['plain', 'twill', 'sateen', 'jersey'] as const)('%s', (structure) => {
  const outcome = weave(yarnLot, yarn, { ...quilting, structure });
  test('becomes cloth and the ledger closes', () => {
    expect(outcome.cloth!.squareMetres).toBeGreaterThan(0);
    expect(closingErrorRelative(outcome.ledger)).toBeLessThan(1e-12);
  });
});

test('a tighter sett makes less of a heavier cloth', () => {
  const open = weave(yarnLot, yarn, quilting).cloth!;
  const tight = weave(yarnLot, yarn, { ...quilting, endsPerInch: 76 }).cloth!;
  expect(tight.gramsPerSquareMetre).toBeGreaterThan(open.gramsPerSquareMetre);
  expect(tight.squareMetres).toBeLessThan(open.squareMetres);
});

test('a sett no yarn can take stops: the lot comes back as yarn, with what would go', () => {
  const outcome = weave(yarnLot, yarn, { ...quilting, endsPerInch: 150, picksPerInch: 100 });
  expect(outcome.cloth).toBeNull();
  expect(outcome.lot).toBe(yarnLot);
  expect(outcome.ledger.out.map(({ account }) => account)).toEqual(['yarn']);
  expect(closingErrorRelative(outcome.ledger)).toBe(0);
  const { reason, highestEndsPerInch, maximumSettPerInch } = outcome.stopped!;
  expect(reason).toBe('settTooHigh');
  expect(maximumSettPerInch).toBeCloseTo(71.4, 1);
  const allowed = Math.floor(highestEndsPerInch!);
  expect(weave(yarnLot, yarn, { ...quilting, endsPerInch: allowed, picksPerInch: 100 }).stopped).toBeNull();
  expect(weave(yarnLot, yarn, { ...quilting, endsPerInch: allowed + 1, picksPerInch: 100 }).stopped).not.toBeNull();
});

test('jersey knows no sett and no size, and says so', () => {
  const one = weave(yarnLot, yarn, { ...quilting, structure: 'jersey' });
  const other = weave(yarnLot, yarn, { ...quilting, structure: 'jersey', endsPerInch: 200, picksPerInch: 200 });
  expect(other).toEqual(one);
  expect(one.cloth!.notes).toContain('settIgnored');
  expect(one.ledger.in.map(({ account }) => account)).not.toContain('warpSize');
});
