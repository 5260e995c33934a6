import type { ChangedLand } from '../../compare/changed-land.ts';
import type { Change } from '../../compare/what-made-the-difference.ts';
import type { Words } from '../../language/words.ts';
import { inchesFromMillimetres } from '../../model/units.ts';
import { compareWords } from './compare-words.ts';
import { decidedText, decisionName } from './decision-text.ts';

/** Something of a farm's land, in the reader's words and units. */
export function landText({ land }: Pick<ChangedLand, 'land'>, value: ChangedLand['from'], words: Words): string {
  const { formats, messages } = words;
  switch (land) {
    case 'acres':
      return formats.area(Number(value)).text;
    case 'soilWaterMm':
      return formats.rain(inchesFromMillimetres(Number(value))).text;
    default: {
      const names: Readonly<Record<string, string>> = { ...messages.eras, ...messages.climates };
      return names[value] ?? String(value);
    }
  }
}

/** One for each change between two runs. */
export const changeKey = (change: Change): string =>
  'weather' in change ? 'weather' : 'land' in change ? change.land : `${change.station}/${change.key}`;

/** A change in a line: what it is, from what, to what. */
export function changeText(change: Change, words: Words): string {
  const { apart, land } = compareWords(words.language);
  if ('weather' in change) return apart.weather;
  if ('land' in change)
    return `${land.names[change.land]}: ${landText(change, change.from, words)} → ${landText(change, change.to, words)}`;
  return `${decisionName(change, words)}: ${decidedText(change, change.from, words)} → ${decidedText(change, change.to, words)}`;
}
