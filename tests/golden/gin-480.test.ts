import { describe, expect, test } from 'vitest';
import { fieldCleaner } from '../../src/model/harvest/facts.ts';
import { groupDryKg, type Lot, splitLot, totalKg, waterGroupOf } from '../../src/model/lot.ts';
import { POUNDS_PER_STATISTICAL_BALE } from '../../src/model/units.ts';
import { type Delivered, delivered, ginAll, sawAndTwo, undried } from '../model/gin/hand-made-lot.ts';

/**
 * The balance sheet of one 480-lb bale at constant moisture, worked out beforehand in a separate calculation with the same
 * removal tables: picked, 8 % foreign matter, 42.5 % lint share, two cylinder cleaners, one stick machine, saw stand, two
 * saw lint cleaners. It holds the arithmetic and the order of the machines; it is no measurement.
 */
const columns = ['lint', 'seed', 'burs', 'sticks', 'leaf', 'motes', 'dirt'] as const;
const sheet = {
  delivered: [496.2, 671.3, 25.4, 10.2, 45.7, 12.2, 8.1, 1269.0],
  moduleFeeder: [496.0, 671.1, 24.9, 9.9, 44.3, 12.2, 6.9, 1265.4],
  cylinderCleaner1: [495.8, 670.9, 23.6, 9.2, 39.0, 11.7, 4.8, 1255.0],
  stickMachine1: [493.8, 668.2, 11.3, 5.0, 35.9, 11.1, 4.3, 1229.8],
  cylinderCleaner2: [493.6, 668.0, 10.8, 4.6, 31.6, 10.7, 3.0, 1222.3],
  distributor: [493.5, 668.0, 10.8, 4.6, 31.4, 10.7, 3.0, 1222.1],
  extractorFeeder: [492.6, 666.7, 5.4, 3.0, 24.5, 9.1, 2.3, 1203.5],
  sawStand: [485.7, 0.4, 1.3, 0.9, 17.1, 3.6, 0.7, 509.8],
  seedHouse: [3.0, 665.4, 1.3, 0.8, 2.4, 2.3, 0.7, 675.8],
  lintCleaner1: [476.0, 0.3, 0.7, 0.5, 10.3, 2.0, 0.4, 490.1],
  lintCleaner2: [470.2, 0.2, 0.4, 0.4, 7.2, 1.3, 0.2, 480.0],
} as const;
const removed = {
  moduleFeeder: 3.6,
  cylinderCleaner1: 10.4,
  stickMachine1: 25.3,
  cylinderCleaner2: 7.5,
  distributor: 0.2,
  extractorFeeder: 18.6,
  lintCleaner1: 19.7,
  lintCleaner2: 10.1,
} as const;
/** Half a unit of the last digit printed, and a hair. */
const roundingLb = 0.0501;

const picked = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425 });
const run = ginAll(picked, 'spindle');
const poundsPerKg = POUNDS_PER_STATISTICAL_BALE / totalKg(run.pressed.lot);

/** A row of the sheet: each part with the water it holds, then the total, lb. */
function pounds(masses: Pick<Lot, 'dryKg' | 'waterKg'>): number[] {
  const withWater = columns.map((part) => {
    const group = waterGroupOf(part);
    return masses.dryKg[part] * (1 + masses.waterKg[group] / groupDryKg(masses.dryKg, group)) * poundsPerKg;
  });
  return [...withWater, totalKg(masses) * poundsPerKg];
}

const steps = new Map([...run.cleaned.machines, ...run.ginned.machines].map((step) => [step.machine, step]));
const massesOf = (row: keyof typeof sheet) => {
  if (row === 'delivered') return picked;
  return row === 'seedHouse' ? run.ginned.seedHouse : steps.get(row)!.out;
};

