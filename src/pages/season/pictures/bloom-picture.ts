import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import { stageFacts } from '../../../model/field/facts.ts';
import type { Season } from '../../../model/season.ts';
import { type LargeFlower, layOutBloom } from '../../../scene/stations/bloom/bloom.ts';
import { siteOn } from '../../../scene/stations/plant/plant-sample.ts';
import { above, step } from '../../../workings/steps.ts';
import type { Origin, Step } from '../../../workings/working.ts';
import { fieldDayLookOf, fieldRows, fieldSceneOf, movingText } from './field-look.ts';
import { fieldDayOn, flowerShown, plantOf } from './field-plant.ts';
import { bloomWords, fieldWords } from './field-words.ts';
import type { StationPicture } from './picture.ts';
import { said } from './row-steps.ts';

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
  // A square that never flowers grows as one that does.
  const whole = site.flowerDay === null ? stageFacts.flowerDays.value : site.flowerDay - site.squareDay;
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

/** Where the flower or square shown large sits and how old it is: all of it drawn by lot for this one plant. */
function flowerSteps(season: Season, dayOfYear: number, words: Words): Step[] {
  const found = flowerShown(plantOf(season), dayOfYear);
  if (!found) return [];
  const { steps } = bloomWords(words.language);
  const { site, node } = found;
  const chance: Origin = { at: 'chance' };
  const isSquare = siteOn(site, dayOfYear).kind !== 'flower';
  const opens = isSquare ? site.flowerDay : null;
  const days = opens === null ? dayOfYear - site.squareDay : opens - dayOfYear;
  return [
    said(steps.squareOn, { as: 'day', value: site.squareDay }, chance),
    ...(site.flowerDay === null ? [] : [said(steps.flowerOn, { as: 'day', value: site.flowerDay }, chance)]),
    step('dayShown', { as: 'day', value: dayOfYear }, { at: 'drawing' }),
    ...(isSquare ? [said(opens === null ? steps.age : steps.left, { as: 'count', value: days }, above)] : []),
    said(steps.node, { as: 'count', value: node }, chance),
    said(steps.place, { as: 'count', value: site.position }, chance),
  ];
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
  rows(season, words, { dayOfYear }) {
    const { title, place } = largeFlowerOf(season, dayOfYear, words);
    return [
      ...fieldRows(season, dayOfYear, words),
      {
        key: 'large',
        label: fieldWords(words.language).rows.large,
        text: `${title}, ${place}`,
        steps: flowerSteps(season, dayOfYear, words),
      },
    ];
  },
};
