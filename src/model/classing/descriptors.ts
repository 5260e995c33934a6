import type { FactTable } from '../fact.ts';
import {
  type MicronaireClass,
  micronaireClasses,
  type StrengthWord,
  strengthWords,
  type UniformityWord,
  uniformityWords,
  type WordFrom,
} from './descriptor-facts.ts';

/** The last row at or below a value. */
function wordOf<Word extends string>(table: FactTable<WordFrom<Word>>, value: number): Word {
  let word = table.rows[0]!.word;
  for (const row of table.rows) if (value >= row.from) word = row.word;
  return word;
}

export const uniformityWord = (percent: number): UniformityWord => wordOf(uniformityWords, Math.round(percent));
export const strengthWord = (gPerTex: number): StrengthWord => wordOf(strengthWords, Math.round(gPerTex));
export const micronaireClass = (micronaire: number): MicronaireClass =>
  wordOf(micronaireClasses, Math.round(micronaire * 10) / 10);
