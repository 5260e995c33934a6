import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decisionTable } from '../../src/model/decisions.ts';
import type { FieldPlan } from '../../src/model/field/field-plan.ts';
import type { FieldSeason } from '../../src/model/field/field-season.ts';
import { growSeason } from '../../src/model/field/grow-season.ts';
import { countErrorRelative } from '../../src/model/ledger.ts';
import { totalLengthMm } from '../../src/model/length/length-distribution.ts';
import { parts, waterGroups } from '../../src/model/lot.ts';
import { climateIds, eras } from '../../src/model/scenario.ts';
import { seasonOf, weatherOf } from '../model/field/plans.ts';
import { propertySeed, runs } from './runs.ts';

const { planting, bloom, boll, harvest } = decisionTable;
/** A legal number of a decision, on its own steps. */
const legal = ({ low, high, step }: { low: number; high: number; step: number }) =>
  fc.integer({ min: 0, max: Math.round((high - low) / step) }).map((n) => low + n * step);

/** Any plan a visitor or a scenario file can make. */
const anyPlan: fc.Arbitrary<FieldPlan> = fc.record({
  climate: fc.constantFrom(...climateIds),
  era: fc.constantFrom(...eras),
  acres: fc.integer({ min: 1, max: 5000 }),
  soilWaterMm: fc.integer({ min: 50, max: 250 }),
  variety: fc.constantFrom(...planting.variety.options),
  plantingDayOfYear: legal(planting.plantingDayOfYear),
  rowInches: legal(planting.rowInches),
  seedsPerFoot: legal(planting.seedsPerFoot),
  irrigationInches: legal(bloom.irrigationInches),
  harvestAid: fc.boolean(),
  openPercent: legal(boll.openPercent),
  method: fc.constantFrom(...harvest.method.options),
  daysToHarvest: legal(harvest.daysToHarvest),
  pickings: legal(harvest.pickings),
});
const anySeed = fc.integer({ min: 0, max: 999_999 });
const holds = (law: (season: FieldSeason, plan: FieldPlan) => void, grow: typeof seasonOf = seasonOf) =>
  fc.assert(
    fc.property(anyPlan, anySeed, (plan, seed) => law(grow(plan, seed), plan)),
    { numRuns: runs(400), seed: propertySeed },
  );

/** Seeds = plants + not emerged; squares = flowers + shed + closed; flowers = bolls + shed + today’s. */
function countsClose(season: FieldSeason): void {
  expect(season.counts.map((ledger) => ledger.station)).toEqual(['planting', 'bloom', 'boll']);
  for (const ledger of season.counts) {
    expect(countErrorRelative(ledger)).toBeLessThan(1e-9);
    for (const { count } of [ledger.whole, ...ledger.shares])
      expect(count).toBeGreaterThanOrEqual(-1e-6 * ledger.whole.count);
  }
  const share = (station: number, name: string) =>
    season.counts[station]!.shares.find((each) => each.name === name)!.count;
  expect(share(1, 'flowers')).toBe(season.counts[2]!.whole.count);
}

/** Every mass and reading of a crop is a finite number that can be. */
function cropIsPossible(season: FieldSeason, plan: FieldPlan): void {
  expect(season.crop === null).toBe(season.stopped !== null);
  if (!season.crop) return;
  const { grown, weatheredFraction, leafRemaining, openPercentAtHarvest, lintLbPerAcre } = season.crop;
  for (const kg of [...parts.map((part) => grown.dryKg[part]), ...waterGroups.map((group) => grown.waterKg[group])]) {
    expect(Number.isFinite(kg) && kg >= 0).toBe(true);
  }
  expect(grown.dryKg.lint / (grown.dryKg.lint + grown.dryKg.seed)).toBeCloseTo(season.variety.lintShare, 9);
  for (const share of [weatheredFraction, leafRemaining, openPercentAtHarvest / 100]) {
    expect(share).toBeGreaterThanOrEqual(0);
    expect(share).toBeLessThanOrEqual(1 + 1e-12);
  }
  const { fibre } = grown;
  expect(totalLengthMm(fibre.lengths)).toBeCloseTo(1, 9);
  expect(fibre.lengths.every((number) => number >= 0)).toBe(true);
  for (const figure of [fibre.linearDensityMtex, fibre.maturityRatio, fibre.strengthGPerTex, lintLbPerAcre]) {
    expect(figure).toBeGreaterThan(0);
  }
  expect(fibre.maturityRatio).toBeLessThan(1.3);
  expect(fibre.reflectanceRd).toBeGreaterThan(45);
  expect(lintLbPerAcre).toBeLessThan(3500);
  expect(season.harvestDays.every((day) => day > plan.plantingDayOfYear && day <= 354)).toBe(true);
}