describe('one 480-lb bale, lb after each machine', () => {
  test.each(Object.keys(sheet) as (keyof typeof sheet)[])('%s', (row) => {
    const actual = pounds(massesOf(row));
    sheet[row].forEach((expected, column) => {
      expect(Math.abs(actual[column]! - expected), columns[column] ?? 'total').toBeLessThanOrEqual(roundingLb);
    });
  });
  test.each(Object.entries(removed))('%s removes %f lb', (machine, expected) => {
    const sum = steps.get(machine)!.removed.reduce((kg, { masses }) => kg + totalKg(masses), 0);
    expect(Math.abs(sum * poundsPerKg - expected)).toBeLessThanOrEqual(roundingLb);
  });
  test('the stand throws out 17.9 lb', () => {
    const waste = steps.get('sawStand')!.removed.find(({ account }) => account === 'ginTrash')!;
    expect(Math.abs(totalKg(waste.masses) * poundsPerKg - 17.9)).toBeLessThanOrEqual(roundingLb);
  });
});

interface Run {
  readonly name: string;
  readonly cotton: Delivered;
  readonly fieldCleaned?: boolean;
  readonly cylinders: number;
  readonly sticks: number;
  readonly lintCleaners: number;
  /** Turnout %, seed cotton per 480 lb, seed per 500 lb, trash and motes per 480 lb, lint-cleaner waste per 500 lb. */
  readonly expected: readonly [number, number, number, number, number];
  /** Foreign matter before the stand, %. */
  readonly before: number;
}
const pickedCotton: Delivered = { method: 'spindle', foreignMatter: 0.08, lintShare: 0.425 };
const strippedCotton: Delivered = { method: 'stripper', foreignMatter: 0.38, lintShare: 0.425 };
const line = { cylinders: 2, sticks: 1, lintCleaners: 2 };
const standardRuns: readonly Run[] = [
  {
    name: 'hand, one cylinder, no stick machine, one lint cleaner',
    cotton: { method: 'hand', foreignMatter: 0.025, lintShare: 0.425 },
    cylinders: 1,
    sticks: 0,
    lintCleaners: 1,
    expected: [40.5, 1187, 696, 38, 15],
    before: 1.6,
  },
  {
    name: 'picked, one',
    cotton: pickedCotton,
    ...line,
    lintCleaners: 1,
    expected: [38.6, 1243, 689, 101, 20],
    before: 3.7,
  },
  { name: 'picked, two', cotton: pickedCotton, ...line, expected: [37.8, 1269, 704, 113, 31], before: 3.7 },
  {
    name: 'picked, three',
    cotton: pickedCotton,
    ...line,
    lintCleaners: 3,
    expected: [37.3, 1286, 714, 121, 38],
    before: 3.7,
  },
  {
    name: 'stripped with field cleaner, two stick machines',
    cotton: strippedCotton,
    fieldCleaned: true,
    ...line,
    sticks: 2,
    expected: [32.0, 1498, 708, 338, 34],
    before: 5.4,
  },
  {
    name: 'stripped, two stick machines',
    cotton: strippedCotton,
    ...line,
    sticks: 2,
    expected: [25.8, 1860, 711, 698, 45],
    before: 9.2,
  },
];

describe('the standard runs: turnout, seed cotton, seed, waste', () => {
  test.each(standardRuns)('$name', ({ cotton, fieldCleaned, cylinders, sticks, lintCleaners, expected, before }) => {
    const whole = delivered(cotton);
    const lot = fieldCleaned ? { ...splitLot(whole, fieldCleaner.removedFraction).kept, fibre: whole.fibre } : whole;
    const { summary, cleaned } = ginAll(
      lot,
      cotton.method,
      { ...undried, cylinderCleaners: cylinders, stickMachines: sticks },
      { ...sawAndTwo, lintCleaners },
    );
    const actual = [
      100 * summary.turnout,
      summary.seedCottonLbPer480LbBale,
      summary.seedLbPer500LbBale,
      summary.wasteLbPer480LbBale,
      summary.lintCleanerWasteLbPer500LbBale,
    ];
    const tolerance = [roundingLb, 0.5, 0.5, 0.5, 0.5];
    expected.forEach((value, index) => {
      expect(Math.abs(actual[index]! - value), String(index)).toBeLessThanOrEqual(tolerance[index]!);
    });
    const { dryKg } = cleaned.lot;
    const trash = groupDryKg(dryKg, 'trash');
    expect(Math.abs((100 * trash) / (trash + dryKg.lint + dryKg.seed) - before)).toBeLessThanOrEqual(0.0501);
  });
});
