import { classBales } from './classing/class-bales.ts';
import { settle } from './classing/payments.ts';
import { sewingTable } from './cloth/sew.ts';
import { weave } from './cloth/weave.ts';
import { climateOf } from './field/climates.ts';
import type { FieldPlan } from './field/field-plan.ts';
import type { FieldCrop, FieldSeason } from './field/field-season.ts';
import { generateWeather } from './field/generate-weather.ts';
import { growSeason } from './field/grow-season.ts';
import type { WeatherYear } from './field/weather.ts';
import { cleanSeedCotton } from './gin/clean.ts';
import { ginLot } from './gin/gin-lot.ts';
import { pressBales } from './gin/press.ts';
import { paidSeedKg } from './gin/seed.ts';
import { harvest } from './harvest/harvest.ts';
import { totalKg } from './lot.ts';
import { spin } from './mill/spin.ts';
import { storeModules } from './module/store.ts';
import { openStream } from './random.ts';
import type { Scenario } from './scenario.ts';
import type { Season, SeasonStop } from './season.ts';

/** The field's part of a scenario. */
function fieldPlanOf({ climate, era, acres, soilWaterMm, decisions }: Scenario): FieldPlan {
  const { planting, bloom, boll, harvest: gathering } = decisions;
  return {
    climate,
    era,
    acres,
    soilWaterMm,
    ...planting,
    ...bloom,
    ...boll,
    method: gathering.method,
    daysToHarvest: gathering.daysToHarvest,
    pickings: gathering.pickings,
  };
}

/**
 * Rain on each day that modules stand in the yard, inches: the days after the last picking. Past the year's end its own January
 * stands in for the next.
 */
export const rainOnStorageDays = (weather: WeatherYear, fromDay: number, days: number): number[] =>
  Array.from({ length: days }, (_, day) => weather.days[(fromDay + day) % weather.days.length]!.rainInches);

/**
 * Runs a season from planter to sewing table: the links folded over one lot.
 * @param scenario a checked scenario
 * @param seed any whole number from 0 to 999,999; the same seed gives the same season
 * @param record a year of real weather, or null for the scenario's own generated year
 */
export function runSeason(scenario: Scenario, seed: number, record: WeatherYear | null): Season {
  const weather = record ?? generateWeather(climateOf(scenario.climate), openStream(seed, 'weather'));
  const field = growSeason(fieldPlanOf(scenario), weather);
  const begun: Season = {
    scenario,
    seed,
    weather,
    field,
    harvest: null,
    module: null,
    cleaning: null,
    ginning: null,
    pressing: null,
    classing: null,
    payments: null,
    spinning: null,
    weaving: null,
    sewing: null,
    ledgers: [],
    fibreTrail: [],
    stopped: field.stopped,
  };
  return field.crop ? millSeason(ginSeason(begun, field, field.crop)) : begun;
}

/** From the field to classed bales. */
function ginSeason(begun: Season, field: FieldSeason, crop: FieldCrop): Season {
  const { scenario, seed, weather } = begun;
  const { decisions, era, acres } = scenario;
  const gathered = harvest({ ...crop, acres }, decisions.harvest);
  const { storageDays } = decisions.module;
  const stored = storeModules(gathered.lot, decisions.module, {
    rainInchesInStorage: rainOnStorageDays(weather, field.harvestDays.at(-1)!, storageDays).reduce(
      (sum, inches) => sum + inches,
      0,
    ),
  });
  const cleaned = cleanSeedCotton(stored.lot, decisions.cleaning, { harvestMethod: decisions.harvest.method });
  const ginned = ginLot(cleaned.lot, decisions.ginning);
  const pressed = pressBales(ginned.lot, decisions.pressing, era, openStream(seed, 'press'));
  const classed = classBales(pressed.lot, pressed.bales, decisions.classing, {
    era,
    seed,
    balesPerModule: pressed.bales.length / stored.moduleCount,
    stripped: decisions.harvest.method === 'stripper' || decisions.harvest.method === 'stripperFieldCleaner',
  });
  return {
    ...begun,
    harvest: gathered,
    module: stored,
    cleaning: cleaned,
    ginning: ginned,
    pressing: pressed,
    classing: classed,
    payments: settle({
      era,
      bales: classed.classed,
      seedKg: paidSeedKg(ginned.seedHouse),
      storageMonths: 0,
      handPickedSeedCottonKg: decisions.harvest.method === 'hand' ? totalKg(gathered.lot) : null,
    }),
    ledgers: [gathered.ledger, stored.ledger, cleaned.ledger, ginned.ledger, pressed.ledger, classed.ledger],
    fibreTrail: [
      { after: 'boll', fibre: crop.grown.fibre },
      { after: 'harvest', fibre: gathered.lot.fibre },
      { after: 'seedCottonCleaning', fibre: cleaned.lot.fibre },
      ...ginned.fibreAfter,
    ],
  };
}

const stopAt = (station: SeasonStop['station'], reason: string): SeasonStop => ({
  station,
  reason,
  dd60: null,
  dd60Needed: null,
});

/** From classed bales to patches. */
function millSeason(baled: Season): Season {
  const { scenario, field, classing, pressing } = baled;
  const { decisions } = scenario;
  const use = decisions.weaving.structure === 'jersey' ? 'knitting' : 'warp';
  const spun = spin(classing!.lot, decisions.spinning, use);
  const afterSpinning: Season = {
    ...baled,
    spinning: spun,
    ledgers: [...baled.ledgers, spun.ledger],
    fibreTrail: [...baled.fibreTrail, ...spun.fibreAfter],
  };
  if (spun.yarn === null) return { ...afterSpinning, stopped: stopAt('spinning', spun.stopped!.reason) };

  const woven = weave(spun.lot, spun.yarn, decisions.weaving);
  const afterWeaving: Season = {
    ...afterSpinning,
    weaving: woven,
    ledgers: [...afterSpinning.ledgers, woven.ledger],
  };
  if (woven.cloth === null) return { ...afterWeaving, stopped: stopAt('weaving', woven.stopped!.reason) };

  const sewn = sewingTable(woven.lot, woven.cloth, decisions.sewing, {
    bolls: field.bollsPerPlant * field.plantsPerAcre * scenario.acres,
    baleNetKg: pressing!.bales.reduce((sum, bale) => sum + bale.netKg, 0),
  });
  return { ...afterWeaving, sewing: sewn, ledgers: [...afterWeaving.ledgers, sewn.ledger] };
}
