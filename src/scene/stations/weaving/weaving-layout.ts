import type { Box } from '../../cloth/point.ts';
import { hemPx } from '../flow/caption-hem.ts';
import type { WeavingScene } from './weaving-input.ts';

/** Where things lie in the weaving mill, px. */
export interface WeavingLayout {
  readonly roomy: boolean;
  readonly wide: boolean;
  readonly text: number;
  readonly pad: number;
  /** The yarn that comes in, at the height of the warp beam. */
  readonly band: { readonly y: number; readonly px: number };
  /** Where the finished cloth folds down to its pocket. */
  readonly clothX: number;
  /** The loom, or the knitting machine. */
  readonly loom: Box;
  /** The finishing bath, right of the loom. */
  readonly bath: Box;
  readonly zone: Box;
  readonly pockets: readonly { readonly box: Box; readonly words: Box }[];
}

export const captionSize = (text: number, roomy: boolean): number => (roomy ? Math.max(14, text * 0.9) : 13);

/** Yarn, loom and bath in a row above; the cloth seen large below, with its pockets beside or under it. */
export function layWeaving({ size: { width, height } }: WeavingScene, caption: string): WeavingLayout {
  const wide = width > height * 1.15;
  const roomy = width > 500;
  const text = roomy ? Math.min(22, Math.max(14, width / (wide ? 56 : 46))) : 13;
  const pad = roomy ? Math.max(9, width * 0.014) : 6;
  const foot = height - hemPx(caption, width, captionSize(text, roomy)) - pad * 0.6;
  const rowTall = height * (wide ? 0.4 : roomy ? 0.29 : 0.32);
  const bandPx = height * (wide ? 0.1 : 0.075);
  const loomX = width * (roomy ? 0.3 : 0.27);
  const loom: Box = { x: loomX, y: pad, width: width * (roomy ? 0.44 : 0.47), height: rowTall - pad };
  const bathX = loom.x + loom.width + width * 0.025;
  const bath: Box = { x: bathX, y: pad, width: width - pad - bathX, height: rowTall - pad };
  const top = rowTall + pad * 0.8;
  const pocketsTall = height * (roomy ? 0.145 : 0.25);
  const zone: Box = wide
    ? { x: pad, y: top, width: width * (width < 700 ? 0.64 : 0.66) - pad, height: foot - top }
    : { x: pad, y: top, width: width - pad * 3 - bandPx, height: foot - top - pocketsTall - pad };
  const words = text * (roomy ? 1.7 : 2.95);
  const column: Box = wide
    ? { x: zone.x + zone.width + pad, y: top, width: width - pad * 2 - zone.x - zone.width, height: foot - top }
    : { x: pad, y: zone.y + zone.height + pad * 0.7, width: width - pad * 2, height: pocketsTall };
  const pockets = wide ? stackedPockets(column, words, text, pad) : rowPockets(column, words, pad);
  const clothX = wide ? pockets[0]!.box.x + pockets[0]!.box.width * 0.5 : width - pad - bandPx / 2;
  return {
    roomy,
    wide,
    text,
    pad,
    band: { y: loom.y + loom.height * 0.72, px: bandPx },
    clothX,
    loom,
    bath,
    zone,
    pockets,
  };
}

type Pocket = WeavingLayout['pockets'][number];

/** The cloth's pocket above, the two of what is lost side by side below it. */
function stackedPockets({ x, y, width, height }: Box, words: number, text: number, gap: number): Pocket[] {
  const small = text * 2.9;
  const first = (height - gap) * 0.47;
  const half = (width - gap) / 2;
  const lowY = y + first + gap * 0.6;
  const lowTall = height - first - gap * 0.6;
  return [
    { words: { x, y, width, height: words }, box: { x, y: y + words + 3, width, height: first - words - 3 } },
    ...[0, 1].map((i) => ({
      words: { x: x + i * (half + gap), y: lowY, width: half, height: small },
      box: { x: x + i * (half + gap), y: lowY + small + 3, width: half, height: lowTall - small - 3 },
    })),
  ];
}

/** Three side by side: the cloth's the widest, at the right, where its band comes down. */
function rowPockets({ x, y, width, height }: Box, words: number, gap: number): Pocket[] {
  const room = width - 2 * gap;
  let right = x + width;
  return [0.42, 0.29, 0.29].map((share) => {
    const wide = room * share;
    const left = right - wide;
    right = left - gap;
    return {
      words: { x: left, y, width: wide, height: words },
      box: { x: left, y: y + words + 3, width: wide, height: height - words - 3 },
    };
  });
}
