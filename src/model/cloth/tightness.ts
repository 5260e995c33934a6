import type { WovenConstruction } from './construction.ts';
import { jamming } from './sett.ts';
import { tightnessFacts } from './tightness-facts.ts';

/** 'fits' with round threads; 'tight' only if they are pressed flat; 'jammed' not even then. */
export type Tightness = 'fits' | 'tight' | 'jammed';

/**
 * How closely a construction is woven. Round threads are the strictest geometry: real cloth goes past it, since threads
 * flatten under the reed. A thread's thickness goes with the root of its linear density, so flat threads are finer ones here.
 */
export function tightnessOf(construction: WovenConstruction): Tightness {
  if (!jamming(construction).jammed) return 'fits';
  const thinner = tightnessFacts.flattenedShare.value ** 2;
  const { warpTex, weftTex } = construction;
  const pressed = { ...construction, warpTex: warpTex * thinner, weftTex: weftTex * thinner };
  return jamming(pressed).jammed ? 'jammed' : 'tight';
}
