import { fill } from '../../../language/fill.ts';
import { moduleWords as en } from '../../../language/messages/en/pictures/module.ts';
import { moduleWords as es } from '../../../language/messages/es/pictures/module.ts';
import type { Words } from '../../../language/words.ts';
import { rainOnStorageDays } from '../../../model/chain.ts';
import { heatingFacts } from '../../../model/module/facts.ts';
import { moduleFeet } from '../../../model/module/geometry.ts';
import { moduleVerdict } from '../../../model/module/heating.ts';
import type { Season } from '../../../model/season.ts';
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  INCHES_PER_FOOT,
  KG_PER_POUND,
  MM_PER_INCH,
} from '../../../model/units.ts';
import { MODULE_LAP_SECONDS, type ModuleInput, type ScaleTick } from '../../../scene/stations/module/module-input.ts';
import { moduleScene } from '../../../scene/stations/module/module-scene.ts';
import { atStation, decided, percent, read, step } from '../../../workings/steps.ts';
import type { Printed, Step } from '../../../workings/working.ts';
import { baleEntries, entryRows, roundMassText } from './bale-entries.ts';
import { flowText } from './flow-text.ts';
import type { PictureSize, StationPicture, TwinRow } from './picture.ts';
import { drawnStep, said } from './row-steps.ts';

const wordsOf = ({ language }: Words) => (language === 'es' ? es : en);
const range = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, i) => from + i * step);

/** What the days in storage bring: rain of each, the core, and the verdict so far. */
function storageOf(season: Season) {
  const { module, scenario, weather, field } = season;
  const lastPicking = field.harvestDays.at(-1);
  if (!module || lastPicking === undefined) return null;
  const { storageDays } = scenario.decisions.module;
  const rainInches = rainOnStorageDays(weather, lastPicking, storageDays);
  const coreF = module.coreTemperatureF.map(({ f }) => f);
  const startF = coreF[0] ?? heatingFacts.startF.value;
  const dayOf = (progress: number) => Math.round(progress * storageDays);
  return {
    module,
    storageDays,
    rainInches,
    coreF,
    startF,
    dayOf,
    rainBy: (day: number) => rainInches.slice(0, day).reduce((sum, inches) => sum + inches, 0),
    verdictOn: (day: number) => {
      const hottest = Math.max(...coreF.slice(0, day + 1));
      return moduleVerdict(hottest - startF, hottest);
    },
  };
}
type Storage = NonNullable<ReturnType<typeof storageOf>>;

/** Degrees for the ruler beside the probe, in steps that read well in either unit. */
function temperatureTicks({ coreF }: Storage, { formats, unitSystem }: Words): ScaleTick[] {
  const hottest = Math.max(...coreF, heatingFacts.ginNowF.value);
  const us = unitSystem === 'us';
  const high = us ? Math.ceil((hottest + 4) / 10) * 10 : Math.ceil((celsiusFromFahrenheit(hottest) + 2) / 10) * 10;
  const degrees = us ? range(60, high, 5) : range(10, high, 5);
  return degrees.map((degree, i): ScaleTick => {
    const value = us ? degree : fahrenheitFromCelsius(degree);
    if (degree % 10 !== 0) return { value };
    const shown = formats.temperature(value);
    return { value, text: i === degrees.length - 1 ? shown.text : shown.number };
  });
}

/** A round amount of rain for the scale under the cloud, inches. */
function rainTick({ rainInches }: Storage, { unitSystem }: Words): number {
  const wettest = Math.max(0, ...rainInches);
  if (unitSystem === 'us') return wettest >= 0.9 ? 1 : 0.5;
  return (wettest >= 0.8 ? 20 : 10) / MM_PER_INCH;
}

function moistureTicks(inPercent: number, outPercent: number, words: Words): ScaleTick[] {
  const high = Math.max(16, Math.ceil(Math.max(inPercent, outPercent) / 2) * 2);
  return range(6, high, 1).map((percent) =>
    percent % 2 === 0 ? { value: percent, text: words.formats.percent(percent, 0) } : { value: percent },
  );
}

