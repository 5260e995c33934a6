import { describe, expect, test } from 'vitest';
import {
  chainLedger,
  closingErrorRelative,
  countErrorRelative,
  destinationAccounts,
  type MassLedger,
  massEntry,
  sourceAccounts,
  unaccountedKg,
  waterEntry,
} from '../../src/model/ledger.ts';
import { addMasses, scaleMasses, splitLot } from '../../src/model/lot.ts';
import { pickedLot } from './lots.ts';

const grown = pickedLot();
const field = splitLot(grown, { lint: 0.05, seed: 0.05 });
const gin = splitLot(field.kept, { burs: 0.9, sticks: 0.8, leaf: 0.7 });

/** A field that leaves some behind, and a gin that takes trash out and dries. */
const harvest: MassLedger = {
  station: 'harvest',
  in: [massEntry('grown', grown)],
  out: [massEntry('leftInField', field.removed), massEntry('lot', field.kept)],
};
const driedKg = 3;
const dried = { ...gin.kept, waterKg: { ...gin.kept.waterKg, lint: gin.kept.waterKg.lint - driedKg } };
const cleaning: MassLedger = {
  station: 'cleaning',
  in: [massEntry('lot', field.kept)],
  out: [massEntry('ginTrash', gin.removed), waterEntry('evaporated', driedKg), massEntry('lot', dried)],
};

describe('one station', () => {
  test('closes when all that came in went out', () => {
    expect(closingErrorRelative(harvest)).toBeLessThan(1e-12);
    expect(closingErrorRelative(cleaning)).toBeLessThan(1e-12);
  });
  test('an empty ledger closes', () => {
    expect(closingErrorRelative({ in: [], out: [] })).toBe(0);
  });
  test.each(['lint', 'seed', 'burs', 'leaf', 'dirt'] as const)('sees a millionth of the %s go missing', (part) => {
    const lot = { ...field.kept, dryKg: { ...field.kept.dryKg, [part]: field.kept.dryKg[part] * (1 - 1e-6) } };
    const leaky = { ...harvest, out: [massEntry('leftInField', field.removed), massEntry('lot', lot)] };
    expect(closingErrorRelative(leaky)).toBeGreaterThan(5e-7);
    expect(unaccountedKg(leaky, part)).toBeGreaterThan(0);
  });
  test('sees a millionth of the water go missing', () => {
    const leaky = {
      ...cleaning,
      out: [...cleaning.out.slice(0, 1), waterEntry('evaporated', driedKg - 1e-4), massEntry('lot', dried)],
    };
    expect(closingErrorRelative(leaky as MassLedger)).toBeGreaterThan(9e-7);
  });
  test('sees a part turned into another of the same weight', () => {
    const dryKg = { ...field.kept.dryKg, lint: field.kept.dryKg.lint + 1, leaf: field.kept.dryKg.leaf - 1 };
    const mixed = {
      ...harvest,
      out: [massEntry('leftInField', field.removed), massEntry('lot', { ...field.kept, dryKg })],
    };
    expect(closingErrorRelative(mixed as MassLedger)).toBeGreaterThan(0.01);
  });
  test('a part that leaves without having come in is an endless error', () => {
    const conjured = { in: [waterEntry('moistureAdded', 1)], out: [massEntry('bale', grown)] } as const;
    expect(closingErrorRelative(conjured)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('the whole chain', () => {
  test('closes from source to destination, with the last lot still held', () => {
    const chain = chainLedger([harvest, cleaning]);
    expect(closingErrorRelative(chain)).toBeLessThan(1e-12);
    expect(chain.in.map(({ account }) => account)).toEqual(['grown']);
    expect(chain.out.map(({ account }) => account)).toEqual(['leftInField', 'ginTrash', 'evaporated', 'lot']);
  });
  test('sees a lot that changes between two stations that close by themselves', () => {
    const short = scaleMasses(field.kept, 1 - 1e-6);
    const parted = splitLot(short, { burs: 0.9 });
    const next: MassLedger = {
      station: 'cleaning',
      in: [massEntry('lot', short)],
      out: [massEntry('ginTrash', parted.removed), massEntry('lot', parted.kept)],
    };
    expect(closingErrorRelative(next)).toBeLessThan(1e-12);
    expect(closingErrorRelative(chainLedger([harvest, next]))).toBeGreaterThan(5e-7);
  });
  test('of no station is empty', () => {
    expect(closingErrorRelative(chainLedger([]))).toBe(0);
  });
  test('may start from a lot', () => {
    expect(closingErrorRelative(chainLedger([cleaning]))).toBeLessThan(1e-12);
  });
});

describe('counts', () => {
  const seeds = (plants: number, notEmerged: number) =>
    ({
      station: 'planting',
      whole: { name: 'seedsSown', count: 52_272 },
      shares: [
        { name: 'plants', count: plants },
        { name: 'notEmerged', count: notEmerged },
      ],
    }) as const;
  test('close when the shares add up to the whole', () => {
    expect(countErrorRelative(seeds(41_818, 10_454))).toBe(0);
  });
  test('see one seed go missing', () => {
    expect(countErrorRelative(seeds(41_817, 10_454))).toBeCloseTo(1 / 52_272, 12);
  });
  test('see shares of nothing', () => {
    expect(countErrorRelative({ ...seeds(1, 0), whole: { name: 'seedsSown', count: 0 } })).toBe(
      Number.POSITIVE_INFINITY,
    );
  });
});

test('no account is both a source and a destination', () => {
  expect(sourceAccounts.filter((name) => (destinationAccounts as readonly string[]).includes(name))).toEqual([]);
});

test('adding what a split parted gives an entry equal to the one before', () => {
  const entry = massEntry('grown', addMasses(field.kept, field.removed));
  expect(entry.waterKg).toBeCloseTo(massEntry('grown', grown).waterKg, 12);
});
