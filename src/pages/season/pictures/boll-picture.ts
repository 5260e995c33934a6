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
import { above, exact, step } from '../../../workings/steps.ts';
import type { Origin, Printed, Step } from '../../../workings/working.ts';
import { fieldDayLookOf, fieldRows, fieldSceneOf, fieldSteps, movingText } from './field-look.ts';
import { bollShown, fieldDayOn } from './field-plant.ts';
import { bloomWords, bollWords } from './field-words.ts';
import type { StationPicture } from './picture.ts';
import { factStep, said } from './row-steps.ts';

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

/** Where the boll sits and how old it is: all of it drawn by lot for this one plant. */
function shownSteps(season: Season, { state }: LargeBoll, dayOfYear: number, words: Words): Step[] {
  const { site, node } = bollShown(season)!;
  const { steps } = bollWords(words.language);
  const count = (value: number): Printed => ({ as: 'count', value });
  const chance: Origin = { at: 'chance' };
  const since = state.kind === 'openBoll' ? site.openDay! : site.flowerDay!;
  return [
    said(state.kind === 'openBoll' ? steps.openedOn : steps.floweredOn, { as: 'day', value: since }, chance),
    step('dayShown', { as: 'day', value: dayOfYear }, { at: 'drawing' }),
    said(steps.daysSince, count(Math.max(0, dayOfYear - since)), above),
    said(steps.node, count(node), chance),
    said(steps.locks, count(site.locks), chance),
    said(steps.seeds, count(site.seeds), chance),
  ];
}

/** How far the fibres of the boll are: its age on the clock of heat and what full-grown is. */
function fibreSteps(
  season: Season,
  boll: LargeBoll,
  dayOfYear: number,
  value: Printed,
  words: Words,
  label: string,
): Step[] {
  const { steps } = bollWords(words.language);
  const { site } = bollShown(season)!;
  const age = dayOfYear < site.flowerDay! ? 0 : agesOf(season)(site.flowerDay!, dayOfYear);
  return [
    said(steps.clock, exact(age, 'days'), { at: 'field' }),
    ...(value.as === 'fibreLength'
      ? [
          said(steps.fullLength, { as: 'fibreLength', value: season.field.variety.peakMm }, { at: 'field' }),
          said(steps.lengthShare, exact(boll.fibre.length, 'fraction'), above),
        ]
      : []),
    said(label, value, above),
  ];
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
      {
        key: 'open',
        label: rows.open,
        text: formats.percent(day.openPercent, 0),
        steps: fieldSteps(season, dayOfYear, words, rows.open, { as: 'percent', value: day.openPercent, decimals: 0 }),
      },
      ...(boll
        ? [
            {
              key: 'boll',
              label: rows.boll,
              text: `${boll.title}, ${boll.place}`,
              steps: shownSteps(season, boll, dayOfYear, words),
            },
            {
              key: 'fibreLength',
              label: rows.fibreLength,
              text: formats.fibreLength(boll.fibre.mm).text,
              steps: fibreSteps(
                season,
                boll,
                dayOfYear,
                { as: 'fibreLength', value: boll.fibre.mm },
                words,
                rows.fibreLength,
              ),
            },
            {
              key: 'fibreWall',
              label: rows.fibreWall,
              text: formats.percent(100 * boll.fibre.wall, 0),
              steps: fibreSteps(
                season,
                boll,
                dayOfYear,
                { as: 'percent', value: 100 * boll.fibre.wall, decimals: 0 },
                words,
                rows.fibreWall,
              ),
            },
            {
              key: 'elongated',
              label: rows.elongated,
              text: formats.days(bollFacts.elongatedDays.value).text,
              steps: [
                factStep(
                  rows.elongated,
                  { as: 'count', value: bollFacts.elongatedDays.value },
                  bollFacts.elongatedDays,
                ),
              ],
            },
          ]
        : []),
    ];
  },
};
