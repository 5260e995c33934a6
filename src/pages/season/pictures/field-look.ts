import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import { heatFacts } from '../../../model/field/facts.ts';
import type { FieldSeason } from '../../../model/field/field-season.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { stationSpan } from '../../../model/timeline.ts';
import { MM_PER_INCH, SQUARE_METRES_PER_ACRE } from '../../../model/units.ts';
import type { FieldDayLook, FieldScene } from '../../../scene/stations/field/field-scene.ts';
import { inField, day as printedDay, read, step } from '../../../workings/steps.ts';
import type { Printed, Step } from '../../../workings/working.ts';
import { printed } from '../printed.ts';
import { countSites, fieldDayOn, leafShareOn, plantOf } from './field-plant.ts';
import { fieldWords } from './field-words.ts';
import type { PictureSize, TwinRow } from './picture.ts';
import { drawnStep, said } from './row-steps.ts';

/** Water of one drop: a round figure in the reader's units. */
const dropInchesOf = ({ unitSystem }: Words): number => (unitSystem === 'us' ? 0.05 : 1 / MM_PER_INCH);

const dropText = (words: Words): string => words.formats.rain(dropInchesOf(words), 2).text;

/** Ticks for the height tape: every second one written, at round figures of the reader's unit. */
function heightTicksOf(mostInches: number, { unitSystem, formats }: Words): FieldScene['heightTicks'] {
  const inchesPerUnit = unitSystem === 'us' ? 1 : 10 / MM_PER_INCH;
  const most = mostInches / inchesPerUnit;
  const step = [1, 2, 4, 5, 10, 20, 25].find((each) => most / each <= 13) ?? 50;
  return Array.from({ length: Math.ceil(most / step) + 3 }, (_, i) => {
    const inches = i * step * inchesPerUnit;
    return i % 2 === 0 ? { inches, text: formats.length(inches).text } : { inches };
  });
}

/** Heat since planting on a day. */
const heatOn = (field: FieldSeason, dayOfYear: number): number => fieldDayOn(field, dayOfYear).dd60SincePlanting;

/** What a picture of the plant keeps through a station. */
export function fieldSceneOf(season: Season, station: StationId, words: Words, size: PictureSize): FieldScene {
  const { field } = season;
  const texts = fieldWords(words.language);
  const { toDay } = stationSpan(season, station);
  const stages = (['firstSquare', 'firstFlower', 'cutOut', 'firstOpenBoll', 'harvestAid'] as const).flatMap((name) => {
    const day = field.events[name];
    return day === null || day > toDay ? [] : [{ dd60: heatOn(field, day), text: texts.stages[name] }];
  });
  const mostHeightInches = fieldDayOn(field, toDay).plantHeightInches;
  return {
    plant: plantOf(season),
    kind: field.variety.kind,
    size,
    lastDayOfYear: toDay,
    mostHeightInches,
    heat: { toDd60: Math.max(100, heatOn(field, toDay) * 1.015), tickDd60: 100, stages },
    drop: {
      inches: dropInchesOf(words),
      kg: (dropInchesOf(words) * MM_PER_INCH * SQUARE_METRES_PER_ACRE) / Math.max(1, field.plantsPerAcre),
    },
    heightTicks: heightTicksOf(mostHeightInches * 1.1 + 1.5, words),
    caption: fill(texts.caption, { drop: dropText(words) }),
  };
}

/** One day of the field as the picture shows it. */
export function fieldDayLookOf({ field }: Season, dayOfYear: number, words: Words): FieldDayLook {
  const texts = fieldWords(words.language);
  const day = fieldDayOn(field, dayOfYear);
  const before = fieldDayOn(field, dayOfYear - 1);
  return {
    dayOfYear,
    heightInches: day.plantHeightInches,
    weather: { dd60: day.dd60, rainInches: day.rainInches, irrigationInches: day.irrigationInches },
    soilWaterFraction: day.soilWaterFraction,
    leafShare: leafShareOn(field, dayOfYear),
    whiteFlowers: day.perPlant.flowersToday,
    pinkFlowers: before === day ? 0 : before.perPlant.flowersToday,
    openBolls: day.perPlant.openBolls,
    heat: {
      dd60: day.dd60SincePlanting,
      text: fill(texts.heatSum, { heat: words.formats.heatUnits(day.dd60SincePlanting).text }),
      short: words.formats.heatUnits(day.dd60SincePlanting).text,
    },
    sunShows: sunText(day.dd60, words),
  };
}

