import { runSeason } from '../model/chain.ts';
import { farmOf, farms } from '../model/farms.ts';
import { climateOf } from '../model/field/climates.ts';
import { readWeatherRecord } from '../model/field/read-weather-record.ts';
import { latitudeLimits } from '../model/field/record-facts.ts';
import type { WeatherYear } from '../model/field/weather.ts';
import { checkScenario, type Scenario } from '../model/scenario.ts';
import { badInput, InputError, problemsError } from './input-error.ts';
import type { Io } from './main.ts';
import { type Options, readChoice, readOptions, textOf } from './options.ts';
import { noUnits, readInteger, readQuantity } from './quantity.ts';
import { seasonCsv } from './season-csv.ts';
import { seasonReport } from './season-report.ts';
import { seasonText } from './season-text.ts';

const kinds = {
  scenario: 'value',
  weather: 'value',
  'weather-units': 'value',
  latitude: 'value',
  year: 'value',
  seed: 'value',
  units: 'value',
  json: 'flag',
  csv: 'flag',
} as const;

/** Runs one season and prints it. A crop that fails is a result: exit code 0. */
export function seasonCommand(args: readonly string[], io: Io): void {
  const options = readOptions(args, kinds);
  if (options.json && options.csv) throw badInput('--json, --csv', 'both', 'one of them');
  const scenario = readScenario(textOf(options, 'scenario') ?? farms[0]!.id, io);
  const seed = readInteger('seed', textOf(options, 'seed') ?? '1', 0, 999_999);
  const units = readChoice('units', textOf(options, 'units') ?? 'us', ['us', 'metric'] as const);
  const record = readWeather(options, scenario, io);
  const season = runSeason(scenario, seed, record);
  if (options.json) io.out(JSON.stringify(seasonReport(season), null, 2));
  else if (options.csv) io.out(seasonCsv(season));
  else io.out(seasonText(season, units));
}

function readText(option: string, path: string, io: Io): string {
  try {
    return io.readFile(path);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? (error as Error).message;
    throw badInput(`--${option}`, `${path} (${code})`, 'a text file that can be read');
  }
}

/** A farm by its id, or a scenario file. A word without a dot or a slash is taken for an id. */
export function readScenario(nameOrFile: string, io: Io): Scenario {
  const farm = farmOf(nameOrFile);
  if (farm) return farm;
  if (!/[./\\]/.test(nameOrFile)) {
    throw badInput('--scenario', nameOrFile, `${farms.map(({ id }) => id).join(', ')}, or a JSON file`);
  }
  let input: unknown;
  try {
    // Some editors begin a file with a byte-order mark, which JSON does not know.
    input = JSON.parse(readText('scenario', nameOrFile, io).replace(/^\uFEFF/, ''));
  } catch (error) {
    if (error instanceof InputError) throw error;
    throw badInput('--scenario', `${nameOrFile} (${(error as Error).message})`, 'a JSON scenario');
  }
  const checked = checkScenario(input);
  if (!checked.ok) throw problemsError(checked.problems);
  return checked.value;
}

function readWeather(options: Options, scenario: Scenario, io: Io): WeatherYear | null {
  const path = textOf(options, 'weather');
  const unitsText = textOf(options, 'weather-units');
  const latitudeText = textOf(options, 'latitude');
  const yearText = textOf(options, 'year');
  const units = unitsText === undefined ? null : readChoice('weather-units', unitsText, ['us', 'metric'] as const);
  const latitude =
    latitudeText === undefined
      ? null
      : readQuantity('latitude', latitudeText, noUnits, {
          low: latitudeLimits.low.value,
          high: latitudeLimits.high.value,
          unit: 'degrees',
        });
  const year = yearText === undefined ? null : readInteger('year', yearText, 1800, 2200);
  if (path === undefined) {
    for (const [name, text] of [
      ['weather-units', unitsText],
      ['latitude', latitudeText],
      ['year', yearText],
    ]) {
      if (text !== undefined) throw badInput(`--${name}`, text!, 'only together with --weather FILE.csv');
    }
    return null;
  }
  const record = readWeatherRecord(readText('weather', path, io), {
    units,
    latitudeDegrees: latitude,
    fallbackLatitudeDegrees: climateOf(scenario.climate).latitudeDegrees,
    year,
  });
  if (!record.ok) throw problemsError(record.problems);
  for (const note of record.notes ?? []) io.say(`weather: ${note}`);
  return record.value;
}
