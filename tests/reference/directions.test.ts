import { expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import type { Decisions } from '../../src/model/decisions.ts';
import { farmOf } from '../../src/model/farms.ts';
import { readFibre } from '../../src/model/fibre.ts';
import type { WeatherYear } from '../../src/model/field/weather.ts';
import { totalDryKg } from '../../src/model/lot.ts';
import type { Season } from '../../src/model/season.ts';
import type { StationId } from '../../src/model/station.ts';

const farm = farmOf('coastal-plain')!;

/** The default season with one station decided otherwise. */
function seasonWith<Station extends StationId>(station: Station, some: Partial<Decisions[Station]>, seed = 1): Season {
  const decisions = { ...farm.decisions, [station]: { ...farm.decisions[station], ...some } };
  return runSeason({ ...farm, decisions }, seed, null);
}

/** What the trade sees of a season's bales: mass, length, short fibre, trash and colour of the lint. */
function seen(season: Season) {
  const lot = season.classing!.lotReading;
  const ginned = season.fibreTrail.filter(({ after }) => after !== 'card' && after !== 'comber').at(-1)!.fibre;
  const { upperHalfMeanMm, uniformityPercent, shortFibrePercentByWeight, micronaire } = readFibre(ginned);
  return {
    ...lot,
    upperHalfMeanMm,
    uniformityPercent,
    shortFibrePercentByWeight,
    micronaire,
    lintKg: season.ginning!.lot.dryKg.lint,
    trashKg: totalDryKg(season.ginning!.lot.dryKg) - season.ginning!.lot.dryKg.lint,
    valueUsd: season.classing!.classed.reduce((sum, bale) => sum + bale.valueUsd, 0),
  };
}

test('more lint cleaning: less trash, brighter, shorter, less uniform, more short fibre, less lint — Mangialardi 1989 (Beltwide 2232); Baker (Beltwide 1267, 1674); Anthony 2000', () => {
  const steps = [0, 1, 2, 3].map((lintCleaners) => seen(seasonWith('ginning', { lintCleaners })));
  for (const [index, after] of steps.entries()) {
    const before = steps[index - 1];
    if (!before) continue;
    expect(after.trashAreaPercent).toBeLessThan(before.trashAreaPercent);
    expect(after.reflectanceRd).toBeGreaterThan(before.reflectanceRd);
    expect(after.upperHalfMeanMm).toBeLessThan(before.upperHalfMeanMm);
    expect(after.uniformityPercent).toBeLessThan(before.uniformityPercent);
    expect(after.shortFibrePercentByWeight).toBeGreaterThan(before.shortFibrePercentByWeight);
    expect(after.lintKg).toBeLessThan(before.lintKg);
  }
});

test('the gain of lint cleaning shrinks with each stage — Mangialardi 1989', () => {
  const trash = [0, 1, 2, 3].map((lintCleaners) => seen(seasonWith('ginning', { lintCleaners })).trashAreaPercent);
  const gains = [1, 2, 3].map((stage) => trash[stage - 1]! - trash[stage]!);
  expect(gains[0]!).toBeGreaterThan(gains[1]!);
  expect(gains[1]!).toBeGreaterThan(gains[2]!);
});

test('strength and micronaire are left alone by lint cleaning — Dever et al. 1986 (Beltwide 705); van der Sluijs 2020', () => {
  const [none, three] = [0, 3].map((lintCleaners) => seen(seasonWith('ginning', { lintCleaners })));
  expect(three!.strengthGPerTex).toBe(none!.strengthGPerTex);
  expect(three!.micronaire).toBe(none!.micronaire);
});

test('drier cotton cleans better and breaks more — Byler 2005 (J. Cotton Sci. 9:145); Griffin & Merkel 1953', () => {
  const damp = seen(seasonWith('cleaning', { dryers: 0 }));
  const dry = seen(seasonWith('cleaning', { dryers: 2, dryerAirF: 250 }));
  expect(dry.trashAreaPercent).toBeLessThan(damp.trashAreaPercent);
  expect(dry.shortFibrePercentByWeight).toBeGreaterThan(damp.shortFibrePercentByWeight);
  expect(dry.upperHalfMeanMm).toBeLessThan(damp.upperHalfMeanMm);
});

test('earlier harvest aid costs yield and micronaire — Snipes (Mississippi State), Southeast Farm Press', () => {
  const late = seen(seasonWith('boll', { openPercent: 60 }));
  const early = seen(seasonWith('boll', { openPercent: 20 }));
  expect(early.lintKg).toBeLessThan(late.lintKg);
  expect(early.micronaire).toBeLessThan(late.micronaire);
});

/** The same weather with rain on the days when bolls stood open. */
function rainOnOpenBolls(season: Season, inches: number): WeatherYear {
  const { field, weather } = season;
  const from = field.harvestDays.at(-1)! - 10;
  return {
    ...weather,
    days: weather.days.map((day) =>
      day.dayOfYear >= from && day.dayOfYear < from + 5 ? { ...day, rainInches: day.rainInches + inches / 5 } : day,
    ),
  };
}

test('rain on open bolls costs lint and colour, and so money — Parvin et al. 2005 (J. Cotton Sci. 9:115); USDA-AMS 2002 crop', () => {
  const dry = runSeason(farm, 1, null);
  const wet = runSeason(farm, 1, rainOnOpenBolls(dry, 4));
  expect(wet.field.harvestDays).toEqual(dry.field.harvestDays);
  expect(seen(wet).lintKg).toBeLessThan(seen(dry).lintKg);
  expect(seen(wet).reflectanceRd).toBeLessThan(seen(dry).reflectanceRd);
  expect(seen(wet).valueUsd).toBeLessThan(seen(dry).valueUsd);
});

test('stripping brings more trash, more short fibre and a lower turnout than picking — Faulkner et al. 2011; ERS SB 929', () => {
  const picked = seasonWith('harvest', { method: 'spindle' });
  const stripped = seasonWith('harvest', { method: 'stripper' });
  expect(stripped.harvest!.foreignMatterPercent).toBeGreaterThan(picked.harvest!.foreignMatterPercent);
  expect(seen(stripped).shortFibrePercentByWeight).toBeGreaterThan(seen(picked).shortFibrePercentByWeight);
});

test('a roller stand keeps fibre longer and more uniform than saws — Armijo et al. 2019 (J. Cotton Sci. 23:66)', () => {
  const saw = seen(seasonWith('ginning', { stand: 'saw', lintCleaners: 0 }));
  const roller = seen(seasonWith('ginning', { stand: 'roller', lintCleaners: 0 }));
  expect(roller.upperHalfMeanMm).toBeGreaterThan(saw.upperHalfMeanMm);
  expect(roller.uniformityPercent).toBeGreaterThan(saw.uniformityPercent);
});

test('storing wet yellows the cotton — University of California Publication 3352', () => {
  const wet = (moisturePercent: number) => {
    const decisions = {
      ...farm.decisions,
      harvest: { ...farm.decisions.harvest, moisturePercent },
      module: { ...farm.decisions.module, storageDays: 45 },
    };
    return seen(runSeason({ ...farm, decisions }, 1, null)).yellownessB;
  };
  expect(wet(16)).toBeGreaterThan(wet(9) * 1.3);
});

test('combing takes short fibre out and makes the yarn more even — Rieter encyclopaedia, combing; SITRA', () => {
  const carded = seasonWith('spinning', { system: 'ringCarded' });
  const combed = seasonWith('spinning', { system: 'ringCombed' });
  const shortFibre = (season: Season) => readFibre(season.fibreTrail.at(-1)!.fibre).shortFibrePercentByWeight;
  expect(shortFibre(combed)).toBeLessThan(shortFibre(carded));
  expect(combed.spinning!.yarn!.cvPercent).toBeLessThan(carded.spinning!.yarn!.cvPercent);
});
