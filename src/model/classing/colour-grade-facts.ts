import type { FactTable } from '../fact.ts';

interface ColourGrade {
  /** First digit falls with brightness, second rises with yellowness. */
  readonly code: string;
  readonly name: string;
  readonly symbol: string;
}

const group = (digit: number, tail: string, symbolTail: string, from: number, to: number): ColourGrade[] =>
  (
    [
      ['Good Middling', 'GM'],
      ['Strict Middling', 'SM'],
      ['Middling', 'Mid'],
      ['Strict Low Middling', 'SLM'],
      ['Low Middling', 'LM'],
      ['Strict Good Ordinary', 'SGO'],
      ['Good Ordinary', 'GO'],
    ] as const
  )
    .slice(from - 1, to)
    .map(([name, symbol], i) => ({
      code: `${from + i}${digit}`,
      name: `${name}${tail}`,
      symbol: `${symbol}${symbolTail}`,
    }));

/** The 25 official colour grades of upland cotton and the five below grade. Trade terms, the same in every language. */
export const colourGrades: FactTable<ColourGrade> = {
  rows: [
    ...group(1, '', '', 1, 7),
    ...group(2, ' Light Spotted', ' Lt Sp', 1, 6),
    ...group(3, ' Spotted', ' Sp', 1, 6),
    ...group(4, ' Tinged', ' Tg', 2, 5),
    ...group(5, ' Yellow Stained', ' YS', 2, 3),
    ...[1, 2, 3, 4, 5].map((digit) => ({ code: `8${digit}`, name: 'Below Grade', symbol: 'BG' })),
  ],
  unit: 'code',
  source: '7 CFR 28.525, symbols and code numbers',
  mark: 'published',
};
