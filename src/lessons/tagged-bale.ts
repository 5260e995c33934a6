import type { ClassedBale } from '../model/classing/class-bales.ts';
import { pressFacts } from '../model/gin/press-facts.ts';
import type { Season } from '../model/season.ts';

/** A bale of a season with its tag, its weights and what its number leads back to. */
export interface TaggedBale {
  readonly number: number;
  /** The two parts of its tag. */
  readonly ginCode: string;
  readonly running: string;
  readonly netKg: number;
  readonly tareKg: number;
  readonly grossKg: number;
  /** The module it was ginned from, counted from one, and how many the season hauled. */
  readonly module: number;
  readonly modules: number;
  /** All bolls of the field, shared out by the weight of the bales. */
  readonly bolls: number;
  readonly record: ClassedBale;
}

/** Every bale that a season pressed and classed, with its tag. @throws Error when a bale has none */
export function taggedBales({ scenario, field, module, pressing, classing }: Season): TaggedBale[] {
  if (!module || !pressing || !classing) throw new Error('tagged bales: this season pressed no bale');
  const allBolls = field.bollsPerPlant * field.plantsPerAcre * scenario.acres;
  const allKg = pressing.bales.reduce((sum, { netKg }) => sum + netKg, 0);
  return pressing.bales.map(({ number, tag, netKg, tareKg, grossKg }, index) => {
    const record = classing.classed[index];
    if (tag === null || !record) throw new Error(`tagged bales: bale ${number} has no tag`);
    const cut = pressFacts.ginCodeDigits.value;
    return {
      number,
      ginCode: tag.slice(0, cut),
      running: tag.slice(cut),
      netKg,
      tareKg,
      grossKg,
      module: record.module,
      modules: module.moduleCount,
      bolls: (allBolls * netKg) / allKg,
      record,
    };
  });
}
