import type { Box } from '../../cloth/point.ts';
import { slipHeight, slipWidth } from '../../cloth/slot-words.ts';
import { hemPx } from '../flow/caption-hem.ts';
import { massOf, type OutAccount } from '../flow/flow-input.ts';
import type { PrepareId, SpinningScene } from './spinning-input.ts';

/** Where things lie in the spinning mill, px. */
export interface SpinningLayout {
  readonly roomy: boolean;
  readonly text: number;
  readonly pad: number;
  readonly pxPerKg: number;
  /** Middle of the band in the row of machines. */
  readonly rowY: number;
  readonly bandPx: number;
  readonly machines: readonly Box[];
  /** Pockets of the row, one to each machine, with the words beside or below. */
  readonly pockets: readonly Box[];
  readonly wordsBeside: boolean;
  readonly wordsWide: number;
  /** Where the band folds down. */
  readonly foldX: number;
  readonly zone: Box;
  readonly axisY: number;
  /** From the right: back rollers, front rollers, where the fibres have become yarn, where the yarn goes on the package. */
  readonly backX: number;
  readonly nipX: number;
  readonly yarnX: number;
  readonly packageX: number;
  readonly fanPx: number;
  readonly packageBox: Box;
  readonly yarnPocket: Box;
  readonly hardPocket: Box;
}

/** Accounts that a machine of the row gives rise to; drawing takes nothing out. */
export const accountOf: Readonly<Record<PrepareId, OutAccount | null>> = {
  blowroom: 'millTrash',
  card: 'cardStrips',
  comber: 'comberNoil',
  drawing: null,
};

export const captionSize = (text: number, roomy: boolean): number => (roomy ? Math.max(14, text * 0.9) : 13);

/** The row of machines above, the drafting zone below: the band folds down at the right and runs back to the left. */
export function laySpinning(
  { size: { width, height }, machines, inflow, outflow, labels }: SpinningScene,
  caption: string,
): SpinningLayout {
  const wide = width > height * 1.15;
  const roomy = width > 500;
  const text = roomy ? Math.min(22, Math.max(14, width / (wide ? 56 : 46))) : 13;
  const pad = roomy ? Math.max(10, width * 0.014) : 7;
  const total = inflow.reduce((sum, { masses }) => sum + massOf(masses), 0);
  const bandPx = height * (wide ? 0.1 : 0.075);
  const captionPx = hemPx(caption, width, captionSize(text, roomy)) + pad * 0.7;
  const rowTall = height * (wide ? 0.21 : 0.16);
  const rowTop = roomy ? text * 1.2 : 6;
  const rowY = rowTop + rowTall * 0.52;
  const foldX = width - pad - bandPx * 0.75;
  // On a phone what comes in is named under the band, left of the first pocket.
  const first = roomy ? pad * 2 + slipWidth(labels.in('lot'), text, { bold: true }) : width * 0.27;
  const pitch = (foldX - bandPx * 0.5 - first) / machines.length;
  const side = Math.min(rowTall, pitch * (roomy && !wide ? 0.5 : wide ? 0.52 : 0.6));
  const boxes = machines.map((_, i): Box => ({ x: first + i * pitch, y: rowY - side / 2, width: side, height: side }));
  const wordsBeside = roomy && pitch > text * 9;
  const pocketTall = height * (wide ? 0.115 : 0.085);
  const pocketTop = rowY + side / 2 + height * 0.018;
  const pockets = boxes.map(
    ({ x }): Box => ({ x: x - side * 0.06, y: pocketTop, width: side * 1.12, height: pocketTall }),
  );
  const wordsWide = wordsBeside ? pitch - side * 1.12 - 12 : pitch - 6;
  const wordsTall = Math.max(
    0,
    ...machines.flatMap((id) => {
      const account = accountOf[id];
      return account && outflow.some((entry) => entry.account === account)
        ? [slipHeight(labels.out(account, 1), text, wordsWide)]
        : [];
    }),
  );
  const zoneTop = pocketTop + (wordsBeside ? Math.max(pocketTall, wordsTall) : pocketTall + 4 + wordsTall) + pad * 0.7;
  const zone: Box = { x: pad, y: zoneTop, width: width - pad * 2, height: height - captionPx - zoneTop };
  const foot = Math.max(text * (roomy ? 3 : 2.7), zone.height * 0.19);
  const fanPx = (zone.height - foot) * 0.86;
  const axisY = zone.y + zone.height * 0.06 + fanPx / 2;
  const left = zone.x + zone.width * (roomy ? 0.16 : 0.2);
  const right = foldX - bandPx;
  const span = right - left;
  const packageTall = zone.height - foot - pad;
  return {
    roomy,
    text,
    pad,
    pxPerKg: total > 0 ? bandPx / total : 0,
    rowY,
    bandPx,
    machines: boxes,
    pockets,
    wordsBeside,
    wordsWide,
    foldX,
    zone,
    axisY,
    backX: left + span * 0.97,
    nipX: left + span * 0.78,
    yarnX: left + span * 0.56,
    packageX: left,
    fanPx,
    packageBox: {
      x: zone.x + pad,
      y: zone.y + pad * 0.8,
      width: left - zone.x - pad * 1.6,
      height: packageTall,
    },
    yarnPocket: {
      x: zone.x + pad,
      y: zone.y + zone.height - foot + pad * 0.3,
      width: zone.width * (roomy ? 0.2 : 0.27),
      height: foot - pad,
    },
    hardPocket: {
      x: zone.x + zone.width * (roomy ? 0.4 : 0.56),
      y: zone.y + zone.height - foot + pad * 0.3,
      width: zone.width * (roomy ? 0.08 : 0.1),
      height: foot - pad,
    },
  };
}
