import type { OutcomeKey } from '../../compare/season-outcomes.ts';
import type { Formats } from '../../language/formats.ts';
import type { Words } from '../../language/words.ts';

type Writer = (formats: Formats, value: number, words: Words) => string;

const mass: Writer = (formats, kg) => formats.mass(kg, 0).text;
const percent: Writer = (formats, value) => formats.percent(value);
const money: Writer = (formats, usd) => formats.money(usd, 0);
const one: Writer = (formats, value) => formats.number(value, 1);

const writers: Readonly<Record<OutcomeKey, Writer>> = {
  seedCottonKg: mass,
  rainInches: (formats, inches) => formats.rain(inches).text,
  irrigationInches: (formats, inches) => formats.rain(inches).text,
  leftInFieldKg: mass,
  weatheredKg: mass,
  moduleLossKg: mass,
  ginTrashKg: mass,
  seedKg: mass,
  motesKg: mass,
  lintKg: mass,
  turnoutPercent: percent,
  bales: (formats, bales) => formats.count(bales),
  staple32nds: (formats, thirtySeconds) => `${formats.number(thirtySeconds, 1)}/32`,
  lengthMm: (formats, mm) => formats.fibreLength(mm).text,
  uniformityPercent: percent,
  shortFibrePercent: percent,
  strengthGPerTex: (formats, value) => formats.strength(value).text,
  micronaire: one,
  reflectanceRd: one,
  yellownessB: one,
  leafGrade: one,
  centsPerLb: (formats, cents) => formats.centsPerPound(cents).text,
  usdPerBale: money,
  lintUsd: money,
  leftToFarmUsd: money,
  millWasteKg: mass,
  clothSquareMetres: (formats, value) => formats.clothArea(value, 0).text,
  patchInches: (formats, inches) => formats.length(inches, 2).text,
};

/** Differences of shares are told in points, not per cent of per cent. */
const pointed: readonly OutcomeKey[] = ['turnoutPercent', 'uniformityPercent', 'shortFibrePercent'];

/** An outcome in the reader's units; a dash where the season has no such thing. */
export const outcomeText = (key: OutcomeKey, value: number | null, words: Words): string =>
  value === null ? '–' : writers[key](words.formats, value, words);

/** How far two outcomes lie apart, without a sign, in the reader's units. */
export function distanceText(key: OutcomeKey, difference: number, words: Words): string {
  const size = Math.abs(difference);
  return pointed.includes(key) ? words.formats.points(size).text : outcomeText(key, size, words);
}

/** A difference with its sign; one too small to print carries none. */
export function signedText(key: OutcomeKey, difference: number | null, words: Words): string {
  if (difference === null) return '–';
  const text = distanceText(key, difference, words);
  return /[1-9]/.test(text) ? `${difference > 0 ? '+' : '−'}${text}` : text;
}
