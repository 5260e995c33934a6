import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import type { Season } from '../../../model/season.ts';
import { type LargeFlower, layOutBloom } from '../../../scene/stations/bloom/bloom.ts';
import { siteOn } from '../../../scene/stations/plant/plant-sample.ts';
import { fieldDayLookOf, fieldRows, fieldSceneOf, movingText } from './field-look.ts';
import { fieldDayOn, flowerShown, plantOf } from './field-plant.ts';
import { bloomWords, fieldWords } from './field-words.ts';
import type { StationPicture } from './picture.ts';

/** Days from a square that can be seen to its flower, where the plant's own days are not known. Published: 20 to 25. */
const squareDays = 22;

/** The flower shown large on a day, with its words. */
function largeFlowerOf(season: Season, dayOfYear: number, words: Words): LargeFlower {
  const texts = bloomWords(words.language);
  const found = flowerShown(plantOf(season), dayOfYear);
  if (!found) {
    return {
      site: null,
      state: { kind: 'square', ageDays: 0 },
      grown: 0,
      title: texts.noSquare,
      place: texts.notYet,
      placeShort: '',
    };
  }
  const { site, node } = found;
  const { places, placeShort: short } = fieldWords(words.language);
  const number = { node: words.formats.count(node) };
  const place = fill([places.first, places.second, places.third][site.position - 1]!, number);
  const placeShort = fill(short, number);
  const state = siteOn(site, dayOfYear);
  const days = (count: number) => words.formats.days(count).text;
  if (state.kind === 'flower') {
    const titles = texts.titles[season.field.variety.kind];
    return { site: found, state, grown: 1, title: titles[state.ageDays]!, place, placeShort };
  }
  const ageDays = dayOfYear - site.squareDay;
  const whole = site.flowerDay === null ? squareDays : site.flowerDay - site.squareDay;
  return {
    site: found,
    state: { kind: 'square', ageDays },
    grown: Math.min(1, ageDays / Math.max(1, whole)),
    title:
      site.flowerDay === null
        ? fill(texts.squareAge, { days: days(ageDays) })
        : fill(texts.square, { days: days(site.flowerDay - dayOfYear) }),
    place,
    placeShort,
  };
}

/** One plant in bloom, day by day until cut-out, and one flower of it large. */
export const bloomPicture: StationPicture = {
  layOut(season, words, size) {
    const at = layOutBloom(fieldSceneOf(season, 'bloom', words, size));
    return ({ dayOfYear }) =>
      at({
        ...fieldDayLookOf(season, dayOfYear, words),
        flower: largeFlowerOf(season, dayOfYear, words),
      });
  },
  see(season, words, { dayOfYear }) {
    const { formats, messages } = words;
    const day = fieldDayOn(season.field, dayOfYear);
    const { title, place } = largeFlowerOf(season, dayOfYear, words);
    return [
      fill(messages.scenes.plant, {
        height: formats.length(day.plantHeightInches).text,
        date: formats.day(day.dayOfYear),
        nodes: formats.number(day.nodes, 1),
      }),
      messages.readings.samplePlant,
      bloomWords(words.language).last,
      `${title}, ${place}.`,
      ...movingText(season, dayOfYear, words),
    ];
  },
  rows: (season, words, { dayOfYear }) => fieldRows(season, dayOfYear, words),
};
