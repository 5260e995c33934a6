import { linesHeight, linesOf } from '../../cloth/lettering.ts';
import type { Box } from '../../cloth/point.ts';
import type { Point } from '../../display-list.ts';
import { countBandHeight } from './count-band.ts';

/** Where everything stands in the picture of Planting. */
export interface PlantingPlot {
  readonly width: number;
  readonly height: number;
  readonly box: Box;
  readonly textPx: number;
  readonly soilY: number;
  /** Where the row tape begins, x. */
  readonly rowX: number;
  readonly feet: number;
  /** Along the row, and up the plants: one scale. */
  readonly pxPerInch: number;
  readonly seedY: number;
  /** From a seed's middle to its edge, px; set by the row's spacing when seeds lie close. */
  readonly seedPx: number;
  readonly rowTape: Box;
  readonly heatTape: Box;
  readonly thermometer: Box;
  /** Where the seeds of the whole field are counted on the sky; null where they are counted on the pad. */
  readonly counts: Box | null;
  /** The pad with one seedling large; null on a phone. */
  readonly pad: Box | null;
  /** While the planter crosses: the pad, out of its way; the highest it may reach; where clouds hang from, and the sun. */
  readonly sowing: {
    readonly pad: Box | null;
    readonly skyTop: number;
    readonly cloudY: number;
    readonly sunAt: Point;
  };
  /** Right end of the row in view, x. */
  readonly rowEnd: number;
  /** Highest that a planter or a plant may reach, y. */
  readonly skyTop: number;
  /** Where clouds hang from, y. */
  readonly cloudY: number;
  readonly caption: { readonly lines: readonly string[]; readonly x: number; readonly y: number };
  readonly sun: { readonly at: Point; readonly mostPx: number };
}

/** Height of the strip across the sky, of the text size. */
const STRIP_LINES = 4.6;

interface Captions {
  readonly caption: (feet: number) => string;
  readonly captionShort: (feet: number) => string;
}
/** Feet for measuring a caption before the row is known: as long a number as any. */
const SOME_FEET = 8;
interface Size {
  readonly width: number;
  readonly height: number;
}

const textOf = ({ width, height }: Size): number =>
  width < 460 ? 13 : Math.min(24, Math.max(14, Math.min(width, height) / 28));

/** Heights, and the room of pad and row: they do not hang on how much of the row is in view. */
function levels(size: Size, captions: Captions, feet = SOME_FEET) {
  const { width, height } = size;
  const box: Box = { x: 3, y: 3, width: width - 9, height: height - 10 };
  const right = box.x + box.width;
  const wide = width > height * 1.15;
  const small = width < 460;
  const textPx = textOf(size);
  const tapeHeight = textPx * 2.75;
  const heatTape: Box = {
    x: box.x - 1,
    y: box.y + box.height - tapeHeight - textPx * 0.35,
    width: box.width + 2,
    height: tapeHeight,
  };
  const lines = linesOf((small ? captions.captionShort : captions.caption)(feet), textPx, box.width - textPx * 1.6, {
    italic: true,
  });
  const captionTop = heatTape.y - linesHeight(lines.length, textPx) - textPx * 0.45;
  const rowTape: Box = {
    x: box.x - 1,
    y: captionTop - textPx * 2.1,
    width: box.width + 2,
    height: textPx * 1.95,
  };
  // On a small broad picture the planter needs what the strip across the sky leaves it.
  const soilY = box.y + (rowTape.y - box.y) * (!wide ? 0.7 : box.width < 700 ? 0.72 : 0.66);
  const thermometer: Box = { x: box.x + textPx * 0.6, y: box.y - 1, width: textPx * 4.5, height: soilY - box.y + 9 };
  const rowX = thermometer.x + thermometer.width + textPx * 0.4;
  const pad = padBox({ box, textPx, soilY, rowX, wide, small, rowTapeY: rowTape.y });
  const beside = wide && pad !== null;
  return {
    box,
    textPx,
    small,
    heatTape,
    lines,
    captionTop,
    rowTape,
    soilY,
    thermometer,
    rowX,
    pad,
    // Where no pad covers them, the leaves of the last plant stay in the picture.
    rowEnd: beside ? pad.x : right - textPx * 1.6,
    skyTop:
      pad === null
        ? box.y + countBandHeight(textPx) + textPx * 0.6
        : beside
          ? box.y
          : pad.y + pad.height + textPx * 0.6,
  };
}

