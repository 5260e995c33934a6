import { weaveTable } from './weave-facts.ts';

/** Weaves by name: plain; twill is the 3/1 of denim and drill; sateen is of five ends. */
export const weaveIds = ['plain', 'twill', 'twill21', 'twill22', 'sateen'] as const;
export type WeaveId = (typeof weaveIds)[number];

/** Threads in one repeat, and how often a thread changes side in it. */
interface Weave {
  readonly repeat: number;
  readonly intersections: number;
}
const weaves: Readonly<Record<WeaveId, Weave>> = weaveTable.weaves;

/** The repeat of a weave. */
export const weaveOf = (id: WeaveId): Weave => weaves[id];

/** How tightly a weave interlaces against plain cloth: 1 for plain, 0.5 for a four-thread twill. */
export const interlacing = (id: WeaveId): number => weaves[id].intersections / weaves[id].repeat;
