import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import { heatFacts } from '../../../model/field/facts.ts';
import { heatNeeds } from '../../../model/field/stages.ts';
import type { Season } from '../../../model/season.ts';
import { stationSpan } from '../../../model/timeline.ts';
import { INCHES_PER_FOOT, MM_PER_INCH } from '../../../model/units.ts';
import type { SeedCounts } from '../../../scene/stations/planting/count-band.ts';
import { layOutPlanting, type PlantingDay, type PlantingScene } from '../../../scene/stations/planting/planting.ts';
import type { ThermometerScale } from '../../../scene/stations/planting/thermometer.ts';
import { above, counted, decided, percent, read } from '../../../workings/steps.ts';
import type { Origin, Step } from '../../../workings/working.ts';
import { fieldDayLookOf, fieldRows, fieldSceneOf, movingText } from './field-look.ts';
import { fieldDayOn, plantsOf } from './field-plant.ts';
import { plantingWords } from './field-words.ts';
import type { PictureMoment, PictureSize, StationPicture, TwinRow } from './picture.ts';
import { said } from './row-steps.ts';

const fahrenheitPerCelsius = 1.8;
const gramsPerKg = 1000;

/** Seeds sown, up and not up, whole field; plants are null for a field that never came up. */
function seedsOf({ field }: Season): { readonly all: number; readonly up: number } {
  const ledger = field.counts.find(({ station }) => station === 'planting')!;
  return { all: ledger.whole.count, up: ledger.shares.find(({ name }) => name === 'plants')?.count ?? 0 };
}

/** How much of the field is sown at a moment: the first day's steps are the sowing. */
function sownShareAt(season: Season, { progress }: Pick<PictureMoment, 'progress'>): number {
  const { steps, firstDaySteps } = stationSpan(season, 'planting');
  return Math.min(1, (progress * steps) / firstDaySteps);
}

/** How far the seed has come on a day, by the heat it needs; exactly 1 from the day the plants are up. */
function risenShareOn({ field }: Season, dayOfYear: number): number {
  const { emerged } = field.events;
  if (emerged !== null && dayOfYear >= emerged) return 1;
  const share = fieldDayOn(field, dayOfYear).dd60SincePlanting / heatNeeds(field.variety).emerge;
  return Math.min(0.99, share);
}

/** The strip of temperature, wide enough for every day of the station, in tens of the reader's degrees. */
function thermometerOf(season: Season, { unitSystem, formats }: Words): ThermometerScale {
  const { fromDay, toDay } = stationSpan(season, 'planting');
  const days = season.field.days.filter(({ dayOfYear }) => dayOfYear >= fromDay && dayOfYear <= toDay);
  const us = unitSystem === 'us';
  const stepF = us ? 10 : 5 * fahrenheitPerCelsius;
  const zeroF = us ? 0 : 32;
  const baseF = heatFacts.dd60BaseF.value;
  const lowF = zeroF + stepF * Math.floor((Math.min(baseF, ...days.map(({ minF }) => minF)) - zeroF) / stepF);
  const highF = zeroF + stepF * Math.ceil((Math.max(...days.map(({ maxF }) => maxF)) - zeroF) / stepF);
  const count = Math.round((highF - lowF) / stepF);
  return {
    lowF,
    highF,
    baseF,
    ticks: Array.from({ length: count + 1 }, (_, i) => {
      const fahrenheit = lowF + i * stepF;
      return i % 2 === 0 ? { fahrenheit, text: formats.temperature(fahrenheit).text } : { fahrenheit };
    }),
  };
}

/** A length along the row: feet, or centimeters. */
function rowLength(inches: number, words: Words): string {
  if (words.unitSystem === 'metric') return words.formats.length(inches).text;
  return fill(plantingWords(words.language).feet, { n: words.formats.count(inches / INCHES_PER_FOOT) });
}

/** Ticks of the row tape: every half foot with the feet written, or every quarter of a meter. */
const rowTicksOf =
  (words: Words): PlantingScene['labels']['rowTicks'] =>
  (inches) => {
    const step = words.unitSystem === 'us' ? INCHES_PER_FOOT / 2 : 125 / MM_PER_INCH;
    return Array.from({ length: Math.floor(inches / step) + 1 }, (_, i) => {
      const at = i * step;
      // The first and the last would be cut at the edge.
      const written = i > 0 && i % 2 === 0 && at < inches - step / 2;
      return written ? { inches: at, text: rowLength(at, words) } : { inches: at };
    });
  };

