import { type StandardCode, standardCodes } from '../../lessons/standards.ts';
import type { Plan } from './plan.ts';
import { type MaterialId, materialIds, type Stop } from './stop.ts';
import { stopOf } from './stop-list.ts';

/** What a plan asks for beside time. */
export interface PlanNeeds {
  readonly materials: readonly MaterialId[];
  /** Glossary ids, in the order in which the plan meets them. */
  readonly vocabulary: readonly string[];
  readonly standards: readonly StandardCode[];
}

/** Materials, words and standards of a plan's stops, each once. */
export function planNeeds({ stops }: Plan): PlanNeeds {
  const all = stops.flatMap(({ id }) => stopOf(id) ?? []);
  const used = <Item>(known: readonly Item[], of: (stop: Stop) => readonly Item[]) =>
    known.filter((item) => all.some((stop) => of(stop).includes(item)));
  return {
    materials: used(materialIds, ({ materials }) => materials),
    vocabulary: [...new Set(all.flatMap(({ vocabulary }) => vocabulary))],
    standards: used(standardCodes, ({ standards }) => standards),
  };
}
