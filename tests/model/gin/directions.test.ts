import { describe, expect, test } from 'vitest';
import type { DecisionsOf } from '../../../src/model/decisions.ts';
import { readFibre } from '../../../src/model/fibre.ts';
import { harvest } from '../../../src/model/harvest/harvest.ts';
import { seedCottonWaterKg } from '../../../src/model/harvest/seed-cotton-water.ts';
import { groupDryKg, partMasses } from '../../../src/model/lot.ts';
import { storeModules } from '../../../src/model/module/store.ts';
import { delivered, evenlyMoist, fibreOf, ginAll, sawAndTwo, undried } from './hand-made-lot.ts';

const picked = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425 });
const seedCotton = { ...picked, waterKg: seedCottonWaterKg(picked.dryKg, 10) };

/** What a visitor sees of a gin run. */
function seen(run: ReturnType<typeof ginAll>) {
  const { lot } = run.pressed;
  const trashKg = groupDryKg(lot.dryKg, 'trash');
  return {
    leafShare: lot.dryKg.leaf / lot.dryKg.lint,
    trashShare: trashKg / lot.dryKg.lint,
    lintKg: lot.dryKg.lint,
    nepsRatio: lot.fibre.nepsRatio,
    ...readFibre(lot.fibre),
  };
}
const ginned = (cleaning: Partial<typeof undried>, ginning: Partial<typeof sawAndTwo> = {}) =>
  seen(ginAll(seedCotton, 'spindle', { ...undried, ...cleaning }, { ...sawAndTwo, ...ginning }));

/** Each value lower than the one before. */
const falls = (values: readonly number[]) =>
  values.slice(1).forEach((value, index) => {
    expect(value).toBeLessThan(values[index]!);
  });
const rises = (values: readonly number[]) => falls([...values].reverse());

describe('more lint cleaning — Mangialardi 1989; Baker, Beltwide 1267; Wanjura et al. 2012', () => {
  const runs = [0, 1, 2, 3].map((lintCleaners) => ginned({ dryers: 1 }, { lintCleaners }));
  test('less leaf and trash', () => {
    falls(runs.map(({ leafShare }) => leafShare));
    falls(runs.map(({ trashShare }) => trashShare));
  });
  test('shorter, less uniform, more short fibre, more neps', () => {
    falls(runs.map(({ upperHalfMeanMm }) => upperHalfMeanMm));
    falls(runs.map(({ uniformityPercent }) => uniformityPercent));
    rises(runs.map(({ shortFibrePercentByWeight }) => shortFibrePercentByWeight));
    rises(runs.map(({ nepsRatio }) => nepsRatio));
  });
  test('less lint', () => {
    falls(runs.map(({ lintKg }) => lintKg));
  });
});

describe('drier cotton — Byler 2005; Laird, Beltwide 2228; Anthony 2004', () => {
  const runs = [0, 1, 2].map((dryers) => ginned({ dryers }));
  test('is cleaner', () => {
    falls(runs.map(({ trashShare }) => trashShare));
  });
  test('but shorter, with more short fibre', () => {
    falls(runs.map(({ upperHalfMeanMm }) => upperHalfMeanMm));
    rises(runs.map(({ shortFibrePercentByWeight }) => shortFibrePercentByWeight));
  });
  test('and hotter air does more of both', () => {
    const hotter = [150, 200, 260, 350].map((dryerAirF) => ginned({ dryers: 2, dryerAirF }));
    falls(hotter.map(({ trashShare }) => trashShare));
    falls(hotter.map(({ upperHalfMeanMm }) => upperHalfMeanMm));
    rises(hotter.map(({ shortFibrePercentByWeight }) => shortFibrePercentByWeight));
  });
  test('moisture put back before the stand spares the fibre', () => {
    const spared = [0, 1, 2].map((moistureAddedPoints) => ginned({ dryers: 2 }, { moistureAddedPoints }));
    rises(spared.map(({ upperHalfMeanMm }) => upperHalfMeanMm));
    falls(spared.map(({ shortFibrePercentByWeight }) => shortFibrePercentByWeight));
  });
});

