import { expect, test } from 'vitest';
import { partMasses } from '../../../src/model/lot.ts';
import { groupsOf } from '../../../src/scene/display-list.ts';
import { type LedgerBandsInput, ledgerBands, partAtPoint } from '../../../src/scene/stations/ledger/ledger-bands.ts';

const masses = (lint: number, seed: number, waterKg = 0) => ({ dryKg: partMasses({ lint, seed }), waterKg });
const input: LedgerBandsInput = {
  name: 'test',
  in: [{ account: 'lot', masses: masses(40, 60, 0), label: 'In 100' }],
  out: [
    { account: 'lot', masses: masses(38, 0), label: 'On 38' },
    { account: 'seedHouse', masses: masses(2, 60), label: 'Seed house 62' },
  ],
  followed: null,
  width: 700,
  wordPx: 14,
};

test('each account has its band, and strips are as wide as their masses', () => {
  const { marks, spots, height } = ledgerBands(input);
  expect([...groupsOf(marks)].map(({ name }) => name)).toEqual(
    expect.arrayContaining(['band/in/lot', 'band/out/lot', 'band/out/seedHouse']),
  );
  const seedIn = spots.find(({ part, x }) => part === 'seed' && x === 0)!;
  const lintIn = spots.find(({ part, x }) => part === 'lint' && x === 0)!;
  expect(seedIn.height / lintIn.height).toBeCloseTo(1.5, 9);
  const total = spots.filter(({ x }) => x > 0).reduce((sum, spot) => sum + spot.height, 0);
  expect(total).toBeCloseTo(seedIn.height + lintIn.height, 9);
  expect(Math.max(...spots.map((spot) => spot.y + spot.height))).toBeLessThan(height);
});

test('a finger on a strip finds its part, beside the bands nothing', () => {
  const { spots, height } = ledgerBands(input);
  const seed = spots.find(({ part, x }) => part === 'seed' && x === 0)!;
  expect(partAtPoint(spots, seed.x + 4, seed.y + seed.height / 2, 6)).toBe('seed');
  expect(partAtPoint(spots, 350, height + 60, 6)).toBeNull();
});

test('what is followed keeps its cloth and all else is plain; an empty ledger draws nothing', () => {
  const { marks } = ledgerBands({ ...input, followed: 'seed' });
  const names = [...groupsOf(marks)].map(({ name }) => name);
  expect(names).toContain('test/in/lot/followed/seed');
  expect(names.some((name) => name.endsWith('/lint'))).toBe(false);
  expect(ledgerBands({ ...input, in: [], out: [] }).marks).toEqual([]);
});