/** Everything about Planting that stays the same from day to day. */
export function plantingSceneOf(season: Season, words: Words, size: PictureSize): PlantingScene {
  const { field, scenario } = season;
  const texts = plantingWords(words.language);
  const { formats } = words;
  const base = fieldSceneOf(season, 'planting', words, size);
  const { all, up } = seedsOf(season);
  const seeds = formats.seeds(scenario.decisions.planting.seedsPerFoot).text;
  const baseText = formats.temperature(heatFacts.dd60BaseF.value).text;
  const feet = (count: number) => rowLength(count * INCHES_PER_FOOT, words);
  const horse = scenario.era === 'thirties';
  const caption = (template: string) => (rowFeet: number) =>
    fill(template, { length: feet(rowFeet), seeds, base: baseText });
  return {
    size,
    seedsPerFoot: scenario.decisions.planting.seedsPerFoot,
    emergingShare: all > 0 ? up / all : 0,
    plants: plantsOf(season),
    kind: field.variety.kind,
    mostHeightInches: base.mostHeightInches,
    planter: horse ? 'horse' : 'row',
    seedKg: field.variety.seedIndexGrams / 100 / gramsPerKg,
    drop: base.drop,
    heat: base.heat,
    thermometer: thermometerOf(season, words),
    labels: {
      caption: caption(texts.caption),
      captionShort: caption(texts.captionShort),
      planter: {
        opener: (count) => fill(texts.opener, { length: feet(count) }),
        wheel: (count) => fill(texts.wheel, { length: feet(count) }),
        plate: fill(texts.plate, { seeds }),
      },
      rowTicks: rowTicksOf(words),
    },
  };
}

function countsOf(season: Season, moment: PictureMoment, words: Words): SeedCounts {
  const { all, up } = seedsOf(season);
  const { counts } = words.messages.ledger;
  const risen = risenShareOn(season, moment.dayOfYear) >= 1;
  return {
    all,
    sown: all * sownShareAt(season, moment),
    up: risen ? up : null,
    labels: {
      sown: counts.seedsSown,
      up: counts.plants,
      notUp: counts.notEmerged,
      count: (value) => words.formats.count(value),
    },
  };
}

/** Words beside the seed or seedling shown large. */
function largeOf(season: Season, moment: PictureMoment, words: Words): PlantingDay['large'] {
  const { field, scenario } = season;
  const { formats } = words;
  const { titles, places } = plantingWords(words.language);
  const day = fieldDayOn(field, moment.dayOfYear);
  const height = formats.length(day.plantHeightInches).text;
  const { emerged } = field.events;
  if (emerged !== null && risenShareOn(season, moment.dayOfYear) >= 1) {
    const days = moment.dayOfYear - emerged;
    return {
      title: days < 1 ? titles.upToday : fill(titles.up, { days: formats.days(days).text }),
      place: fill(places.up, { nodes: formats.number(day.nodes, 1) }),
      height,
    };
  }
  const inSoil = moment.dayOfYear - field.plantedDay;
  if (inSoil < 1)
    return {
      title: titles.sowing,
      place: fill(places.sowing, { seeds: formats.seeds(scenario.decisions.planting.seedsPerFoot).text }),
      height,
    };
  return {
    title: fill(titles.lying, { day: formats.count(inSoil) }),
    place: fill(places.lying, {
      had: formats.heatUnits(day.dd60SincePlanting).number,
      needs: formats.heatUnits(heatNeeds(field.variety).emerge).text,
    }),
    height,
  };
}

/** Planting at a moment. */
export function plantingDayOf(season: Season, moment: PictureMoment, words: Words): PlantingDay {
  const day = fieldDayOn(season.field, moment.dayOfYear);
  const look = fieldDayLookOf(season, moment.dayOfYear, words);
  return {
    dayOfYear: moment.dayOfYear,
    sownShare: sownShareAt(season, moment),
    risenShare: risenShareOn(season, moment.dayOfYear),
    heightInches: day.plantHeightInches,
    warmth: { minF: day.minF, maxF: day.maxF },
    weather: look.weather,
    counts: countsOf(season, moment, words),
    large: largeOf(season, moment, words),
    heat: look.heat,
    sunShows: look.sunShows,
  };
}

