import type { DisplayList, Point } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import type { GinningInput } from './ginning-input.ts';
import type { GinningLayout } from './ginning-layout.ts';

/** The marks of a stand: what stands still below the cotton, what turns, and what the cotton passes under. */
export interface StandArtMarks {
  readonly under: DisplayList;
  /** Outline whose shadow lies still while the wheel turns. */
  readonly shadowed: readonly Point[];
  readonly parts: readonly MovingPart[];
  readonly over: DisplayList;
}
export type StandArt = (input: GinningInput, layout: GinningLayout) => StandArtMarks;