/** The days follow each other and every number on them can be. */
function daysArePossible(season: FieldSeason, plan: FieldPlan): void {
  season.days.forEach((day, i) => {
    const { squares, flowersToday, greenBolls, openBolls, shed } = day.perPlant;
    const sane =
      day.dayOfYear === plan.plantingDayOfYear + i &&
      [squares, flowersToday, greenBolls, openBolls, shed, day.nodes, day.plantHeightInches].every(
        (n) => Number.isFinite(n) && n >= 0,
      ) &&
      day.openPercent >= 0 &&
      day.openPercent <= 100 + 1e-9 &&
      day.waterStress >= 0 &&
      day.waterStress <= 1;
    if (!sane) throw new Error(`day ${day.dayOfYear}: ${JSON.stringify(day)}`);
  });
  const irrigated = season.days.reduce((sum, day) => sum + day.irrigationInches, 0);
  expect(irrigated).toBeLessThanOrEqual(plan.irrigationInches + 1e-9);
  expect(irrigated).toBeCloseTo(season.seasonWaterInches.irrigation, 9);
}

/** The same input twice is the same season. */
const repeats = (grow: typeof seasonOf) => (plan: FieldPlan, seed: number) => {
  expect(JSON.stringify(grow(plan, seed))).toBe(JSON.stringify(grow(plan, seed)));
};

/** What is decided later never changes a day before it is decided. */
function laterDecisionsWait(grow: typeof growSeason) {
  fc.assert(
    fc.property(anyPlan, anyPlan, anySeed, (plan, other, seed) => {
      const { harvestAid, openPercent, daysToHarvest, pickings } = other;
      const weather = weatherOf(plan.climate, seed);
      const one = grow(plan, weather);
      const two = grow({ ...plan, harvestAid, openPercent, daysToHarvest, pickings }, weather);
      // Both fields are alike until the first of the two is treated or picked; on that evening nothing has changed yet.
      const acts = [one, two].flatMap((season) => [
        season.events.harvestAid,
        season.harvestDays[0],
        season.days.at(-1)!.dayOfYear,
      ]);
      const until = Math.min(...acts.filter((day): day is number => day !== null && day !== undefined));
      const before = (season: FieldSeason) => season.days.filter((day) => day.dayOfYear <= until);
      expect(JSON.stringify(before(two))).toBe(JSON.stringify(before(one)));
    }),
    { numRuns: runs(200), seed: propertySeed },
  );
}

describe('laws of the field', () => {
  test('counts close for any legal plan in any weather', () => holds(countsClose));
  test('a crop is finite, not negative, in its lint share; a failure says so', () => holds(cropIsPossible));
  test('every day can be', () => holds(daysArePossible));
  test('the same plan and weather give the same season', () => {
    fc.assert(fc.property(anyPlan, anySeed, repeats(seasonOf)), { numRuns: runs(100), seed: propertySeed });
  });
  test('changing harvest aid, its day, the wait or the pickings never changes the days before', () => {
    laterDecisionsWait(growSeason);
  });
});

describe('the laws see a planted bug', () => {
  /** A field grown with something put wrong. */
  const wrong =
    (change: (season: FieldSeason) => FieldSeason): typeof seasonOf =>
    (plan, seed) =>
      change(seasonOf(plan, seed));

  test('a shed square that is counted nowhere', () => {
    const bug = wrong((season) => ({
      ...season,
      counts: season.counts.map((ledger) => ({
        ...ledger,
        shares: ledger.shares.filter(({ name }) => name !== 'squaresShed'),
      })),
    }));
    expect(() => holds(countsClose, bug)).toThrow();
  });
  test('a field that sheds one flower in a million twice', () => {
    const bug = wrong((season) => ({
      ...season,
      counts: season.counts.map((ledger) => ({
        ...ledger,
        shares: ledger.shares.map((share) =>
          share.name === 'bollsShed' ? { ...share, count: share.count * 1.000001 } : share,
        ),
      })),
    }));
    expect(() => holds(countsClose, bug)).toThrow();
  });
  test('lint that grows without its seed', () => {
    const bug = wrong((season) =>
      season.crop
        ? {
            ...season,
            crop: {
              ...season.crop,
              grown: {
                ...season.crop.grown,
                dryKg: { ...season.crop.grown.dryKg, lint: season.crop.grown.dryKg.lint * 1.01 },
              },
            },
          }
        : season,
    );
    expect(() => holds(cropIsPossible, bug)).toThrow();
  });
  test('a failed field that forgets to say why', () => {
    expect(() =>
      holds(
        cropIsPossible,
        wrong((season) => ({ ...season, stopped: null })),
      ),
    ).toThrow();
  });
  test('more water than was allowed', () => {
    const bug: typeof seasonOf = (plan, seed) =>
      seasonOf({ ...plan, irrigationInches: plan.irrigationInches + 5 }, seed);
    expect(() => holds(daysArePossible, bug)).toThrow();
  });
  test('a field that draws by chance of its own', () => {
    let calls = 0;
    const bug: typeof seasonOf = (plan, seed) => seasonOf(plan, seed + calls++);
    expect(() => fc.assert(fc.property(anyPlan, anySeed, repeats(bug)), { numRuns: 20, seed: propertySeed })).toThrow();
  });
  test('a field that knows its harvest beforehand', () => {
    const bug: typeof growSeason = (plan, weather) =>
      growSeason({ ...plan, soilWaterMm: plan.soilWaterMm - plan.daysToHarvest / 10 }, weather);
    expect(() => laterDecisionsWait(bug)).toThrow();
  });
});
