import { linesHeight, linesOf } from '../../cloth/lettering.ts';
import type { Box } from '../../cloth/point.ts';
import type { Point } from '../../display-list.ts';

/** Where everything stands in a picture of one plant in its field. */
export interface Plot {
  readonly width: number;
  readonly height: number;
  readonly box: Box;
  /** A phone: fewer words. */
  readonly small: boolean;
  readonly textPx: number;
  readonly soilY: number;
  /** Down to here lies what the roots reach, and its water. */
  readonly rootFloorY: number;
  readonly caption: { readonly lines: readonly string[]; readonly x: number; readonly y: number };
  /** The tape of heat along the foot of the picture. */
  readonly heatTape: Box;
  /** The tape of height beside the plant. */
  readonly heightTape: Box;
  readonly foot: Point;
  /** How far the plant may reach to either side, px. */
  readonly reachPx: number;
  /** The pad with the one big thing. */
  readonly pad: Box;
  readonly sun: { readonly at: Point; readonly mostPx: number };
  /** Clouds hang along the top from one x to another. */
  readonly clouds: { readonly from: number; readonly to: number; readonly depth: number };
}

/** Fractions of the box. */
interface Fractions {
  readonly foot: number;
  readonly padX: number;
  readonly padY: number;
  /** The pad's foot, as a share of the height above the soil. */
  readonly padFoot: number;
  readonly sun: readonly [number, number];
}
const wideFractions: Fractions = { foot: 0.335, padX: 0.575, padY: 0.04, padFoot: 0.965, sun: [0.508, 0.16] };
const tallFractions: Fractions = { foot: 0.335, padX: 0.57, padY: 0.19, padFoot: 0.93, sun: [0.79, 0.095] };

/** Lays out a picture of a plant: one plan for a wide box, one for a tall box. */
export function fieldPlot(size: { readonly width: number; readonly height: number }, caption: string): Plot {
  const { width, height } = size;
  const box: Box = { x: 3, y: 3, width: width - 9, height: height - 10 };
  const wide = width > height * 1.15;
  const small = width < 460;
  const textPx = small ? 13 : Math.min(24, Math.max(14, Math.min(width, height) / 28));
  const fractions = wide ? wideFractions : tallFractions;
  const tapeHeight = textPx * 2.75;
  const bottom = box.y + box.height;
  const heatTape: Box = {
    x: box.x - 1,
    y: bottom - tapeHeight - textPx * 0.35,
    width: box.width + 2,
    height: tapeHeight,
  };
  const lines = linesOf(caption, textPx, box.width - textPx * 1.6, { italic: true });
  const captionHeight = linesHeight(lines.length, textPx);
  const rootFloorY = heatTape.y - captionHeight - textPx * 0.35;
  const soilY = rootFloorY - textPx * 1.7;
  const tapeWidth = textPx * 4.3;
  const padX = box.x + box.width * fractions.padX;
  const padY = box.y + box.height * fractions.padY;
  const sunPx = Math.min(box.width, box.height) * (wide ? 0.1 : 0.085);
  const foot: Point = [box.x + box.width * fractions.foot, soilY + 4];
  const heightTape: Box = { x: box.x + textPx * 0.6, y: box.y - 1, width: tapeWidth, height: soilY - box.y + 9 };
  return {
    width,
    height,
    box,
    small,
    textPx,
    soilY,
    rootFloorY,
    caption: { lines, x: box.x + textPx * 0.8, y: rootFloorY + textPx * 1.05 },
    heatTape,
    heightTape,
    foot,
    reachPx: Math.min(foot[0] - heightTape.x - tapeWidth - textPx * 0.3, padX - 4 - foot[0]),
    pad: {
      x: padX,
      y: padY,
      width: box.x + box.width - padX - textPx * 0.5,
      height: (soilY - box.y) * fractions.padFoot - (padY - box.y),
    },
    sun: {
      at: [wide ? padX - sunPx - 2 : box.x + box.width * fractions.sun[0], box.y + box.height * fractions.sun[1]],
      mostPx: sunPx,
    },
    clouds: {
      from: heightTape.x + tapeWidth + 4,
      to: wide ? padX - 4 : box.x + box.width - 6,
      depth: (soilY - box.y) * (wide ? 0.17 : 0.12),
    },
  };
}
