import { describe, expect, test } from 'vitest';
import { runSeason } from '../../../../src/model/chain.ts';
import { farms } from '../../../../src/model/farms.ts';
import { MM_PER_INCH, SQUARE_METRES_PER_ACRE } from '../../../../src/model/units.ts';
import { bloomPicture } from '../../../../src/pages/season/pictures/bloom-picture.ts';
import { countSites, fieldDayOn, flowerShown, plantOf } from '../../../../src/pages/season/pictures/field-plant.ts';
import { groupsOf } from '../../../../src/scene/display-list.ts';
import type { SceneFrame } from '../../../../src/scene/scene-frame.ts';
import { siteOn } from '../../../../src/scene/stations/plant/plant-sample.ts';
import { long } from '../../../laws/runs.ts';
import { expectToFit } from '../../../scene/stations/picture-fit.ts';
import { momentAt, seasons, sizes } from './picture-seasons.ts';
import { spokenInTurn, spokenWords } from './scene-checks.ts';

const english = spokenWords('en');
const shares = [0, 0.3, 0.55, 0.8, 1];
const size = sizes[0];
const countIn = ({ over }: SceneFrame, name: string) => [...groupsOf(over)].find((found) => found.name === name)?.count;

describe.each(seasons)('Bloom on $farm', ({ season, turn }) => {
  const at = bloomPicture.layOut(season, english, size);
  test('draws exactly the organs that the plant has on the day', () => {
    for (const share of shares) {
      const moment = momentAt(season, 'bloom', share);
      const frame = at(moment)!;
      for (const [group, kind] of [
        ['squares', 'square'],
        ['flowers', 'flower'],
        ['greenBolls', 'greenBoll'],
        ['shed', 'shed'],
      ] as const)
        expect(countIn(frame, group)).toBe(countSites(plantOf(season), moment.dayOfYear, kind));
    }
  });
  test('ends on a plant in flower', () => {
    const frame = at(momentAt(season, 'bloom', 1))!;
    expect(countIn(frame, 'flowers')).toBeGreaterThan(0);
    expect([...groupsOf(frame.over)].some(({ name }) => name === 'large/flower')).toBe(true);
  });
  test('as many drops as the day has water, each the water over the ground of one plant', () => {
    for (const day of season.field.days.filter(
      ({ rainInches, irrigationInches }) => rainInches + irrigationInches > 0,
    )) {
      const frame = at({ dayOfYear: day.dayOfYear, progress: 0.5 })!;
      const rain = frame.moving.filter(({ band }) => band === 'rain');
      const irrigation = frame.moving.filter(({ band }) => band === 'irrigation');
      expect(rain).toHaveLength(Math.min(60, Math.round(day.rainInches / 0.05)));
      expect(irrigation).toHaveLength(Math.min(60, Math.round(day.irrigationInches / 0.05)));
      const perPlantKg = (inches: number) =>
        (inches * MM_PER_INCH * SQUARE_METRES_PER_ACRE) / season.field.plantsPerAcre;
      for (const { standsForKg } of frame.moving) expect(standsForKg).toBeCloseTo(perPlantKg(0.05), 9);
    }
  });
  test('what moves names its quantity, and the words beside the picture say it too', () => {
    for (const share of shares) {
      const moment = momentAt(season, 'bloom', share);
      const frame = at(moment)!;
      const see = bloomPicture.see(season, english, moment).join(' ');
      for (const part of frame.parts) {
        expect(part.shows.length).toBeGreaterThan(20);
        expect(see).toContain(part.shows);
      }
      if (frame.moving.length > 0) expect(see).toContain('Each drop is');
    }
  });
  test('the sun turns at the day’s heat, and the tape is laid out to the heat since planting', () => {
    for (const share of shares) {
      const moment = momentAt(season, 'bloom', share);
      const day = fieldDayOn(season.field, moment.dayOfYear);
      const frame = at(moment)!;
      const [sun] = frame.parts;
      expect(sun!.motion).toEqual({ kind: 'turn', turnsPerSecond: day.dd60 / 100 });
      expect(countIn(frame, 'heatSum')).toBe(Math.round(day.dd60SincePlanting));
      expect(countIn(frame, 'soilWater')).toBe(Math.round(100 * day.soilWaterFraction));
    }
  });
  test('the rows of the field hold the mean flowers of their plants', () => {
    const moment = momentAt(season, 'bloom', 1);
    const mean = fieldDayOn(season.field, moment.dayOfYear).perPlant.flowersToday;
    const plants = Math.ceil((size.width - 9) / ((40 * Math.min(size.height - 10, (size.width - 9) * 0.8)) / 560));
    expect(countIn(at(moment)!, 'row/2/white')).toBe(Math.round(mean * plants));
  });
  test('the table holds the model’s own numbers', () => {
    const moment = momentAt(season, 'bloom', 0.8);
    const day = fieldDayOn(season.field, moment.dayOfYear);
    const rows = new Map(bloomPicture.rows(season, english, moment).map(({ key, text }) => [key, text]));
    expect(rows.get('heatSum')).toBe(english.formats.heatUnits(day.dd60SincePlanting).text);
    expect(rows.get('flowers')).toBe(english.formats.number(day.perPlant.flowersToday, 1));
    expect(rows.get('rain')).toBe(english.formats.rain(day.rainInches, 2).text);
  });
  test('every mark and word is inside, in both languages, both units and every size', () => {
    for (const [place, box] of sizes.entries())
      for (const words of spokenInTurn(turn + place)) {
        const frameAt = bloomPicture.layOut(season, words, box);
        for (const share of [0.1, 1]) {
          const moment = momentAt(season, 'bloom', share);
          expectToFit(frameAt(moment)!, `${words.language} ${words.unitSystem} ${box.width} day ${moment.dayOfYear}`);
        }
      }
  });
  test('the same moment is the same picture, and what stands still is one object', () => {
    const moment = momentAt(season, 'bloom', 0.6);
    const other = bloomPicture.layOut(season, english, size);
    expect(other(moment)).toEqual(at(moment));
    expect(at(moment)!.still).toBe(at(momentAt(season, 'bloom', 1))!.still);
  });
});

test('the flower shown large is one of the plant, in its state of the day', () => {
  for (const { season } of seasons) {
    const { firstFlower, cutOut } = season.field.events;
    for (let day = firstFlower!; day <= cutOut!; day++) {
      const plant = plantOf(season);
      const shown = flowerShown(plant, day)!;
      const flowers = countSites(plant, day, 'flower');
      expect(siteOn(shown.site, day).kind).toBe(flowers > 0 ? 'flower' : 'square');
    }
  }
});

test('seasons of each farm, seed after seed, end Bloom on a flower', () => {
  for (const farm of farms)
    for (let seed = 0; seed < (long ? 8 : 4); seed++) {
      const season = runSeason(farm, seed, null);
      const { cutOut } = season.field.events;
      if (cutOut === null) continue;
      expect(countSites(plantOf(season), cutOut, 'flower'), `${farm.id} ${seed}`).toBeGreaterThan(0);
    }
});
