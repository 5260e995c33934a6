import type { InkName } from '../../../style/inks.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import type { Mark } from '../../display-list.ts';

/** A piece of indigo laid on the picture, for the one big thing. */
export const padMark = (name: string, { x, y, width, height }: Box, ink: InkName = 'indigo'): Mark =>
  patch(`pad/${name}`, rectangle(x, y, width, height), ink, {
    shadow: 6,
    seam: Math.max(5, Math.min(9, width * 0.03)),
    scissors: { miss: Math.min(2.4, width * 0.008), bow: 0.006 },
  });