/** One row, from the planter to the first square. */
export const plantingPicture: StationPicture = {
  layOut(season, words, size) {
    const at = layOutPlanting(plantingSceneOf(season, words, size));
    return (moment) => at(plantingDayOf(season, moment, words));
  },
  see(season, words, moment) {
    const { formats, language } = words;
    const texts = plantingWords(language);
    const { field, scenario } = season;
    const day = fieldDayOn(field, moment.dayOfYear);
    const { all, up } = seedsOf(season);
    const date = formats.day(day.dayOfYear);
    const first = moment.dayOfYear <= field.plantedDay;
    const seeds = formats.seeds(scenario.decisions.planting.seedsPerFoot).text;
    const state =
      risenShareOn(season, moment.dayOfYear) >= 1
        ? fill(texts.up, {
            date,
            up: formats.count(up),
            all: formats.count(all),
            share: formats.percent((100 * up) / Math.max(1, all), 0),
            height: formats.length(day.plantHeightInches).text,
            nodes: formats.number(day.nodes, 1),
          })
        : fill(first ? texts.sowing : texts.lying, {
            date,
            all: formats.count(all),
            needs: formats.heatUnits(heatNeeds(field.variety).emerge).text,
            had: formats.heatUnits(day.dd60SincePlanting).text,
          });
    return [
      state,
      fill(texts.air, { base: formats.temperature(heatFacts.dd60BaseF.value).text }),
      ...(first ? [fill(texts.plate, { seeds }), texts.tube, texts.rolling] : []),
      ...movingText(season, moment.dayOfYear, words),
    ];
  },
  rows(season, words, moment): TwinRow[] {
    const { formats, language } = words;
    const { rows } = plantingWords(language);
    const { field, scenario } = season;
    const day = fieldDayOn(field, moment.dayOfYear);
    const { all, up, labels } = countsOf(season, moment, words);
    const count = (key: string, label: string, value: number, first: readonly Step[] = []): TwinRow => ({
      key,
      label,
      text: formats.count(value),
      steps: [...first, said(label, { as: 'count', value }, first.length > 0 ? above : counted('planting'))],
    });
    const sown = said(labels.sown, { as: 'count', value: all }, counted('planting'));
    const came = said(labels.up, { as: 'count', value: up ?? 0 }, counted('planting'));
    const seeds = formats.seeds(scenario.decisions.planting.seedsPerFoot).text;
    const { emerge } = heatNeeds(field.variety);
    const temperature = (key: 'low' | 'high' | 'base', value: number, from: Origin): TwinRow => ({
      key,
      label: rows[key],
      text: formats.temperature(value).text,
      steps: [said(rows[key], { as: 'temperature', value }, from)],
    });
    const ofField = fieldRows(season, moment.dayOfYear, words).filter(({ key }) => seenInFurrow.includes(key));
    return [
      // By the day, as the ribbon counts: the table does not follow the planter down the row.
      count('sown', labels.sown, all),
      ...(up === null
        ? []
        : [
            count('up', labels.up, up),
            count('notUp', labels.notUp, all - up, [sown, came]),
            {
              key: 'upShare',
              label: rows.upShare,
              text: formats.percent((100 * up) / Math.max(1, all), 0),
              steps: [sown, came, said(rows.upShare, percent((100 * up) / Math.max(1, all), 0), above)],
            },
          ]),
      {
        key: 'perLength',
        label: rows.perLength,
        text: seeds,
        steps: [
          said(rows.perLength, { as: 'seeds', value: scenario.decisions.planting.seedsPerFoot }, decided('planting')),
        ],
      },
      temperature('low', day.minF, { at: 'weather' }),
      temperature('high', day.maxF, { at: 'weather' }),
      temperature('base', heatFacts.dd60BaseF.value, read(heatFacts.dd60BaseF)),
      {
        key: 'heatNeeded',
        label: rows.heatNeeded,
        text: formats.heatUnits(emerge).text,
        steps: [said(rows.heatNeeded, { as: 'heatUnits', value: emerge }, { at: 'field' })],
      },
      ...ofField,
    ];
  },
};

/** What the field's table has that this picture shows too. */
const seenInFurrow = ['height', 'nodes', 'heatToday', 'heatSum', 'rain', 'irrigation', 'soilWater', 'drop'];
