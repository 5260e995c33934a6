import { catalogue } from '../model/cloth/catalogue-facts.ts';
import { areaKept } from '../model/cloth/cloth-in-use.ts';
import type { WovenConstruction } from '../model/cloth/construction.ts';
import { relax } from '../model/cloth/crimp.ts';
import { type WashClass, washTable } from '../model/cloth/wash-facts.ts';
import { listedCloth } from './listed-cloths.ts';

/** Cloths that are washed in a lesson: three as they are sold, and one as it leaves the loom. */
export const washedClothIds = ['quilting', 'muslin', 'gauze', 'loomState'] as const;
export type WashedClothId = (typeof washedClothIds)[number];

const washOf = (id: WashedClothId): WashClass => (id === 'loomState' ? 'loomState' : catalogue[id].wash);

/** A cloth before and after its first wash. */
export interface WashedCloth {
  readonly bought: WovenConstruction;
  readonly washed: WovenConstruction;
  /** Percent lost along the warp and across it, and the range that is given for the length. */
  readonly lengthPercent: number;
  readonly widthPercent: number;
  readonly lengthRange: readonly [low: number, high: number];
  /** Weight of the threads of a square meter, g. */
  readonly boughtGrams: number;
  readonly washedGrams: number;
}

/** What a first wash and tumble dry take from a class of cloth: a row of the table of washes. */
export const washRow = (wash: WashClass) => washTable.rows.find((row) => row.wash === wash)!;

/** A cloth of the list washed once: it draws in by the table, and keeps every inch of its thread. */
export function washedCloth(id: WashedClothId): WashedCloth {
  const { construction, gramsPerSquareMetre } = listedCloth(id === 'loomState' ? 'muslin' : id);
  const { lengthPercent, widthPercent, lengthRange } = washRow(washOf(id));
  return {
    bought: construction,
    washed: relax(construction, lengthPercent, widthPercent),
    lengthPercent,
    widthPercent,
    lengthRange,
    boughtGrams: gramsPerSquareMetre,
    washedGrams: gramsPerSquareMetre / areaKept({ length: lengthPercent, width: widthPercent }),
  };
}
