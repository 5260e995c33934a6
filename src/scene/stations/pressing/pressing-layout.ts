import type { Box } from '../../cloth/point.ts';
import type { Point } from '../../display-list.ts';
import { hemPx } from '../flow/caption-hem.ts';
import { massOf } from '../flow/flow-input.ts';
import type { PressingInput } from './pressing-input.ts';

/** Where everything of the scene stands, px. */
export interface PressingLayout {
  readonly tall: boolean;
  readonly phone: boolean;
  readonly text: number;
  readonly small: number;
  readonly pxPerKg: number;
  readonly caption: string;
  /** Lower end of the wall. */
  readonly floorY: number;
  readonly slidePath: readonly Point[];
  /** Where damp air goes through the lint: middle of the box across the slide. */
  readonly damp: Point;
  /** The beam over both boxes, and the turntable under them. */
  readonly beam: Box;
  readonly turntable: Box;
  readonly posts: readonly Box[];
  /** The box that is tramped full, and the one that is pressed. */
  readonly trampBox: Box;
  readonly pressBox: Box;
  readonly tramper: { readonly x: number; readonly top: number; readonly foot: number; readonly stroke: number };
  readonly yard: Box;
  /** Null where there is no room for the weights. */
  readonly weights: Box | null;
  readonly card: Box;
  readonly slots: Readonly<Record<'in' | 'water' | 'tramperName' | 'ramName' | 'mark' | 'count', Box>>;
}

/** Picture wider than this share of its height is laid out along, else down. */
const WIDE_FROM = 1.15;
const PAD = 8;

const box = (x: number, y: number, right: number, bottom: number): Box => ({
  x,
  y,
  width: Math.max(1, right - x),
  height: Math.max(1, bottom - y),
});

type Captions = { readonly long: string; readonly short: string };

export function layPressing(input: PressingInput, captions: Captions): PressingLayout {
  const { width, height } = input.size;
  return width > height * WIDE_FROM ? layWide(input, captions) : layTall(input, captions);
}

/** The press in a part of the picture: slide, two boxes between three posts, beam and turntable. */
function layPress(
  input: PressingInput,
  inPx: number,
  x: (share: number) => number,
  y: (share: number) => number,
  columns: {
    readonly tramp: readonly [number, number];
    readonly press: readonly [number, number];
    readonly post: number;
  },
) {
  const { tramp, press, post } = columns;
  const [beamTop, beamBottom] = [y(0.1), y(0.16)];
  const base = y(0.9);
  const boxTop = y(0.4);
  const trampBox = box(x(tramp[0]), boxTop, x(tramp[1]), base);
  const pressBox = box(x(press[0]), boxTop, x(press[1]), base);
  const middle = trampBox.x + trampBox.width / 2;
  const postX = [x(tramp[0]) - post - 3, (x(tramp[1]) + x(press[0]) - post) / 2, x(press[1]) + 3];
  const slideY = boxTop - inPx * 0.62;
  return {
    pxPerKg: inPx / massOf(input.pressed.masses),
    trampBox,
    pressBox,
    beam: box(postX[0]! - 8, beamTop, postX[2]! + post + 8, beamBottom),
    turntable: box(postX[0]! - 4, base + 2, postX[2]! + post + 4, y(0.985)),
    posts: postX.map((left) => box(left, beamTop + 4, left + post, y(0.97))),
    tramper: { x: middle, top: beamBottom, foot: y(0.235), stroke: y(0.16) - y(0) },
    slidePath: [
      [-4, slideY - inPx * 0.75],
      [middle, slideY],
    ] as const,
    slideY,
  };
}

