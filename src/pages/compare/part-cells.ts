import type { TakenApart } from '../../compare/what-made-the-difference.ts';
import { fill } from '../../language/fill.ts';
import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { OutcomeKey } from '../../model/season-outcomes.ts';
import type { WorkingSource } from '../../ui/working-source.ts';
import { differencePrinted, outcomePrinted } from '../../workings/outcome-style.ts';
import type { Printed, Step } from '../../workings/working.ts';
import { workingSource } from '../season/working-source.ts';
import { changeKey, changeText } from './change-text.ts';
import { compareWords } from './compare-words.ts';
import { signedText } from './outcome-text.ts';

/** A number of the table of parts, and how it was come by; nothing to open where it is a dash. */
interface PartCell {
  readonly text: string;
  readonly source: WorkingSource | undefined;
}

interface PartCells {
  readonly parts: readonly { readonly inTurn: PartCell; readonly alone: PartCell }[];
  readonly together: PartCell;
  readonly whole: PartCell;
  readonly wholeAlone: PartCell;
}

/**
 * The numbers of the table of parts with their steps: the seasons run on the way, and sums of what stands above.
 * @param season the second of the two seasons
 */
export function partCells(apart: TakenApart, outcome: OutcomeKey, season: Season, words: Words): PartCells {
  const { apart: said } = compareWords(words.language);
  const line = (label: string, value: Printed, at: 'run' | 'above'): Step => ({ name: { label }, value, from: { at } });
  const ran = (label: string, value: number | null): Step[] =>
    value === null ? [] : [line(label, outcomePrinted(outcome, value), 'run')];
  const difference = (label: string, value: number | null): Step[] =>
    value === null ? [] : [line(label, differencePrinted(outcome, value), 'above')];
  const cell = (value: number | null, at: string, name: string, steps: readonly Step[]): PartCell => {
    const text = signedText(outcome, value, words);
    const asked = { topic: 'seen', at: `apart/${outcome}/${at}`, text, steps } as const;
    return { text, source: value === null ? undefined : workingSource(season, words, asked, name) };
  };
  const named = apart.parts.map((part) => ({ ...part, name: changeText(part.change, words) }));
  const ofTurns = named.flatMap(({ name, inTurn }) => difference(name, inTurn[outcome]));
  const ofAlone = named.flatMap(({ name, alone }) => difference(name, alone[outcome]));
  const whole = apart.whole[outcome];
  return {
    parts: named.map(({ change, name, inTurn, alone, outcomes }) => ({
      inTurn: cell(inTurn[outcome], `${changeKey(change)}/turn`, `${name}, ${said.inTurn}`, [
        ...ran(said.before, outcomes.before[outcome]),
        ...ran(fill(said.with, { change: name }), outcomes.after[outcome]),
      ]),
      alone: cell(alone[outcome], `${changeKey(change)}/alone`, `${name}, ${said.alone}`, [
        ...ran(said.first, apart.first[outcome]),
        ...ran(fill(said.with, { change: name }), outcomes.alone[outcome]),
      ]),
    })),
    together: cell(apart.together[outcome], 'together', said.together, [...difference(said.whole, whole), ...ofAlone]),
    whole: cell(whole, 'whole/turn', `${said.whole}, ${said.inTurn}`, ofTurns),
    wholeAlone: cell(whole, 'whole/alone', `${said.whole}, ${said.alone}`, [
      ...ofAlone,
      ...difference(said.together, apart.together[outcome]),
    ]),
  };
}
