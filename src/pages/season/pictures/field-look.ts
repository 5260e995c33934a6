import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import type { FieldSeason } from '../../../model/field/field-season.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { stationSpan } from '../../../model/timeline.ts';
import { MM_PER_INCH, SQUARE_METRES_PER_ACRE } from '../../../model/units.ts';
import type { FieldDayLook, FieldScene } from '../../../scene/stations/field/field-scene.ts';
import { countSites, fieldDayOn, leafShareOn, plantOf } from './field-plant.ts';
import { fieldWords } from './field-words.ts';
import type { PictureSize, TwinRow } from './picture.ts';

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

/** The day's values, for the table. */
export function fieldRows(season: Season, dayOfYear: number, words: Words): TwinRow[] {
  const { rows, drawn } = fieldWords(words.language);
  const { formats } = words;
  const day = fieldDayOn(season.field, dayOfYear);
  const plant = plantOf(season);
  const mean = (value: number) => formats.number(value, 1);
  const kinds = (['square', 'flower', 'greenBoll', 'openBoll', 'shed'] as const).map((kind) =>
    formats.plural(countSites(plant, dayOfYear, kind), drawn[kind]),
  );
  const row = (key: keyof typeof rows, text: string): TwinRow => ({ key, label: rows[key], text });
  return [
    row('height', formats.length(day.plantHeightInches).text),
    row('nodes', mean(day.nodes)),
    row('heatToday', formats.heatUnits(day.dd60).text),
    row('heatSum', formats.heatUnits(day.dd60SincePlanting).text),
    row('rain', formats.rain(day.rainInches, 2).text),
    row('irrigation', formats.rain(day.irrigationInches, 2).text),
    row('soilWater', formats.percent(100 * day.soilWaterFraction, 0)),
    row('squares', mean(day.perPlant.squares)),
    row('flowers', mean(day.perPlant.flowersToday)),
    row('greenBolls', mean(day.perPlant.greenBolls)),
    row('openBolls', mean(day.perPlant.openBolls)),
    row('shed', mean(day.perPlant.shed)),
    row('drawn', formats.list(kinds)),
  ];
}
