import { fill } from '../../language/fill.ts';
import type { Formats } from '../../language/formats.ts';
import type { Words } from '../../language/words.ts';
import type { Printed, QuantityKind } from '../../workings/working.ts';
import { toldText } from './told-text.ts';

type Writer = (formats: Formats, value: number, decimals: number | undefined) => string;

const writers: Readonly<Record<QuantityKind, Writer>> = {
  count: (formats, value) => formats.count(value),
  number: (formats, value, decimals = 0) => formats.number(value, decimals),
  percent: (formats, value, decimals) => formats.percent(value, decimals),
  money: (formats, value, decimals) => formats.money(value, decimals),
  day: (formats, value) => formats.day(value),
  mass: (formats, value, decimals) => formats.mass(value, decimals).text,
  pounds: (formats, value) => formats.pounds(value).text,
  smallMass: (formats, value, decimals) => formats.smallMass(value, decimals).text,
  fieldYield: (formats, value) => formats.fieldYield(value).text,
  fibreLength: (formats, value) => formats.fibreLength(value).text,
  length: (formats, value, decimals) => formats.length(value, decimals).text,
  rain: (formats, value, decimals) => formats.rain(value, decimals).text,
  clothLength: (formats, value, decimals) => formats.clothLength(value, decimals).text,
  area: (formats, value) => formats.area(value).text,
  clothArea: (formats, value, decimals) => formats.clothArea(value, decimals).text,
  thirtySeconds: (formats, value, decimals = 1) => `${formats.number(value, decimals)}/32`,
  points: (formats, value) => formats.points(value).text,
  temperature: (formats, value) => formats.temperature(value).text,
  heatUnits: (formats, value) => formats.heatUnits(value).text,
  clothWeight: (formats, value) => formats.clothWeight(value).text,
  threads: (formats, value) => formats.threads(value).text,
  yarnCount: (formats, value) => formats.yarnCount(value).text,
  seeds: (formats, value) => formats.seeds(value).text,
  seam: (formats, value) => formats.seam(value).text,
  density: (formats, value) => formats.density(value).text,
  strength: (formats, value) => formats.strength(value).text,
  yarnStrength: (formats, value) => formats.yarnStrength(value).text,
  micronaire: (formats, value) => formats.micronaire(value).text,
  centsPerPound: (formats, value) => formats.centsPerPound(value).text,
  powerOfTen: (formats, value) => formats.powerOfTen(value),
};

/** A value as a page prints it, in the reader's language and units. One that has a unit of its own needs that unit's sign. */
export function printed(value: Exclude<Printed, { as: 'exact' }>, words: Words): string {
  const { messages, formats } = words;
  const { readings } = messages;
  switch (value.as) {
    case 'text':
      return value.text;
    case 'told':
      return toldText([value.value, value.value], value.unit, words);
    case 'both':
      return fill(readings.perLength, {
        length: formats.percent(value.length),
        width: formats.percent(value.width),
      });
    case 'signed': {
      const size = writers[value.kind](formats, Math.abs(value.value), value.decimals);
      // One too small to print carries no sign.
      return /[1-9]/.test(size.replace(/\/32$/, '')) ? `${value.value > 0 ? '+' : '−'}${size}` : size;
    }
    case 'word': {
      const lists: Readonly<Record<typeof value.list, Readonly<Record<string, string>>>> = {
        moduleVerdicts: readings.moduleVerdicts,
        spinVerdicts: readings.spinVerdicts,
        drapes: readings.drapes,
        fuzzes: readings.fuzzes,
        amounts: { none: readings.none },
      };
      return lists[value.list][value.word] ?? value.word;
    }
    default:
      return writers[value.as](formats, value.value, value.decimals);
  }
}
