import type { Part } from '../../model/lot.ts';
import type { InkName } from '../../style/inks.ts';

/** What the pictures show: the parts of a lot, and water. */
export type Shown = Part | 'water';

/** The cloth a part is cut from and the thread that sews it. */
export const partCloth: Readonly<Record<Shown, { readonly fill: InkName; readonly thread: InkName }>> = {
  lint: { fill: 'fadedThin', thread: 'mid' },
  seed: { fill: 'walnut', thread: 'thread' },
  burs: { fill: 'madder', thread: 'thread' },
  sticks: { fill: 'weldOnIron', thread: 'thread' },
  leaf: { fill: 'bollGreen', thread: 'thread' },
  motes: { fill: 'spentMadder', thread: 'thread' },
  dirt: { fill: 'iron', thread: 'thread' },
  size: { fill: 'weld', thread: 'ink' },
  finish: { fill: 'faded', thread: 'ink' },
  water: { fill: 'mid', thread: 'thread' },
};