/** Feet for the yard, or centimetres. */
function feetText(feet: number, words: Words): string {
  const { formats, unitSystem } = words;
  if (unitSystem === 'metric') return formats.length(feet * INCHES_PER_FOOT).text;
  return fill(wordsOf(words).feet, { n: formats.number(feet, Math.abs(feet - Math.round(feet)) < 0.05 ? 0 : 1) });
}

const countText = (season: Season, { module }: Storage, words: Words): string => {
  const { kind } = season.scenario.decisions.module;
  return fill(words.formats.plural(module.moduleCount, wordsOf(words)[kind]), {
    mass: words.formats.mass(module.seedCottonKgEach, 0).text,
  });
};

/** All that the scene is laid out from; null where nothing was stored. */
export function moduleInput(season: Season, words: Words, size: PictureSize): ModuleInput | null {
  const entries = baleEntries(season, 'module', words);
  const storage = storageOf(season);
  if (!entries || !storage || !season.harvest) return null;
  const own = wordsOf(words);
  const { formats, messages, unitSystem } = words;
  const us = unitSystem === 'us';
  const { kind, cover } = season.scenario.decisions.module;
  const feet = moduleFeet(kind);
  const inPercent = season.harvest.moisturePercent;
  const outPercent = storage.module.moisturePercent;
  const tick = rainTick(storage, words);
  return {
    kind,
    cover,
    ...entries,
    count: storage.module.moduleCount,
    longOverHigh: (feet.long ?? feet.high) / feet.high,
    rainInches: storage.rainInches,
    rainTickInches: tick,
    coreF: storage.coreF,
    startF: storage.startF,
    ginSoonF: storage.startF + heatingFacts.ginSoonRiseF.value,
    ginNowF: heatingFacts.ginNowF.value,
    ringF: us ? 5 : 3 * 1.8,
    temperatureTicks: temperatureTicks(storage, words),
    moisture: {
      inPercent,
      outPercent,
      safePercent: heatingFacts.soundAtPercent.value,
      ticks: moistureTicks(inPercent, outPercent, words),
    },
    verdictOn: storage.verdictOn,
    unitKg: us ? KG_PER_POUND : 1,
    size,
    labels: {
      day: (day) =>
        storage.storageDays === 0
          ? own.noDays
          : fill(own.day, { day: formats.count(day), days: formats.count(storage.storageDays) }),
      rain: (inches) => fill(own.rain, { rain: formats.rain(inches).text }),
      rainTick: formats.rain(tick, tick < 1 ? 1 : 0).text,
      count: countText(season, storage, words),
      core: (f) => formats.temperature(f).text,
      verdicts: messages.readings.moduleVerdicts,
      moistureBoth: fill(own.moistureBoth, { came: formats.percent(inPercent), goes: formats.percent(outPercent) }),
      height: feetText(feet.high, words),
      length: feet.long === null ? '' : feetText(feet.long, words),
      caption: ({ tuftKg, bitKg }, room) =>
        [
          fill(room === 'full' ? own.captionPieces : own.captionShort, {
            tuft: roundMassText(tuftKg, words),
            bit: roundMassText(bitKg, words),
          }),
          fill(own.captionRings, { degrees: us ? own.ringUs : own.ringMetric }),
          ...(room === 'phone' ? [] : [own.captionLimits]),
          ...(room === 'full' ? [fill(own.captionPace, { seconds: formats.count(MODULE_LAP_SECONDS) })] : []),
        ].join(' '),
    },
  };
}

