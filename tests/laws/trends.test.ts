import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Fibre } from '../../src/model/fibre.ts';
import { weatheredColour, weatherLoss } from '../../src/model/field/weathering.ts';
import { dry } from '../../src/model/gin/dryer.ts';
import { type LintCleanerStage, lintCleanedFibre } from '../../src/model/gin/lint-cleaner.ts';
import { removalUnder } from '../../src/model/gin/removal-factors.ts';
import { ginnedFibre } from '../../src/model/gin/stand.ts';
import { foreignMatterFraction, takenAlongKg } from '../../src/model/harvest/foreign-matter.ts';
import { meanLengthMm, shareBelow, shortFibrePercent } from '../../src/model/length/statistics.ts';
import { partMasses, totalDryKg, trashParts, waterGroups } from '../../src/model/lot.ts';
import { storeModules } from '../../src/model/module/store.ts';
import { type Cotton, evenlyMoist, fibreOf } from '../model/gin/hand-made-lot.ts';
import { propertySeed, runs } from './runs.ts';

const thousandths = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map((n) => n / 1000);
const check = <T>(arbitrary: fc.Arbitrary<T>, full: number, law: (value: T) => void) =>
  fc.assert(fc.property(arbitrary, law), { seed: propertySeed, numRuns: runs(full) });
const cottons = fc.constantFrom<Cotton>('short', 'medium', 'long', 'pima');
const methods = fc.constantFrom('hand', 'spindle', 'stripper', 'stripperFieldCleaner' as const);
const hair = 1e-9;

/** What it does to the fibre: never longer, never fewer short ones. */
function shorter(after: Fibre, before: Fibre) {
  expect(meanLengthMm(after.lengths, 'weight')).toBeLessThanOrEqual(meanLengthMm(before.lengths, 'weight') + hair);
  expect(shortFibrePercent(after.lengths, 'weight')).toBeGreaterThanOrEqual(
    shortFibrePercent(before.lengths, 'weight') - hair,
  );
}

const drierBreaksMore = (gin: typeof ginnedFibre) =>
  check(
    fc.tuple(cottons, fc.constantFrom('saw', 'roller' as const), thousandths(2, 12), thousandths(0, 4)),
    500,
    ([cotton, stand, moisture, more]) =>
      shorter(gin(fibreOf(cotton), stand, moisture), gin(fibreOf(cotton), stand, moisture + more)),
  );

const lintCleaningShortens = (clean: typeof lintCleanedFibre) =>
  check(
    fc.tuple(cottons, fc.constantFrom<LintCleanerStage>(1, 2, 3), thousandths(3, 7)),
    300,
    ([cotton, stage, moisture]) => shorter(clean(fibreOf(cotton), 'saw', stage, moisture), fibreOf(cotton)),
  );

const trashTable = partMasses({ burs: 0.5, sticks: 0.2, leaf: 0.3, motes: 0.1, dirt: 0.4, lint: 0.002, seed: 0.001 });
const drierGivesUpTrash = (removal: typeof removalUnder) =>
  check(
    fc.tuple(thousandths(2, 14), thousandths(0, 6), thousandths(0.3, 1), thousandths(0.5, 6)),
    1000,
    ([moisture, more, leafFactor, loadingBalesPerHourFoot]) => {
      const under = (lintMoisturePercent: number) =>
        removal(trashTable, { lintMoisturePercent, leafFactor, loadingBalesPerHourFoot });
      for (const part of trashParts)
        expect(under(moisture)[part]).toBeGreaterThanOrEqual(under(moisture + more)[part]! - hair);
    },
  );

const hotterDries = (dryer: typeof dry) =>
  check(
    fc.tuple(thousandths(2, 25), fc.integer({ min: 100, max: 340 }), thousandths(0, 60), thousandths(0.1, 1)),
    1000,
    ([moisture, airF, more, outsideHumidity]) => {
      const dryKg = partMasses({ lint: 380, seed: 600, leaf: 30, burs: 40 });
      const before = { dryKg, waterKg: evenlyMoist(dryKg, moisture) };
      const after = (f: number) =>
        dryer('dryer', before, fibreOf('medium'), f, { outsideF: 70, outsideHumidity }).out.waterKg;
      for (const group of waterGroups) {
        expect(after(airF)[group]).toBeLessThanOrEqual(before.waterKg[group]);
        expect(after(airF + more)[group]).toBeLessThanOrEqual(after(airF)[group] + hair);
      }
    },
  );

const rainGreysAndTakes = (colour: typeof weatheredColour, loss: typeof weatherLoss) =>
  check(
    fc.tuple(fc.constantFrom('upland', 'pima' as const), thousandths(0, 8), thousandths(0, 4), fc.nat({ max: 60 })),
    1000,
    ([kind, rain, more, days]) => {
      const [before, after] = [colour(kind, rain, days, 1), colour(kind, rain + more, days, 1)];
      expect(after.reflectanceRd).toBeLessThanOrEqual(before.reflectanceRd);
      expect(after.yellownessB).toBeGreaterThanOrEqual(before.yellownessB);
      expect(loss(rain + more)).toBeGreaterThanOrEqual(loss(rain));
    },
  );

