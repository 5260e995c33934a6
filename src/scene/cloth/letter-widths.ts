import type { TextMark } from '../display-list.ts';

/** What decides the face that words are set in. */
export type Look = Partial<Pick<TextMark, 'bold' | 'italic' | 'display'>>;

/**
 * Advances of letters as shares of their size, in steps of 0.04 rounded up, from the packaged faces with their size adjustment;
 * `tests/scene/cloth/letter-widths.test.ts` reads the font files and holds the tables to them. Figures are as wide as the widest.
 */
type WidthTable = readonly (readonly [letters: string, width: number])[];

const roman: WidthTable = [
  [" '\u00a0’‘", 0.2],
  [',.:;ilí·', 0.28],
  ['!(/IjÍ¡°¹', 0.32],
  ['")-Jft“”³', 0.36],
  ['?r¿²º', 0.4],
  ['cs¢', 0.44],
  ['$Lvyz', 0.48],
  ['Faekxáé–', 0.52],
  ['+ESTgopóÉ×−', 0.56],
  ['0123456789CPYZbdhnquúñü', 0.6],
  ['ABKRVÁ', 0.64],
  ['GX…', 0.68],
  ['DOQUÓÚÜ', 0.72],
  ['HNwÑ', 0.76],
  ['&½¼', 0.8],
  ['¾', 0.84],
  ['Mm', 0.88],
  ['%', 0.92],
  ['W—', 1],
];
const bold: WidthTable = [
  [' \u00a0', 0.16],
  ["',.:;·’‘", 0.28],
  ['!/ilí¡°¹', 0.32],
  ['()-IjÍ³', 0.36],
  ['?Jfrt¿º', 0.4],
  ['"cs”¢²', 0.44],
  ['z“', 0.48],
  ['$FLevxyé–', 0.52],
  ['+STagkoáó×−', 0.56],
  ['0123456789CEbdhnpquúñüÉ', 0.6],
  ['PYZ', 0.64],
  ['ABGKRVÁ', 0.68],
  ['DOQUXÓÚÜ…', 0.72],
  ['&HNwÑ', 0.8],
  ['½', 0.84],
  ['M¼', 0.88],
  ['m¾', 0.92],
  ['%—', 0.96],
  ['W', 1],
];
const italic: WidthTable = [
  [' \u00a0', 0.16],
  ["'’‘", 0.2],
  [',.:;ijlí·', 0.28],
  ['!(/IfÍ¡°¹', 0.32],
  ['")-Js“”³º', 0.36],
  ['?crt¿²', 0.4],
  ['eé¢', 0.44],
  ['$FLovyzó', 0.48],
  ['+ESTabdgknpqxáñÉ−–', 0.52],
  ['Chuúü×', 0.56],
  ['0123456789BKPRVYZ', 0.6],
  ['AGXÁ', 0.64],
  ['OQUÓÚÜ…', 0.68],
  ['&D', 0.72],
  ['HNwÑ', 0.76],
  ['m½¼', 0.8],
  ['M¾', 0.84],
  ['%', 0.92],
  ['W', 0.96],
  ['—', 1],
];
const display: WidthTable = [
  ["'", 0.2],
  [' ,;\u00a0’‘', 0.24],
  ['.:·¹', 0.28],
  ['!IijlíÍ¡', 0.32],
  ['()-', 0.36],
  ['"/J°', 0.4],
  ['?ft¿“”³º', 0.44],
  ['r²', 0.48],
  ['L', 0.52],
  ['+sz×−–', 0.56],
  ['TZacevxáé¢', 0.6],
  ['EFgkouyóúüÉ', 0.64],
  ['$0123456789PSYbdhnpqñ', 0.68],
  ['ABCDKRVXÁ', 0.72],
  ['&GHOQUÓÚÜ', 0.76],
  ['NÑ…', 0.8],
  ['—', 0.84],
  ['w', 0.92],
  ['M', 0.96],
  ['%m½¼', 1],
  ['W', 1.04],
  ['¾', 1.12],
];

/** A letter that no table knows comes from another face; this is wider than most. */
const UNKNOWN_WIDTH = 0.8;

export type Face = 'roman' | 'bold' | 'italic' | 'display';

const byLetter = (table: WidthTable): ReadonlyMap<string, number> =>
  new Map(table.flatMap(([letters, width]) => [...letters].map((letter) => [letter, width] as const)));
const widthsOf: Readonly<Record<Face, ReadonlyMap<string, number>>> = {
  roman: byLetter(roman),
  bold: byLetter(bold),
  italic: byLetter(italic),
  display: byLetter(display),
};

const faceOf = (look: Look): Face => (look.display ? 'display' : look.bold ? 'bold' : look.italic ? 'italic' : 'roman');

/** Advance of one letter in a face, as a share of its size; undefined for one that the tables do not know. */
export const letterWidth = (letter: string, face: Face): number | undefined => widthsOf[face].get(letter);

/** Room that a line of words takes, px: what it does, and up to one part in twenty more. */
export function textWidth(text: string, size: number, look: Look = {}): number {
  const widths = widthsOf[faceOf(look)];
  let width = 0;
  for (const letter of text) width += widths.get(letter) ?? UNKNOWN_WIDTH;
  return width * size;
}
