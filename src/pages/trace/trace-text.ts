import type { Words } from '../../language/words.ts';
import { type FamiliarId, familiarOf } from '../../model/trace/familiar.ts';
import type { Forward } from '../../model/trace/trace-forward.ts';
import type { Trace } from '../../model/trace/trace-project.ts';
import { METRES_PER_FOOT } from '../../model/units.ts';
import type { TraceKey } from '../../workings/trace-back.ts';
import type { ForwardKey } from '../../workings/trace-forward.ts';
import type { TraceWords } from './use-trace-words.ts';

// Exact: the international yard, foot and mile, the US gallon of 231 cubic inches.
const squareMetresPerSquareYard = 0.83612736;
const squareInchesPerSquareYard = 36 ** 2;
const kilometresPerMile = 1.609344;
const litresPerGallon = 3.785411784;
const noBreakSpace = '\u00a0';

/** Decimals that keep small numbers apart and spare large ones a show of precision. */
const decimalsFor = (value: number): number => (value >= 100 ? 0 : value >= 10 ? 1 : 2);
const fewDecimals = (value: number): number => (value >= 10 || Number.isInteger(value) ? 0 : 1);

/** How the numbers of the page are written in the reader's words and units. */
export function traceFormats(words: Words, { units, familiar }: TraceWords) {
  const { formats, unitSystem } = words;
  const us = unitSystem === 'us';
  const written = (value: number, unit: string, decimals = decimalsFor(value)) =>
    `${formats.number(value, decimals)}${noBreakSpace}${unit}`;
  const counted = (value: number) => formats.number(value, fewDecimals(value));
  const water = (litres: number) =>
    us
      ? written(litres / litresPerGallon, units.gallons, fewDecimals(litres / litresPerGallon))
      : written(litres, units.litres, fewDecimals(litres));
  const part = (value: number) => `1/${formats.count(1 / value)}`;
  const many = (value: number): string => {
    if (value >= 1e6) return `${formats.number(value / 1e6, decimalsFor(value / 1e6))}${noBreakSpace}${units.million}`;
    return value >= 1e4 ? `${formats.number(value / 1e3, 0)}${noBreakSpace}${units.thousand}` : formats.count(value);
  };
  return {
    counted,
    water,
    mass: (kg: number) => formats.mass(kg).text,
    /** A scrap is said in square inches or centimeters. */
    cloth: (squareYards: number) => {
      const squareInches = squareYards * squareInchesPerSquareYard;
      if (squareInches < 200) return us ? written(squareInches, 'in²', 1) : written(squareInches * 2.54 ** 2, 'cm²', 0);
      return formats.clothArea(squareYards * squareMetresPerSquareYard, decimalsFor(squareYards)).text;
    },
    field: (squareMetres: number) => {
      const value = us ? squareMetres / METRES_PER_FOOT ** 2 : squareMetres;
      return written(value, us ? units.squareFeet : words.messages.units.squareMetres.sign, fewDecimals(value));
    },
    /** How many times a familiar thing goes into a field, without its name. */
    times: (squareMetres: number, id: FamiliarId) => counted(squareMetres / familiarOf(id).squareMetres),
    familiar: (squareMetres: number, id: FamiliarId) => {
      const times = squareMetres / familiarOf(id).squareMetres;
      const decimals = fewDecimals(times);
      return formats.plural(Number(times.toFixed(decimals)), familiar[id], decimals);
    },
    row: (feet: number) => {
      const value = us ? feet : feet * METRES_PER_FOOT;
      return written(value, us ? units.feet : units.metres, fewDecimals(value));
    },
    yarn: (kilometres: number) => {
      const value = us ? kilometres / kilometresPerMile : kilometres;
      return written(value, us ? units.miles : units.kilometres, value >= 1000 ? 0 : 1);
    },
    minutes: (minutes: number) =>
      minutes < 1 ? written(minutes * 60, units.seconds, fewDecimals(minutes * 60)) : written(minutes, units.minutes),
    /** Less than half a day as a part of it. */
    days: (days: number) => (days < 0.5 ? part(days) : formats.number(days, 1)),
    /** How many pieces; less than one as the part of one that it is. */
    pieces: (pieces: number) => (pieces < 1 ? part(pieces) : formats.number(pieces, pieces >= 10 ? 0 : 1)),
    bale: (share: number) => formats.percent(100 * share, share >= 0.1 ? 1 : share >= 0.001 ? 2 : 3),
    many,
    inches: (inches: number) => formats.length(inches, inches >= 100 ? 0 : 2).text,
  };
}
export type TraceFormats = ReturnType<typeof traceFormats>;

/** A number of the way back as the page prints it. */
export function backText(key: TraceKey, trace: Trace, familiar: FamiliarId, formats: TraceFormats): string {
  switch (key) {
    case 'cloth':
      return formats.mass(trace.clothKg);
    case 'clothArea':
      return formats.cloth(trace.clothSquareYards);
    case 'batting':
      return formats.mass(trace.battingKg);
    case 'yarn':
      return formats.mass(trace.yarnKg);
    case 'yarnLength':
      return formats.yarn(trace.yarnKilometres);
    case 'lint':
      return formats.mass(trace.lintKg);
    case 'bale':
      return formats.bale(trace.baleShare);
    case 'fibres':
      return formats.many(trace.fibres);
    case 'seedCotton':
      return formats.mass(trace.seedCottonKg);
    case 'bolls':
      return formats.counted(trace.bolls);
    case 'plants':
      return formats.counted(trace.plants);
    case 'field':
      return formats.field(trace.squareMetres);
    case 'familiar':
      return formats.familiar(trace.squareMetres, familiar);
    case 'row':
      return formats.row(trace.rowFeet);
    case 'rain':
      return formats.water(trace.rainLitres);
    case 'irrigation':
      return formats.water(trace.irrigationLitres);
    case 'seed':
      return formats.mass(trace.seedKg);
    case 'oil':
      return formats.mass(trace.oilKg);
    case 'meal':
      return formats.mass(trace.mealKg);
    case 'hulls':
      return formats.mass(trace.hullsKg);
    case 'linters':
      return formats.mass(trace.lintersKg);
    case 'ginWaste':
      return formats.mass(trace.ginWasteKg);
    case 'handDays':
      return formats.days(trace.handPickingDays);
    case 'machineMinutes':
      return formats.minutes(trace.machinePickingMinutes);
  }
}

/** Grams make small lint legible: a boll's, a plant's. */
const smallOr = (kg: number, words: Words, formats: TraceFormats): string =>
  kg < 0.05 ? words.formats.smallMass(kg * 1000, kg < 0.005 ? 2 : 1).text : formats.mass(kg);

/** A number of the way forward as the page prints it. */
export function forwardText(key: ForwardKey, forward: Forward, words: Words, formats: TraceFormats): string {
  switch (key) {
    case 'bolls':
      return formats.counted(forward.bolls);
    case 'seedCotton':
      return smallOr(forward.seedCottonKg, words, formats);
    case 'lint':
      return smallOr(forward.lintKg, words, formats);
    case 'yarn':
      return smallOr(forward.yarnKg, words, formats);
    case 'cloth':
      return smallOr(forward.clothKg, words, formats);
    case 'clothArea':
      return formats.cloth(forward.clothSquareYards);
    case 'side':
      return formats.inches(forward.squareSideInches);
  }
}