/** Beside the row on a broad picture, above it on a high one. */
function padBox(room: {
  readonly box: Box;
  readonly textPx: number;
  readonly soilY: number;
  readonly rowX: number;
  readonly wide: boolean;
  readonly small: boolean;
  readonly rowTapeY: number;
}): Box | null {
  const { box, textPx, soilY, rowX, wide, small, rowTapeY } = room;
  if (small) return null;
  const right = box.x + box.width - textPx * 0.5;
  const y = box.y + textPx * 0.55;
  if (!wide) {
    const x = rowX + textPx;
    return { x, y, width: right - x, height: (soilY - box.y) * 0.46 };
  }
  // A small picture gives its words more of itself.
  const width = box.width * (box.width < 700 ? 0.4 : 0.37);
  return { x: right - width, y, width, height: rowTapeY - textPx * 0.7 - y };
}

/** Feet of row in view: as few as let the plants of the last day stand at the row's own scale. */
export function rowFeet(size: Size, mostHeightInches: number, captions: Captions): number {
  const { soilY, skyTop, rowX, rowEnd } = levels(size, captions);
  const mostPxPerInch = (soilY - skyTop) / (mostHeightInches * 1.04 + 2.4);
  return Math.max(2, Math.ceil((rowEnd - rowX) / (12 * mostPxPerInch)));
}

/** Lays out the picture: one plan for a wide box, one for a tall box. */
export function plantingPlot(size: Size, feet: number, captions: Captions): PlantingPlot {
  const { lines, captionTop, small: _, ...room } = levels(size, captions, feet);
  const { box, textPx, soilY, rowTape, rowX, rowEnd, skyTop, pad } = room;
  const depth = rowTape.y - soilY;
  const sunPx = Math.min(box.width, box.height) * (size.width > size.height * 1.15 ? 0.1 : 0.085);
  const countsX = rowX + textPx * 1.1;
  const beside = pad !== null && rowEnd <= pad.x;
  const cloudY = pad && !beside ? pad.y + pad.height - 3 : box.y;
  const sunAt: Point = [rowEnd - sunPx - 6, (pad && !beside ? skyTop : box.y) + sunPx + 6];
  // Beside the row the pad would hide the planter: while it is at work the pad is a strip across the sky, one seed beside its counts.
  const strip: Box | null = beside
    ? { x: rowX + textPx * 0.4, y: pad.y, width: pad.x + pad.width - rowX - textPx * 0.4, height: textPx * STRIP_LINES }
    : null;
  const stripFoot = strip ? strip.y + strip.height : 0;
  return {
    ...room,
    cloudY,
    sowing: strip
      ? {
          pad: strip,
          skyTop: stripFoot + textPx * 0.3,
          cloudY: stripFoot - 3,
          sunAt: [box.x + box.width - sunPx - 6, stripFoot + sunPx + 6],
        }
      : { pad, skyTop, cloudY, sunAt },
    width: size.width,
    height: size.height,
    feet,
    pxPerInch: (rowEnd - rowX) / (feet * 12),
    seedY: soilY + depth * 0.5,
    seedPx: Math.min(depth * 0.13, textPx * 0.95),
    counts: pad
      ? null
      : {
          x: countsX,
          y: box.y + textPx * 0.6,
          width: box.x + box.width - countsX - sunPx * 2 - textPx * 1.4,
          height: countBandHeight(textPx),
        },
    caption: { lines, x: box.x + textPx * 0.8, y: captionTop + textPx * 1.1 },
    sun: {
      at: sunAt,
      mostPx: sunPx,
    },
  };
}
