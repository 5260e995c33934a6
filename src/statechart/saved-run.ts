import { type Decision, type Decisions, decisionTable } from '../model/decisions.ts';
import { farmOf, farms } from '../model/farms.ts';
import { farmLimits } from '../model/input-facts.ts';
import { climateIds, eras, isFarmId, type Scenario } from '../model/scenario.ts';
import { type StationId, stationIds } from '../model/station.ts';

/** What is saved or shared of a season: a farm, a seed and what was decided otherwise. */
export interface SavedRun {
  readonly scenario: Scenario;
  readonly seed: number;
  /** The key of the real weather under it, which no link holds; absent where the year is made up. */
  readonly weather?: string;
  /** A question comes before each station's numbers; absent where none does. */
  readonly predict?: true;
}

/** The version of the link. Version 1 numbers the decisions by their place in the decision table. */
const version = '1';
const largestSeed = 999_999;
const known: readonly string[] = ['v', 'farm', 'seed', 'set', 'land', 'own', 'weather', 'predict'];
const weatherKeyForm = /^[0-9a-z]{1,7}$/;

/** Every decision in the table's order: a decision's place is its code in a link. */
const places = stationIds.flatMap((station) =>
  (Object.entries(decisionTable[station]) as [string, Decision][]).map(([key, decision]) => ({
    station,
    key,
    decision,
  })),
);
type Value = number | string | boolean;
const valueIn = (decisions: Decisions, station: StationId, key: string): Value =>
  (decisions[station] as Record<string, Value>)[key]!;

/** A decision's value as a whole number: the step of a number, the place of a choice, 0 or 1. */
function stepOf(decision: Decision, value: Value): number {
  if (decision.kind === 'choice') return decision.options.indexOf(String(value));
  return decision.kind === 'switch' ? Number(value) : Math.round((Number(value) - decision.low) / decision.step);
}

function valueAt(decision: Decision, step: number): Value | undefined {
  if (decision.kind === 'choice') return decision.options[step];
  if (decision.kind === 'switch') return step === 0 ? false : step === 1 ? true : undefined;
  const value = decision.low + step * decision.step;
  return value <= decision.high ? value : undefined;
}

/** Two digits in base 36, for a number below 1296. */
const twoDigits = (value: number) => value.toString(36).padStart(2, '0');

/** The land of a farm, where it differs from the farm it began as: the places of climate and era, acres, mm of soil water. */
function landOf(scenario: Scenario, farm: Scenario): string {
  const unlike = <Value>(pick: (of: Scenario) => Value) => (pick(scenario) === pick(farm) ? null : pick(scenario));
  const climate = unlike((of) => of.climate);
  const era = unlike((of) => of.era);
  const pieces = [
    climate && climateIds.indexOf(climate),
    era && eras.indexOf(era),
    unlike((of) => of.acres),
    unlike((of) => of.soilWaterMm),
  ];
  return pieces.every((piece) => piece === null) ? '' : pieces.join('-');
}

const setOf = (scenario: Scenario, farm: Scenario): string =>
  places
    .map(({ station, key, decision }, place) => {
      const value = valueIn(scenario.decisions, station, key);
      if (value === valueIn(farm.decisions, station, key)) return '';
      return twoDigits(place) + twoDigits(stepOf(decision, value));
    })
    .join('');

/** The one of the six farms that a scenario differs least from, so that its link is short; a farm of the six is its own. */
export function nearestFarm(scenario: Scenario): Scenario {
  const unlike = (farm: Scenario) => setOf(scenario, farm).length + landOf(scenario, farm).length;
  return farmOf(scenario.id) ?? farms.reduce((best, farm) => (unlike(farm) < unlike(best) ? farm : best));
}

/**
 * The query of a link that reopens the same numbers, for example v=1&farm=coastal-plain&seed=7&set=0a1c; four characters
 * for each change. A farm that is none of the six goes as its differences from the nearest one; its name and story do not.
 */
