import { needleTable } from './facts.ts';

/** Needle sizes and cotton thread numbers for a weight of cloth; null thread numbers mean "fine thread". */
export type NeedleHint = Pick<(typeof needleTable.rows)[number], 'weight' | 'needles' | 'threadNumbers'>;

/** The hint of the machine manuals for a cloth. */
export function needleFor(gramsPerSquareMetre: number): NeedleHint {
  const row = needleTable.rows.find(({ belowGsm }) => belowGsm === null || gramsPerSquareMetre < belowGsm)!;
  const { weight, needles, threadNumbers } = row;
  return { weight, needles, threadNumbers };
}
