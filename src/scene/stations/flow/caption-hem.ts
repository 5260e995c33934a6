import { linesHeight, linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { rectangle } from '../../cloth/point.ts';
import { letter } from '../../cloth/slot-words.ts';
import type { Mark } from '../../display-list.ts';

/** Height of the hem, px: as many lines as its words need, two at most. */
export const hemPx = (text: string, width: number, textPx: number): number =>
  textPx * 0.6 + linesHeight(Math.min(2, linesOf(text, textPx, width - 20, { italic: true }).length), textPx);

/** The hem at the foot of a picture: plain cloth on which stands what its pieces are worth and how its parts move. */
export function captionHem(
  name: string,
  text: string,
  size: { width: number; height: number },
  textPx: number,
): Mark[] {
  const { width, height } = size;
  const tall = hemPx(text, width, textPx);
  const top = height - tall;
  return [
    patch(`${name}/hem`, rectangle(-4, top, width + 8, tall + 4), 'calico', {
      shadow: 1.2,
      seam: 0,
      scissors: { miss: 1.2, snip: 120, bow: 0.001 },
    }),
    ...letter(
      text,
      { x: 10, y: top + 3, width: width - 20, height: tall - 5, anchor: 'start', stands: 'middle' },
      { size: textPx, italic: true, ink: 'walnut' },
    ),
  ];
}
