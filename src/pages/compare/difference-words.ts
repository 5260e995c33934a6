import { type Comparison, compareSeasons } from '../../compare/compare-seasons.ts';
import { fill } from '../../language/fill.ts';
import type { DifferenceForms } from '../../language/messages/en/compare.ts';
import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { OutcomeKey, SeasonOutcomes } from '../../model/season-outcomes.ts';
import { type CompareWords, compareWords } from './compare-words.ts';
import { distanceText } from './outcome-text.ts';

type Told = Extract<OutcomeKey, keyof CompareWords['differences']>;

/** How large a difference must be before it is worth a line: in its own unit, or as a share of what it is measured by. */
interface Step {
  readonly key: Told;
  /** Things that are counted are told with the number, all others with their unit. */
  readonly counted?: true;
  readonly least: (before: SeasonOutcomes) => number;
}

const shareOf =
  (key: OutcomeKey, share: number): Step['least'] =>
  (before) =>
    Math.abs(before[key] ?? 0) * share;
const fixed =
  (least: number): Step['least'] =>
  () =>
    least;

/**
 * What may be told, and the smallest difference that is: about what a gin, a mill or someone who sews would act on. Our own
 * choice; a difference counts for as much as it holds such steps.
 */
const steps: readonly Step[] = [
  { key: 'bales', counted: true, least: shareOf('bales', 0.02) },
  { key: 'lintKg', least: shareOf('lintKg', 0.01) },
  { key: 'leftToFarmUsd', least: shareOf('leftToFarmUsd', 0.02) },
  { key: 'usdPerBale', least: shareOf('usdPerBale', 0.01) },
  { key: 'staple32nds', counted: true, least: fixed(0.5) },
  { key: 'leafGrade', counted: true, least: fixed(0.5) },
  { key: 'turnoutPercent', least: fixed(0.7) },
  { key: 'shortFibrePercent', least: fixed(0.7) },
  { key: 'uniformityPercent', least: fixed(0.5) },
  { key: 'strengthGPerTex', least: fixed(1) },
  { key: 'micronaire', least: fixed(0.15) },
  { key: 'moduleLossKg', least: shareOf('seedCottonKg', 0.005) },
  { key: 'weatheredKg', least: shareOf('seedCottonKg', 0.01) },
  { key: 'leftInFieldKg', least: shareOf('seedCottonKg', 0.01) },
  { key: 'ginTrashKg', least: shareOf('seedCottonKg', 0.01) },
  { key: 'motesKg', least: shareOf('lintKg', 0.01) },
  { key: 'millWasteKg', least: shareOf('lintKg', 0.02) },
  { key: 'rainInches', least: fixed(2) },
  { key: 'clothSquareMetres', least: shareOf('clothSquareMetres', 0.04) },
  { key: 'patchInches', least: shareOf('patchInches', 0.015) },
];

const mostTold = 6;

/** A difference in a phrase. */
export interface DifferencePhrase {
  /** What it is of; null where it is said without a number. */
  readonly of: OutcomeKey | 'colour' | null;
  readonly text: string;
}
interface Line extends DifferencePhrase {
  readonly weight: number;
}

/** A difference in a phrase, such as 'two bales fewer' or '$11 less a bale'. */
function differenceLine(key: Told, difference: number, words: Words, said: CompareWords, counted: boolean): string {
  const { more, less } = said.differences[key] as DifferenceForms;
  const forms = difference > 0 ? more : less;
  const size = Math.abs(difference);
  const { formats } = words;
  if (key === 'staple32nds' && words.unitSystem === 'metric') {
    const mm = (said.differences.lengthMm as DifferenceForms)[difference > 0 ? 'more' : 'less'];
    return fill(mm.other, { amount: distanceText('lengthMm', (size * 25.4) / 32, words) });
  }
  if (!counted) return fill(forms.other, { amount: distanceText(key, difference, words) });
  const rounded = Math.round(size * 10) / 10;
  return formats.plural(rounded, forms);
}

/** The step from one color grade to another: whole grades of gray and of yellow. */
const colourSteps = (from: string, to: string): number =>
  [0, 1].reduce((sum, place) => sum + Math.abs(Number(from[place]) - Number(to[place])), 0) || 1;

function linesOf({ before, after, difference, colour }: Comparison, words: Words): Line[] {
  const said = compareWords(words.language);
  const { differences } = said;
  const plain = (key: 'noBale' | 'aBale' | 'noCloth' | 'aCloth'): Line => ({
    of: null,
    text: differences[key],
    weight: Number.POSITIVE_INFINITY,
  });
  const [hadBales, hasBales] = [before.bales !== 0, after.bales !== 0];
  if (hadBales !== hasBales) return [plain(hasBales ? 'aBale' : 'noBale')];
  const lines: Line[] = [];
  const [hadCloth, hasCloth] = [before.clothSquareMetres !== 0, after.clothSquareMetres !== 0];
  if (hadCloth !== hasCloth) lines.push(plain(hasCloth ? 'aCloth' : 'noCloth'));
  if (colour.before && colour.after && colour.before !== colour.after) {
    const text = fill(differences.colour, { from: colour.before, to: colour.after });
    lines.push({ of: 'colour', text, weight: 2 * colourSteps(colour.before, colour.after) });
  }
  for (const { key, counted = false, least } of steps) {
    const by = difference[key];
    const step = least(before);
    if (by === null || by === 0 || Math.abs(by) < step || lines.some((line) => line.of === 'bales' && key === 'lintKg'))
      continue;
    // The cloth, its waste and the patch follow when there is none.
    if (hadCloth !== hasCloth && (key === 'clothSquareMetres' || key === 'patchInches' || key === 'millWasteKg'))
      continue;
    const text = differenceLine(key, by, words, said, counted);
    lines.push({ of: key, text, weight: step > 0 ? Math.abs(by) / step : 1 });
  }
  return lines.sort((a, b) => b.weight - a.weight);
}

/**
 * What another decision changed further down the chain, in short phrases: 'two bales fewer', 'one staple longer',
 * 'color 31 → 41', '$11 less a bale'. Most important first, at most six; none where hardly anything changed.
 */
export const changeInWords = (before: Season, after: Season, words: Words): DifferencePhrase[] =>
  linesOf(compareSeasons(before, after), words)
    .slice(0, mostTold)
    .map(({ of, text }) => ({ of, text }));