const sunText = (dd60: number, words: Words): string =>
  fill(fieldWords(words.language).sun, { heat: words.formats.heatUnits(dd60).text });

/** What the moving things of a day stand for, in sentences. */
export function movingText({ field }: Season, dayOfYear: number, words: Words): string[] {
  const day = fieldDayOn(field, dayOfYear);
  const wet = day.rainInches > 0 || day.irrigationInches > 0;
  const drops = fill(fieldWords(words.language).drops, { drop: dropText(words) });
  return [sunText(day.dd60, words), ...(wet ? [drops] : [])];
}

/** How a value of the mean plant was come by: the day-by-day field up to this day. */
export function fieldSteps(season: Season, dayOfYear: number, words: Words, label: string, value: Printed): Step[] {
  const { field } = season;
  const day = fieldDayOn(field, dayOfYear);
  return [
    step('plantedOn', printedDay(field.plantedDay), inField),
    step('dayShown', printedDay(day.dayOfYear), { at: 'drawing' }),
    said(fieldWords(words.language).rows.heatSum, { as: 'heatUnits', value: day.dd60SincePlanting }, { at: 'field' }),
    said(label, value, inField),
  ];
}

/** The day's values, for the table. */
export function fieldRows(season: Season, dayOfYear: number, words: Words): TwinRow[] {
  const { rows, drawn } = fieldWords(words.language);
  const { formats } = words;
  const day = fieldDayOn(season.field, dayOfYear);
  const plant = plantOf(season);
  const row = (
    key: keyof typeof rows,
    value: Exclude<Printed, { as: 'exact' }>,
    first: readonly Step[] = [],
  ): TwinRow => ({
    key,
    label: rows[key],
    text: printed(value, words),
    steps: [...first, ...fieldSteps(season, dayOfYear, words, rows[key], value)],
  });
  const mean = (value: number): Exclude<Printed, { as: 'exact' }> => ({ as: 'number', value, decimals: 1 });
  const kinds = (['square', 'flower', 'greenBoll', 'openBoll', 'shed'] as const).map((kind) => ({
    text: formats.plural(countSites(plant, dayOfYear, kind), drawn[kind]),
    count: countSites(plant, dayOfYear, kind),
  }));
  const temperatures = [
    step('warmestThatDay', { as: 'temperature', value: day.maxF }, { at: 'weather' }),
    step('coldestThatDay', { as: 'temperature', value: day.minF }, { at: 'weather' }),
    step('heatBase', { as: 'temperature', value: heatFacts.dd60BaseF.value }, read(heatFacts.dd60BaseF)),
  ];
  return [
    row('height', { as: 'length', value: day.plantHeightInches }),
    row('nodes', mean(day.nodes)),
    row('heatToday', { as: 'heatUnits', value: day.dd60 }, temperatures),
    row('heatSum', { as: 'heatUnits', value: day.dd60SincePlanting }),
    row('rain', { as: 'rain', value: day.rainInches, decimals: 2 }),
    row('irrigation', { as: 'rain', value: day.irrigationInches, decimals: 2 }),
    row('soilWater', { as: 'percent', value: 100 * day.soilWaterFraction, decimals: 0 }),
    row('squares', mean(day.perPlant.squares)),
    row('flowers', mean(day.perPlant.flowersToday)),
    row('greenBolls', mean(day.perPlant.greenBolls)),
    row('openBolls', mean(day.perPlant.openBolls)),
    row('shed', mean(day.perPlant.shed)),
    {
      key: 'drop',
      label: rows.drop,
      text: dropText(words),
      steps: [drawnStep(rows.drop, { as: 'rain', value: dropInchesOf(words), decimals: 2 })],
    },
    {
      key: 'drawn',
      label: rows.drawn,
      text: formats.list(kinds.map(({ text }) => text)),
      steps: kinds.map(({ text, count }) => said(text, { as: 'count', value: count }, { at: 'chance' })),
    },
  ];
}