const rainSpoilsModules = (store: typeof storeModules) =>
  check(
    fc.tuple(
      fc.constantFrom('good', 'poor', 'none' as const),
      fc.constantFrom('round', 'conventional', 'wagon' as const),
      fc.nat({ max: 40 }),
      thousandths(0, 6),
      thousandths(0, 4),
    ),
    200,
    ([cover, kind, storageDays, rain, more]) => {
      const dryKg = partMasses({ lint: 3800, seed: 6000, leaf: 300, burs: 400 });
      const lot = { dryKg, waterKg: evenlyMoist(dryKg, 10), fibre: fibreOf('medium') };
      const stored = (rainInchesInStorage: number) => store(lot, { cover, kind, storageDays }, { rainInchesInStorage });
      const [before, after] = [stored(rain), stored(rain + more)];
      expect(after.lostFraction).toBeGreaterThanOrEqual(before.lostFraction);
      expect(after.yellowing).toBeGreaterThanOrEqual(before.yellowing - hair);
      expect(after.moisturePercent).toBeGreaterThanOrEqual(before.moisturePercent - hair);
    },
  );

const leafComesAlong = (fraction: typeof foreignMatterFraction) =>
  check(
    fc.tuple(methods, thousandths(0, 1), thousandths(0, 1), thousandths(50, 3000)),
    1000,
    ([method, one, other, lintLbPerAcre]) => {
      const [less, more] = [Math.min(one, other), Math.max(one, other)].map((leaf) =>
        fraction(method, leaf, lintLbPerAcre),
      );
      expect(more).toBeGreaterThanOrEqual(less!);
    },
  );

/** What comes along makes up, with the motes, the fraction wanted; the shares of the fibres make up the whole. */
const fractionsMakeUpTheWhole = (take: typeof takenAlongKg, below: typeof shareBelow) =>
  check(
    fc.tuple(methods, thousandths(0.02, 0.5), thousandths(1, 5000), thousandths(0, 0.02), cottons, thousandths(0, 66)),
    1000,
    ([method, fraction, seedCottonKg, moteShare, cotton, lengthMm]) => {
      const motesKg = moteShare * fraction * seedCottonKg;
      const trashKg = totalDryKg(take(method, fraction, seedCottonKg, motesKg)) + motesKg;
      expect(Math.abs(trashKg / (trashKg + seedCottonKg) - fraction)).toBeLessThan(hair);
      const { lengths } = fibreOf(cotton);
      for (const by of ['number', 'weight'] as const) {
        expect(Math.abs(below(lengths, 1000, by) - 1)).toBeLessThan(hair);
        expect(below(lengths, lengthMm, by)).toBeGreaterThanOrEqual(0);
        expect(below(lengths, lengthMm, by)).toBeLessThanOrEqual(1 + hair);
      }
    },
  );

describe('trends of published sign', () => {
  test('drier cotton breaks more at the stand — Griffin & Merkel 1953; Byler 2005', () => drierBreaksMore(ginnedFibre));
  test('a saw lint cleaner shortens at ordinary moistures — Mangialardi 1989', () =>
    lintCleaningShortens(lintCleanedFibre));
  test('drier cotton gives up more trash — Laird, Beltwide 2228', () => drierGivesUpTrash(removalUnder));
  test('hotter air leaves less water, and no dryer wets — Hughs et al. 1985, Beltwide 539; Barker & Laird 1993', () =>
    hotterDries(dry));
  test('rain on open bolls greys, yellows and takes lint — Parvin et al. 2005; USDA-AMS 2002 crop', () =>
    rainGreysAndTakes(weatheredColour, weatherLoss));
  test('rain on modules wets, yellows and spoils — Univ. of California Publ. 3352; Searcy et al. 2010', () =>
    rainSpoilsModules(storeModules));
  test('more leaf on the plant is more trash in the load — USDA Agriculture Handbook 503', () =>
    leafComesAlong(foreignMatterFraction));
});

test('fractions make up the whole', () => fractionsMakeUpTheWhole(takenAlongKg, shareBelow));

describe('each law is seen to fail', () => {
  test.each<[string, () => void]>([
    ['a stand that spares dry cotton', () => drierBreaksMore((fibre, kind, at) => ginnedFibre(fibre, kind, 14 - at))],
    [
      'a lint cleaner that only combs',
      () =>
        lintCleaningShortens((fibre, kind, stage, at) => ({
          ...lintCleanedFibre({ ...fibre, breakTendency: 0 }, kind, stage, at),
          breakTendency: fibre.breakTendency,
        })),
    ],
    [
      'a cleaner that likes damp cotton',
      () =>
        drierGivesUpTrash((table, at) =>
          removalUnder(table, { ...at, lintMoisturePercent: 16 - at.lintMoisturePercent }),
        ),
    ],
    [
      'a dryer that cools as it is turned up',
      () => hotterDries((name, m, fibre, f, air) => dry(name, m, fibre, 500 - f, air)),
    ],
    [
      'rain that bleaches',
      () =>
        rainGreysAndTakes((kind, rain, days, filled) => weatheredColour(kind, 12 - rain, days, filled), weatherLoss),
    ],
    ['rain that gives lint back', () => rainGreysAndTakes(weatheredColour, (rain) => 1 - weatherLoss(rain))],
    [
      'modules that thrive in rain',
      () =>
        rainSpoilsModules((lot, decided, { rainInchesInStorage }) =>
          storeModules(lot, decided, { rainInchesInStorage: 10 - rainInchesInStorage }),
        ),
    ],
    [
      'leaf that sweeps the load',
      () => leafComesAlong((method, leaf, lint) => foreignMatterFraction(method, 1 - leaf, lint)),
    ],
    [
      'motes that come twice',
      () => fractionsMakeUpTheWhole((method, fraction, kg) => takenAlongKg(method, fraction, kg, 0), shareBelow),
    ],
    [
      'a share that leaves out the longest fibres',
      () => fractionsMakeUpTheWhole(takenAlongKg, (lengths, mm, by) => shareBelow(lengths, Math.min(mm, 25), by)),
    ],
  ])('on %s', (_name, law) => {
    expect(law).toThrow();
  });
});
