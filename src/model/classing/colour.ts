import type { CottonKind } from '../fibre.ts';
import { chartLean, colourGroups, colourSteps, pimaColourSteps, pimaLean } from './colour-chart-facts.ts';
import { colourGrades } from './colour-grade-facts.ts';

const nameOf = new Map(colourGrades.rows.map(({ code, name }) => [code, name]));

/** What stands for a grade below the last of its group: the first digit of the codes that are called so. */
const belowGradeDigit = colourGrades.rows.find(({ symbol }) => symbol === 'BG')!.code[0]!;
/** Whether a code is below grade. */
export const isBelowGrade = (code: string): boolean => code.startsWith(belowGradeDigit);
/** The code below grade of a colour group. */
export const belowGradeCode = (groupDigit: number | string): string => `${belowGradeDigit}${groupDigit}`;

/** First and last official grade of each colour group, read off the list of codes. */
export function gradesOfGroup(groupDigit: number): { readonly first: number; readonly last: number } {
  const digits = colourGrades.rows
    .filter(({ code }) => code.endsWith(String(groupDigit)) && !isBelowGrade(code))
    .map(({ code }) => Number(code[0]));
  return { first: Math.min(...digits), last: Math.max(...digits) };
}
const groupDigits = [...colourGroups.rows.map(({ group }) => group), colourGroups.rows.length + 1];
const ranges = groupDigits.map(gradesOfGroup);

/**
 * Upland colour code from our simplified chart: NOT the official one, whose cell edges are not published as numbers.
 * @param reflectanceRd Rd, percent
 * @param yellownessB +b, Hunter units
 */
export function uplandColour(reflectanceRd: number, yellownessB: number): string {
  const { perRd, fromRd, yellownessWeight, yellownessFrom } = chartLean;
  const lean = perRd.value * (reflectanceRd - fromRd.value);
  let digit = colourGroups.rows.length + 1;
  for (const { group: name, belowB, leans } of [...colourGroups.rows].reverse()) {
    if (yellownessB < belowB + (leans ? lean : 0)) digit = name;
  }
  const brightness = reflectanceRd + yellownessWeight.value * Math.max(0, yellownessB - yellownessFrom.value);
  const place = colourSteps.rows.findIndex((edge) => brightness >= edge);
  const { first, last } = ranges[digit - 1]!;
  const grade = place < 0 ? colourSteps.rows.length + 1 : place + 1;
  return grade > last ? belowGradeCode(digit) : `${Math.max(first, grade)}${digit}`;
}

/** Pima colour grade, 1 (best) to 6, by a chart of our own: sound Pima is creamier, and only loss of brightness or a deeper cream lowers it. */
export function pimaColour(reflectanceRd: number, yellownessB: number): string {
  const { yellownessWeight, soundB } = pimaLean;
  const { rows } = pimaColourSteps;
  const brightness = reflectanceRd - yellownessWeight.value * Math.max(0, yellownessB - soundB.value);
  const place = rows.findIndex((edge) => brightness >= edge);
  return String(place < 0 ? rows.length + 1 : place + 1);
}

/** A colour grade and its name; Pima's grades have numbers only. */
export interface Colour {
  readonly color: string;
  readonly colorName: string;
}

/** Grades colour by the chart of the kind. */
export function colourOf(kind: CottonKind, reflectanceRd: number, yellownessB: number): Colour {
  if (kind === 'pima') {
    const color = pimaColour(reflectanceRd, yellownessB);
    return { color, colorName: `American Pima ${color}` };
  }
  return named(uplandColour(reflectanceRd, yellownessB));
}

/**
 * Adds the name to an upland code.
 * @throws RangeError for a code that is not in 7 CFR 28.525
 */
export function named(code: string): Colour {
  const colorName = nameOf.get(code);
  if (colorName === undefined) throw new RangeError(`no colour grade ${code}`);
  return { color: code, colorName };
}
