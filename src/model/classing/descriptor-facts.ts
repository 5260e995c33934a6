import type { FactTable } from '../fact.ts';

export interface WordFrom<Word extends string> {
  readonly from: number;
  readonly word: Word;
}
export type UniformityWord = 'veryLow' | 'low' | 'average' | 'high' | 'veryHigh';
export type StrengthWord = 'weak' | 'intermediate' | 'average' | 'strong' | 'veryStrong';
export type MicronaireClass = 'discountLow' | 'base' | 'premium' | 'discountHigh';

/** Uniformity index, whole points after rounding. */
export const uniformityWords: FactTable<WordFrom<UniformityWord>> = {
  rows: [
    { from: 0, word: 'veryLow' },
    { from: 77, word: 'low' },
    { from: 80, word: 'average' },
    { from: 83, word: 'high' },
    { from: 86, word: 'veryHigh' },
  ],
  unit: '%',
  source: 'instrument maker: measurement principles, uniformity table (AMS says intermediate for average, from memory)',
  mark: 'published',
};

/** Strength at 1/8 inch gauge, whole grams per tex after rounding. */
export const strengthWords: FactTable<WordFrom<StrengthWord>> = {
  rows: [
    { from: 0, word: 'weak' },
    { from: 24, word: 'intermediate' },
    { from: 26, word: 'average' },
    { from: 29, word: 'strong' },
    { from: 31, word: 'veryStrong' },
  ],
  unit: 'g/tex',
  source: 'Australian Classing Services, Fibre Strength: 23 and below, 24-25, 26-28, 29-30, 31 and above',
  mark: 'published',
};

/** Micronaire market classes, tenths after rounding. */
export const micronaireClasses: FactTable<WordFrom<MicronaireClass>> = {
  rows: [
    { from: 0, word: 'discountLow' },
    { from: 3.5, word: 'base' },
    { from: 3.7, word: 'premium' },
    { from: 4.3, word: 'base' },
    { from: 5, word: 'discountHigh' },
  ],
  unit: 'micronaire',
  source:
    'USDA 1995 in the glossary of the 2000 Cotton Performance Tests, Texas A&M Lubbock; FSA upland loan release 2021',
  mark: 'published',
};