function layWide(input: PressingInput, captions: Captions): PressingLayout {
  const { width: w, height: h } = input.size;
  const roomy = w >= 700;
  const text = roomy ? 16 : 14;
  const caption = roomy ? captions.long : captions.short;
  const floor = h - hemPx(caption, w, 14);
  const y = (share: number) => share * floor;
  const x = (share: number) => share * w;
  const inPx = Math.min(0.125 * floor, 0.07 * w);
  const { slideY, ...press } = layPress(input, inPx, x, y, {
    tramp: roomy ? [0.225, 0.375] : [0.25, 0.39],
    press: roomy ? [0.43, 0.6] : [0.445, 0.6],
    post: Math.max(10, 0.017 * w),
  });
  const left = x(0.655);
  const name = (column: Box): Box => box(column.x - 22, 6, column.x + column.width + 22, y(0.1) - 3);
  return {
    tall: false,
    phone: false,
    text,
    small: 14,
    caption,
    floorY: y(0.8),
    ...press,
    damp: [x(0.1), slideY - inPx * 0.42],
    yard: box(left, y(0.165), w - 10, y(0.53)),
    weights: box(left, y(0.56), w - 10, y(0.98)),
    card: box(PAD, y(0.545), x(roomy ? 0.195 : 0.22), y(0.985)),
    slots: {
      in: box(PAD, slideY + inPx * 0.38, x(0.195), y(0.54)),
      water: box(PAD, 8, x(0.195), slideY - inPx * 1.3),
      tramperName: box(press.tramper.x - 134, 6, press.tramper.x - 10, y(0.1) - 3),
      ramName: name(press.pressBox),
      mark: box(press.pressBox.x - 14, y(0.9), press.pressBox.x + press.pressBox.width + 14, y(0.985)),
      count: box(left, 6, w - 10, y(0.155)),
    },
  };
}

function layTall(input: PressingInput, captions: Captions): PressingLayout {
  const { width: w, height: h } = input.size;
  const phone = w < 520;
  const text = Math.min(20, Math.max(13, w * 0.02));
  const small = phone ? 13 : Math.max(14, text - 3);
  const caption = phone ? captions.short : captions.long;
  const floor = h - hemPx(caption, w, small);
  const part = phone ? 0.62 : 0.66;
  const y = (share: number) => share * floor * part;
  const rest = (share: number) => floor * (part + (1 - part) * share);
  const x = (share: number) => share * w;
  const inPx = Math.min(0.085 * floor, 0.1 * w);
  const { slideY, ...press } = layPress(input, inPx, x, y, {
    tramp: phone ? [0.31, 0.56] : [0.3, 0.53],
    press: phone ? [0.645, 0.94] : [0.62, 0.89],
    post: Math.max(10, 0.022 * w),
  });
  const name = (column: Box): Box => box(column.x - 10, 4, column.x + column.width + 10, y(0.1) - 3);
  const cardRight = phone ? x(0.485) : x(0.31);
  const yardLeft = cardRight + (phone ? 8 : 18);
  const yardRight = phone ? w - 10 : x(0.65);
  return {
    tall: true,
    phone,
    text,
    small,
    caption,
    floorY: y(0.82),
    ...press,
    damp: [x(0.13), slideY - inPx * 0.44],
    yard: box(yardLeft, rest(phone ? 0.36 : 0.24), yardRight, rest(0.97)),
    weights: phone ? null : box(yardRight + 18, rest(0.25), w - 12, rest(0.97)),
    card: box(PAD, rest(phone ? 0.02 : 0.05), cardRight, rest(0.97)),
    slots: {
      in: box(PAD, slideY + inPx * 0.42, x(0.27), y(0.75)),
      water: box(PAD, 6, x(0.27), slideY - inPx * 1.3),
      tramperName: box(press.tramper.x - 160, 4, press.tramper.x - 18, y(0.1) - 3),
      ramName: name(press.pressBox),
      mark: box(press.pressBox.x - 8, y(0.885), press.pressBox.x + press.pressBox.width + 8, y(1.002)),
      count: box(yardLeft, rest(0.04), yardRight, rest(phone ? 0.34 : 0.22)),
    },
  };
}