describe('more seed-cotton cleaning', () => {
  test('cleans at the price of some lint, not of length — Armijo et al. 2019; Wanjura et al. 2012', () => {
    const runs = [0, 1, 2].map((stickMachines) => ginned({ stickMachines }));
    falls(runs.map(({ trashShare }) => trashShare));
    falls(runs.map(({ lintKg }) => lintKg));
    const lengths = runs.map(({ upperHalfMeanMm }) => upperHalfMeanMm);
    expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThan(1e-9);
  });
});

test('a wetter module is yellower and greyer — Univ. of California Publ. 3352', () => {
  const fibres = [12, 14, 15, 16, 18].map((moisture) => {
    const lot = { ...picked, waterKg: evenlyMoist(picked.dryKg, moisture) };
    const decisions = { kind: 'conventional', cover: 'good', storageDays: 30 } as const;
    return storeModules(lot, decisions, { rainInchesInStorage: 0 }).lot.fibre;
  });
  rises(fibres.map(({ yellownessB }) => yellownessB));
  falls(fibres.map(({ reflectanceRd }) => reflectanceRd));
});

describe('stripped against picked — ASAE, Alternate harvesting systems and cotton quality; USDA ERS Stat. Bull. 929', () => {
  const dryKg = partMasses({ lint: 40_000, seed: 55_000, motes: 1000 });
  const crop = {
    grown: { dryKg, waterKg: evenlyMoist(dryKg, 8), fibre: fibreOf('medium') },
    weatheredFraction: 0.02,
    leafRemaining: 0.2,
    acres: 200,
    lintLbPerAcre: 440,
  };
  const by = (method: DecisionsOf<'harvest'>['method']) => {
    const { lot } = harvest(crop, { method, daysToHarvest: 5, pickings: 1, moisturePercent: 9 });
    const run = ginAll(lot, method, { ...undried, dryers: 1, stickMachines: 2 });
    return { ...seen(run), turnout: run.summary.turnout, wasteLb: run.summary.wasteLbPer480LbBale };
  };
  const [spindle, cleaned, stripped] = [by('spindle'), by('stripperFieldCleaner'), by('stripper')];
  test('lower turnout and more gin waste, a field cleaner between', () => {
    falls([spindle.turnout, cleaned.turnout, stripped.turnout]);
    rises([spindle.wasteLb, cleaned.wasteLb, stripped.wasteLb]);
  });
  test('shorter, with more short fibre and neps, as strong', () => {
    falls([spindle.upperHalfMeanMm, stripped.upperHalfMeanMm]);
    rises([spindle.shortFibrePercentByWeight, stripped.shortFibrePercentByWeight]);
    rises([spindle.nepsRatio, stripped.nepsRatio]);
    expect(stripped.strengthGPerTex).toBe(spindle.strengthGPerTex);
  });
});

test('roller against saw stand: longer, more uniform, fewer short fibres and neps, more lint, trashier — Gillum & Armijo 2007', () => {
  const [saw, roller] = [ginned({}, { lintCleaners: 0 }), ginned({}, { stand: 'roller', lintCleaners: 0 })];
  expect(roller.upperHalfMeanMm).toBeGreaterThan(saw.upperHalfMeanMm);
  expect(roller.uniformityPercent).toBeGreaterThan(saw.uniformityPercent);
  expect(roller.shortFibrePercentByWeight).toBeLessThan(saw.shortFibrePercentByWeight);
  expect(roller.nepsRatio).toBeLessThan(saw.nepsRatio);
  expect(roller.lintKg).toBeGreaterThan(saw.lintKg);
  expect(roller.trashShare).toBeGreaterThan(saw.trashShare);
});
