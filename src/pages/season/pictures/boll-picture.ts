import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import { bollAgesOf } from '../../../model/field/boll-clock.ts';
import { lengthFraction, massFraction } from '../../../model/field/boll-filling.ts';
import { climateOf } from '../../../model/field/climates.ts';
import { bollFacts } from '../../../model/field/facts.ts';
import type { Season } from '../../../model/season.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import { type LargeBoll, layOutBoll } from '../../../scene/stations/boll/boll.ts';
import type { FibreRule } from '../../../scene/stations/boll/fibre-rule.ts';
import { siteOn } from '../../../scene/stations/plant/plant-sample.ts';
import { fieldDayLookOf, fieldRows, fieldSceneOf, movingText } from './field-look.ts';
import { bollShown, fieldDayOn } from './field-plant.ts';
import { bloomWords, bollWords } from './field-words.ts';
import type { StationPicture } from './picture.ts';

/** The rule goes this far past the variety's longest peak. */
const ruleRoom = 1.14;

type Ages = ReturnType<typeof bollAgesOf>;
const agesOfSeason = new WeakMap<Season, Ages>();
function agesOf(season: Season): Ages {
  const known = agesOfSeason.get(season);
  if (known) return known;
  const ages = bollAgesOf(season.field, season.weather, climateOf(season.scenario.climate).bollClock);
  agesOfSeason.set(season, ages);
  return ages;
}

/** Ticks of the fibre rule: eighths of an inch with the halves written, or 2.5 mm with the tens; the last carries the unit. */
function fibreRuleOf({ field }: Season, { unitSystem, formats, messages }: Words): FibreRule {
  const mm = field.variety.peakMm * ruleRoom;
  const us = unitSystem === 'us';
  const stepMm = us ? MM_PER_INCH / 8 : 2.5;
  const count = Math.floor(mm / stepMm);
  const last = Math.floor(count / 4) * 4;
  const sign = messages.units[us ? 'inches' : 'millimetres'].sign;
  return {
    mm,
    ticks: Array.from({ length: count + 1 }, (_, i) => {
      if (i === 0 || i % 4 !== 0) return { mm: i * stepMm };
      const number = us ? halves(i / 4, formats) : formats.count(i * stepMm);
      return { mm: i * stepMm, text: i === last ? `${number}\u00a0${sign}` : number };
    }),
  };
}

/** Halves of an inch as a rule prints them. */
const halves = (count: number, formats: Words['formats']): string =>
  `${count > 1 ? formats.count(Math.floor(count / 2)) : ''}${count % 2 ? '½' : ''}`;

/** The boll shown large on a day, with its words. */
export function largeBollOf(season: Season, dayOfYear: number, words: Words): LargeBoll | null {
  const found = bollShown(season);
  if (!found) return null;
  const { site, node } = found;
  const { formats, language } = words;
  const texts = bollWords(language);
  const state = siteOn(site, dayOfYear);
  const age = dayOfYear < site.flowerDay! ? 0 : agesOf(season)(site.flowerDay!, dayOfYear);
  const length = lengthFraction(age);
  const wall = massFraction(age);
  const mm = season.field.variety.peakMm * length;
  const counts = { node: formats.count(node), locks: formats.count(site.locks), seeds: formats.count(site.seeds) };
  const days = (count: number) => formats.days(count).text;
  const title =
    state.kind === 'flower'
      ? bloomWords(language).titles[season.field.variety.kind][state.ageDays]!
      : state.kind === 'openBoll'
        ? state.ageDays === 0
          ? texts.openToday
          : fill(texts.open, { days: days(state.ageDays) })
        : fill(texts.green, { days: days(Math.max(0, dayOfYear - site.flowerDay!)) });
  return {
    site: found,
    state,
    locks: site.locks,
    seeds: site.seeds,
    fibre: { mm, length, wall },
    title,
    place: fill(state.kind === 'greenBoll' ? texts.placeCut : texts.place, counts),
    placeShort: fill(texts.placeShort, counts),
    lengthText: fill(texts.length, { length: formats.fibreLength(mm).text }),
    wallText: fill(texts.wall, { share: formats.percent(100 * wall, 0) }),
  };
}

/** One plant from cut-out to the picking, and one boll of it cut open large. */
export const bollPicture: StationPicture = {
  layOut(season, words, size) {
    const at = layOutBoll({ ...fieldSceneOf(season, 'boll', words, size), rule: fibreRuleOf(season, words) });
    return ({ dayOfYear }) =>
      at({ ...fieldDayLookOf(season, dayOfYear, words), boll: largeBollOf(season, dayOfYear, words) });
  },
  see(season, words, { dayOfYear }) {
    const { formats, messages, language } = words;
    const texts = bollWords(language);
    const day = fieldDayOn(season.field, dayOfYear);
    const boll = largeBollOf(season, dayOfYear, words);
    return [
      fill(messages.scenes.plant, {
        height: formats.length(day.plantHeightInches).text,
        date: formats.day(day.dayOfYear),
        nodes: formats.number(day.nodes, 1),
      }),
      messages.readings.samplePlant,
      ...(boll
        ? [
            `${boll.title}, ${boll.place}. ${boll.lengthText}; ${boll.wallText}.`,
            fill(texts.lengthNote, { days: formats.days(bollFacts.elongatedDays.value).text }),
          ]
        : [texts.none]),
      ...movingText(season, dayOfYear, words),
    ];
  },
  rows(season, words, { dayOfYear }) {
    const { formats, language } = words;
    const { rows } = bollWords(language);
    const boll = largeBollOf(season, dayOfYear, words);
    const day = fieldDayOn(season.field, dayOfYear);
    return [
      ...fieldRows(season, dayOfYear, words),
      { key: 'open', label: rows.open, text: formats.percent(day.openPercent, 0) },
      ...(boll
        ? [
            { key: 'boll', label: rows.boll, text: `${boll.title}, ${boll.place}` },
            { key: 'fibreLength', label: rows.fibreLength, text: formats.fibreLength(boll.fibre.mm).text },
            { key: 'fibreWall', label: rows.fibreWall, text: formats.percent(100 * boll.fibre.wall, 0) },
          ]
        : []),
    ];
  },
};