/** Seed cotton in the yard: what rain, days and its own warmth do to it. */
export const modulePicture: StationPicture = {
  layOut(season, words, size) {
    const input = moduleInput(season, words, size);
    if (!input) return () => null;
    const scene = moduleScene(input);
    return ({ progress }) => scene(progress);
  },
  see(season, words, { progress }) {
    const ledger = flowText(season, 'module', words);
    const storage = storageOf(season);
    if (!storage) return ledger;
    const own = wordsOf(words);
    const { formats, messages } = words;
    const { kind, cover } = season.scenario.decisions.module;
    const day = storage.dayOf(progress);
    const degrees = (f: number) => formats.temperature(f).text;
    return [
      `${kind === 'round' ? own.seeRound : kind === 'conventional' ? own.seeConventional : own.seeWagon} ${own.covers[cover]}`,
      fill(own.seeRain, {
        rain: formats.rain(storage.rainBy(day)).text,
        day: formats.count(day),
        days: formats.count(storage.storageDays),
      }),
      fill(own.seeCore, {
        core: degrees(storage.coreF[day] ?? storage.startF),
        verdict: messages.readings.moduleVerdicts[storage.verdictOn(day)],
        soon: degrees(storage.startF + heatingFacts.ginSoonRiseF.value),
        now: degrees(heatingFacts.ginNowF.value),
      }),
      ...ledger,
    ];
  },
  rows(season, words, { progress }) {
    const entries = baleEntries(season, 'module', words);
    const storage = storageOf(season);
    if (!entries || !storage || !season.harvest) return [];
    const own = wordsOf(words);
    const { formats, messages } = words;
    const day = storage.dayOf(progress);
    const row = (key: string, label: string, text: string, steps: TwinRow['steps']): TwinRow => ({
      key,
      label,
      text,
      steps,
    });
    const rain: Printed = { as: 'rain', value: storage.rainBy(day) };
    const core: Printed = { as: 'temperature', value: storage.coreF[day] ?? storage.startF };
    return [
      row('day', own.dayLabel, formats.count(day), daySteps(storage, day, words)),
      row('rain', own.rainSoFar, formats.rain(storage.rainBy(day)).text, [
        ...daySteps(storage, day, words),
        said(own.rainSoFar, rain, { at: 'weather' }),
      ]),
      row('core', own.core, formats.temperature(storage.coreF[day] ?? storage.startF).text, [
        step('startCore', { as: 'temperature', value: storage.startF }, read(heatingFacts.startF)),
        ...daySteps(storage, day, words),
        said(own.core, core, atStation('module')),
      ]),
      row('verdict', own.verdict, messages.readings.moduleVerdicts[storage.verdictOn(day)], limitSteps(storage)),
      row('moistureIn', own.moistureInLabel, formats.percent(season.harvest.moisturePercent), [
        said(own.moistureInLabel, percent(season.harvest.moisturePercent), atStation('harvest')),
      ]),
      row('moistureOut', own.moistureOutLabel, formats.percent(storage.module.moisturePercent), [
        said(own.moistureInLabel, percent(season.harvest.moisturePercent), atStation('harvest')),
        said(own.moistureOutLabel, percent(storage.module.moisturePercent), atStation('module')),
      ]),
      row('count', own.countLabel, countText(season, storage, words), [
        said(own.countLabel, { as: 'count', value: storage.module.moduleCount }, atStation('module')),
        said(own.eachLabel, { as: 'mass', value: storage.module.seedCottonKgEach, decimals: 0 }, atStation('module')),
      ]),
      ...entryRows(entries, progress, season, 'module', words),
    ];
  },
  said(season, words) {
    const storage = storageOf(season);
    if (!storage) return [];
    const own = wordsOf(words);
    const limits = limitSteps(storage);
    const degrees = (f: number) => words.formats.temperature(f).text;
    return [
      {
        key: 'days',
        label: own.dayLabel,
        text: words.formats.count(storage.storageDays),
        steps: [step('storageDays', { as: 'count', value: storage.storageDays }, decided('module'))],
      },
      {
        key: 'soon',
        label: own.verdict,
        text: degrees(storage.startF + heatingFacts.ginSoonRiseF.value),
        steps: limits,
      },
      { key: 'now', label: own.verdict, text: degrees(heatingFacts.ginNowF.value), steps: limits },
    ];
  },
};

/** How far into the storage the picture is. */
const daySteps = ({ storageDays }: Storage, day: number, words: Words): Step[] => [
  step('storageDays', { as: 'count', value: storageDays }, decided('module')),
  drawnStep(wordsOf(words).dayLabel, { as: 'count', value: day }),
];

/** From which warmth at its core a module is to be ginned soon, and at once. */
const limitSteps = ({ startF }: Storage): Step[] => [
  step('startCore', { as: 'temperature', value: startF }, read(heatingFacts.startF)),
  step(
    'ginSoonCore',
    { as: 'temperature', value: startF + heatingFacts.ginSoonRiseF.value },
    read(heatingFacts.ginSoonRiseF),
  ),
  step('ginNowCore', { as: 'temperature', value: heatingFacts.ginNowF.value }, read(heatingFacts.ginNowF)),
];