export function encodeRun({ scenario, seed, weather, predict }: SavedRun): string {
  const farm = nearestFarm(scenario);
  const pieces = {
    set: setOf(scenario, farm),
    land: landOf(scenario, farm),
    own: scenario.id === farm.id ? '' : scenario.id,
    weather: weather ?? '',
    predict: predict ? '1' : '',
  };
  const rest = Object.entries(pieces).map(([name, text]) => (text ? `&${name}=${text}` : ''));
  return `v=${version}&farm=${farm.id}&seed=${seed}${rest.join('')}`;
}

/** A farm with the land of a link; null where that cannot be read. */
function withLand(scenario: Scenario, land: string): Scenario | null {
  const [, climateAt, eraAt, acresText, mmText] =
    /^(\d?)-(\d?)-(\d{0,4}(?:\.\d{1,20})?)-(\d{0,3}(?:\.\d{1,20})?)$/.exec(land) ?? [];
  if (climateAt === undefined) return null;
  const climate = climateAt ? climateIds[Number(climateAt)] : scenario.climate;
  const era = eraAt ? eras[Number(eraAt)] : scenario.era;
  const within = (text: string | undefined, otherwise: number, { low, high }: { low: number; high: number }) => {
    const value = text ? Number(text) : otherwise;
    return value >= low && value <= high ? value : null;
  };
  const acres = within(acresText, scenario.acres, farmLimits.acres);
  const soilWaterMm = within(mmText, scenario.soilWaterMm, farmLimits.soilWaterMm);
  if (!climate || !era || acres === null || soilWaterMm === null) return null;
  return { ...scenario, climate, era, acres, soilWaterMm };
}

/**
 * Reads the query of a link. Junk never fails: what cannot be read is left out and named.
 * @returns the run, the default farm where none is readable, and the pieces that were ignored
 */
export function decodeRun(query: string): { run: SavedRun; ignored: string[] } {
  const given = new URLSearchParams(query);
  const ignored: string[] = [];
  for (const name of given.keys())
    if (!known.includes(name)) ignored.push(`${name}=${(given.get(name) ?? '').slice(0, 20)}`.slice(0, 40));
  const text = (name: string) => (given.get(name) ?? '').slice(0, 2000);
  if (given.has('v') && text('v') !== version) ignored.push(`v=${text('v').slice(0, 20)}`);

  let scenario = farms[0]!;
  if (given.has('farm')) {
    const farm = farmOf(text('farm'));
    if (farm) scenario = farm;
    else ignored.push(`farm=${text('farm').slice(0, 40)}`);
  }
  if (given.has('land')) {
    const changed = withLand(scenario, text('land'));
    if (changed) scenario = changed;
    else ignored.push(`land=${text('land').slice(0, 40)}`);
  }
  if (given.has('own')) {
    const own = text('own');
    if (isFarmId(own) && !farmOf(own)) scenario = { ...scenario, id: own };
    else ignored.push(`own=${own.slice(0, 40)}`);
  }
  let seed = 1;
  if (given.has('seed')) {
    if (/^\d{1,6}$/.test(text('seed')) && Number(text('seed')) <= largestSeed) seed = Number(text('seed'));
    else ignored.push(`seed=${text('seed').slice(0, 20)}`);
  }
  const weather = given.has('weather') && weatherKeyForm.test(text('weather')) ? { weather: text('weather') } : {};
  if (given.has('weather') && !weather.weather) ignored.push(`weather=${text('weather').slice(0, 20)}`);
  const predict = text('predict') === '1' ? { predict: true as const } : {};
  if (given.has('predict') && !predict.predict) ignored.push(`predict=${text('predict').slice(0, 20)}`);
  const decisions = structuredClone(scenario.decisions) as Record<string, Record<string, Value>>;
  const set = text('set');
  for (let i = 0; i < set.length; i += 4) {
    const piece = set.slice(i, i + 4);
    const place = /^[0-9a-z]{4}$/.test(piece) ? places[Number.parseInt(piece.slice(0, 2), 36)] : undefined;
    const value = place && valueAt(place.decision, Number.parseInt(piece.slice(2), 36));
    if (place && value !== undefined) decisions[place.station]![place.key] = value;
    else ignored.push(`set=${piece}`);
  }
  return {
    run: { scenario: { ...scenario, decisions: decisions as unknown as Decisions }, seed, ...weather, ...predict },
    ignored,
  };
}
