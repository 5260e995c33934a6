import { dimension } from '../cloth/dimension.ts';
import { flatThreads } from '../cloth/flat-threads.ts';
import { lettered } from '../cloth/lettering.ts';
import { patch } from '../cloth/patch.ts';
import { boundsOf, place, rectangle } from '../cloth/point.ts';
import { runningStitches } from '../cloth/running-stitch.ts';
import { type DisplayList, group, type Mark, type Point, type Stitch } from '../display-list.ts';
import { type PulledStrip, stripAsCut, stripPulled } from './strip-pull.ts';

export interface CutStrips {
  readonly width: number;
  readonly fromWarp: number;
  readonly angle: number;
  readonly stretchPercent: number;
  readonly labels: {
    readonly selvage: string;
    readonly warp: string;
    readonly weft: string;
    readonly asCut: string;
    readonly pulled: string;
  };
}

const LETTER_PX = 16;
/** Room for the line of words under the cloth. */
const UNDER_PX = LETTER_PX + 4;
const MARGIN = 6;
const SELVAGE_PX = 9;
const narrowBelow = 430;

const shape = (width: number) => {
  const stacked = width < narrowBelow;
  const cloth = stacked ? Math.min(230, width * 0.66) : width * 0.36;
  return { stacked, cloth, head: LETTER_PX + 10 };
};

/** Height that goes with a width, px. */
export const cutStripsHeight = (width: number): number => {
  const { stacked, cloth, head } = shape(width);
  return Math.round(stacked ? cloth + head * 2 + UNDER_PX + 196 : Math.max(cloth + head * 2, 226));
};

/** A piece of cloth off the bolt, warp upright between its selvages, with the strip chalked on; beside it the strip as cut and pulled. */
export function cutStrips({ width, fromWarp, angle, stretchPercent, labels }: CutStrips): DisplayList {
  const { stacked, cloth, head } = shape(width);
  const box = { x: MARGIN + 2, y: head, size: cloth - MARGIN };
  const pitch = 9;
  const upright: Stitch[] = [];
  const level: Stitch[] = [];
  for (let at = pitch; at < box.size - 3; at += pitch) {
    if (at > SELVAGE_PX && at < box.size - SELVAGE_PX)
      upright.push([box.x + at, box.y + 3, box.x + at, box.y + box.size - 3]);
    level.push([box.x + 3, box.y + at, box.x + box.size - 3, box.y + at]);
  }
  const selvages = [3, 6, 9].flatMap((at): Stitch[] => [
    [box.x + at, box.y + 2, box.x + at, box.y + box.size - 2],
    [box.x + box.size - at, box.y + 2, box.x + box.size - at, box.y + box.size - 2],
  ]);
  const long = box.size * 0.7;
  const middle: Point = [box.x + box.size / 2, box.y + box.size / 2];
  const strip = place(rectangle(-long / 2, -long / 9, long, long / 4.5), {
    x: middle[0],
    y: middle[1],
    // The warp stands upright; the strip leans from it.
    turn: -Math.PI / 2 + fromWarp,
  });
  const words = (text: string, at: Point, anchor: 'start' | 'end' | 'middle' = 'start', bold = true): Mark[] =>
    lettered([text], at, { size: LETTER_PX, ink: 'ink', anchor, bold });
  const right = stacked ? { x: MARGIN, width: width - MARGIN * 2 } : { x: cloth + 22, width: width - cloth - 32 };
  const top = stacked ? box.y + box.size + head + UNDER_PX : head - 6;
  const lengthPx = right.width / 1.42;
  const pull = { length: lengthPx, width: lengthPx / 4.5, fromWarp, pitchPx: 8, angle, stretchPercent };
  const cut = stripAsCut(pull);
  const pulled = stripPulled(pull);
  const box0 = boundsOf(pulled.outline);
  const secondTop = top + LETTER_PX + 8 + pull.width + 34;
  const longer = lengthPx * (1 + stretchPercent / 100);
  const rule = secondTop + 4 + Math.max(box0.height, 20) + 16;
  return [
    patch('lesson/bolt', rectangle(box.x, box.y, box.size, box.size), 'muslin', { shadow: 4, seam: 0, grain: null }),
    group('weft', [flatThreads(level, 'weldOnIron', 1)], level.length),
    group('warp', [flatThreads(upright, 'mid', 1.2)], upright.length),
    flatThreads(selvages, 'mid', 2.2),
    patch('lesson/laid', strip, 'weldPale', { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' }),
    flatThreads(runningStitches(strip, 'lesson/chalk', { on: 7, off: 5 }), 'madder', 2),
    ...words(labels.selvage, [box.x, head - 9], 'start', false),
    ...words(`${labels.warp} ↕  ${labels.weft} ↔`, [box.x, box.y + box.size + UNDER_PX], 'start', false),
    ...words(labels.asCut, [right.x, top + 4]),
    ...stripMarks('cut', cut, [right.x, top + LETTER_PX + 2]),
    ...words(labels.pulled, [right.x, secondTop - 8]),
    ...stripMarks('pulled', pulled, [right.x - box0.x, secondTop + 4 - box0.y]),
    ...dimension([right.x, rule], [right.x + lengthPx, rule], '', { ink: 'ink', size: LETTER_PX }),
    ...dimension([right.x, rule + 13], [right.x + longer, rule + 13], '', { ink: 'madder', size: LETTER_PX }),
  ];
}

function stripMarks(name: string, { warp, weft, outline }: PulledStrip, [dx, dy]: Point): Mark[] {
  const moved = (stitches: readonly Stitch[]) =>
    stitches.map(([x0, y0, x1, y1]): Stitch => [x0 + dx, y0 + dy, x1 + dx, y1 + dy]);
  const piece = outline.map(([x, y]): Point => [x + dx, y + dy]);
  return [
    patch(`lesson/strip/${name}`, piece, 'weldPale', { shadow: 2.6, seam: 0, grain: null, scissors: 'asDrawn' }),
    group(`${name}/weft`, [flatThreads(moved(weft), 'weldOnIron', 1)], weft.length),
    group(`${name}/warp`, [flatThreads(moved(warp), 'mid', 1.2)], warp.length),
  ];
}
