// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { farms } from '../../../src/model/farms.ts';
import { climateOf } from '../../../src/model/field/climates.ts';
import { generateWeather } from '../../../src/model/field/generate-weather.ts';
import { openStream } from '../../../src/model/random.ts';
import { openRun } from '../../../src/pages/farm/open-run.ts';
import {
  dropFarm,
  holdsUnread,
  keepFarm,
  lookAgain,
  type OwnFarm,
  ownFarm,
  ownFarms,
  weatherOf,
} from '../../../src/pages/farm/shelf.ts';
import { encodeRun } from '../../../src/statechart/saved-run.ts';
import { weatherKey } from '../../../src/statechart/weather-key.ts';

const place = 'seamfield.farms.1';
const base = farms[1]!;
/** Any year of 365 days stands in for a record here. */
const record = generateWeather(climateOf(base.climate), openStream(5, 'weather'));
const own = (id: string, weather: OwnFarm['weather'] = null): OwnFarm => ({
  scenario: { ...base, id, name: { en: 'Ridge', es: 'Loma' }, acres: 12.5 },
  weather,
  base: base.id,
});
const withRecord = own('own-wet', {
  name: 'ours.csv',
  year: { ...record, origin: 'record' },
  notes: ['29 February left out'],
});

beforeEach(() => {
  localStorage.clear();
  lookAgain();
});
afterEach(() => vi.unstubAllGlobals());

describe('the shelf of own farms', () => {
  test('gives back after a new visit what was kept, the weather to the last digit', () => {
    expect(keepFarm(own('own-dry'))).toBe('device');
    expect(keepFarm(withRecord)).toBe('device');
    lookAgain();
    expect(ownFarms()).toEqual([withRecord, own('own-dry')]);
    const key = weatherKey(withRecord.weather!.year);
    expect(weatherOf(key)).toEqual(withRecord.weather);
    dropFarm('own-wet');
    lookAgain();
    expect(ownFarms()).toEqual([own('own-dry')]);
    expect(weatherOf(key)).toBeNull();
  });

  test('keeps what another tab kept in the meantime', () => {
    keepFarm(own('own-here'));
    const kept = JSON.parse(localStorage.getItem(place)!);
    localStorage.setItem(place, JSON.stringify([...kept, own('own-there')]));
    keepFarm(own('own-here'));
    expect(JSON.parse(localStorage.getItem(place)!).map((each: OwnFarm) => each.scenario.id)).toEqual([
      'own-here',
      'own-there',
    ]);
  });

  test('says so where storage is shut or full, and holds the farm for the visit', () => {
    vi.stubGlobal('localStorage', {
      getItem: () => null,
      setItem() {
        throw new DOMException('full', 'QuotaExceededError');
      },
    });
    expect(keepFarm(own('own-dry'))).toBe('visit');
    expect(ownFarm('own-dry')).toEqual(own('own-dry'));
  });

  test('is empty where storage cannot be read', () => {
    keepFarm(own('own-dry'));
    lookAgain();
    vi.stubGlobal('localStorage', {
      getItem() {
        throw new DOMException('shut', 'SecurityError');
      },
    });
    expect(ownFarms()).toEqual([]);
  });

  test.each([
    ['no JSON', 'x{'],
    ['another shape', '{"farms":7}'],
    ['null', 'null'],
    [
      'a farm with a wrong number',
      JSON.stringify([{ ...own('own-bad'), scenario: { ...own('own-bad').scenario, acres: -1 } }]),
    ],
  ])('leaves %s where it is, and says that it holds it', (_, junk) => {
    localStorage.setItem(place, junk);
    expect(ownFarms()).toEqual([]);
    expect(holdsUnread()).toBe(junk !== 'null');
    keepFarm(own('own-dry'));
    lookAgain();
    expect(ownFarms()).toEqual([own('own-dry')]);
    expect(holdsUnread()).toBe(junk !== 'null');
  });

  test('drops weather that is no whole year, and keeps its farm', () => {
    keepFarm(withRecord);
    const [kept] = JSON.parse(localStorage.getItem(place)!);
    kept.weather.rainInches.pop();
    localStorage.setItem(place, JSON.stringify([kept]));
    lookAgain();
    expect(ownFarms()).toEqual([{ ...withRecord, weather: null }]);
  });
});

describe('a link of an own farm', () => {
  const run = { scenario: withRecord.scenario, seed: 9, weather: weatherKey(withRecord.weather!.year) };

  test('opens whole on the device that made it', () => {
    keepFarm(withRecord);
    lookAgain();
    expect(openRun(encodeRun(run))).toEqual({ run, weather: withRecord.weather, ignored: [], elsewhere: [] });
  });

  test('names what stayed where it was made', () => {
    const { run: opened, weather, elsewhere } = openRun(encodeRun(run));
    expect(elsewhere).toEqual(['name', 'weather']);
    expect(weather).toBeNull();
    expect(opened.scenario.name).toEqual(base.name);
    expect(opened.scenario.decisions).toEqual(run.scenario.decisions);
    expect(opened.scenario.acres).toBe(12.5);
  });

  test('of one of the six farms lacks nothing', () => {
    expect(openRun(encodeRun({ scenario: farms[2]!, seed: 3 })).elsewhere).toEqual([]);
  });
});
