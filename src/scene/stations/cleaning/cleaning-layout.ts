import type { Box } from '../../cloth/point.ts';
import type { Point } from '../../display-list.ts';
import { hemPx } from '../flow/caption-hem.ts';
import { massOf } from '../flow/flow-input.ts';
import type { CleaningInput, LineKind, LineMachine } from './cleaning-input.ts';

/** Which way the cotton runs: to the right or to the left. */
export type Way = 1 | -1;

export interface PlacedMachine {
  readonly machine: LineMachine;
  readonly box: Box;
  readonly way: Way;
  /** Middle of the band that passes it. */
  readonly bandY: number;
  /** Its part of the trough below; null for a machine that takes no trash. */
  readonly compartment: Box | null;
}

/** Machines in a row, with the trough under them. */
export interface LineRow {
  readonly way: Way;
  readonly bandY: number;
  /** Where the band turns down at the row's end. */
  readonly turnX: number;
  readonly machines: readonly PlacedMachine[];
}

/** Distributor, overflow and feeder, and where the cleaned cotton lands. */
export interface Works {
  readonly way: Way;
  readonly auger: Box;
  readonly hopper: Box;
  /** Middle line of the pipe that brings the overflow back to the head of the distributor. */
  readonly pipe: readonly Point[];
  readonly pipeWide: number;
  readonly feeder: Box;
  readonly pocket: Box;
  readonly bin: Box;
  readonly outPath: readonly Point[];
}

/** Where everything of the scene stands, px. */
export interface CleaningLayout {
  readonly tall: boolean;
  readonly phone: boolean;
  /** Whether accounts are named in a few letters. */
  readonly brief: boolean;
  /** Size of words, and of names and captions beside them, px. */
  readonly text: number;
  readonly small: number;
  readonly pxPerKg: number;
  readonly floorY: number;
  readonly rows: readonly LineRow[];
  readonly works: Works;
  /** Height of the strip under a trough that carries amounts. */
  readonly lipTall: number;
  readonly caption: string;
  readonly slots: Readonly<Record<'in' | 'trash' | 'cleaned' | 'overflow' | 'evaporated', Box>> & {
    /** Null where there is no room to say it. */
    readonly share: Box | null;
  };
}

/** Picture wider than this share of its height is laid out along, else down. */
const WIDE_FROM = 1.15;
const PAD = 8;
/** More machines than this stand in two rows of a tall picture. */
const MOST_IN_ROW = 4;
/** Room along the line that a machine asks for. */
const weights: Readonly<Record<LineKind, number>> = {
  moduleFeeder: 0.72,
  suctionPipe: 0.9,
  dryer: 0.68,
  cylinderCleaner: 1.5,
  stickMachine: 1.3,
};

const box = (x: number, y: number, right: number, bottom: number): Box => ({
  x,
  y,
  width: Math.max(1, right - x),
  height: Math.max(1, bottom - y),
});

interface RowPlace {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly bandY: number;
  readonly trough: readonly [top: number, bottom: number];
  readonly turnX: number;
  readonly way: Way;
}

/** Machines side by side, each with room by its weight, the trough parted half way between those that take trash. */
function layRow(machines: readonly LineMachine[], place: RowPlace): LineRow {
  const { left, right, top, bottom, bandY, trough, turnX, way } = place;
  const total = machines.reduce((sum, { kind }) => sum + weights[kind], 0);
  const tall = bottom - top;
  let at = 0;
  const boxes = machines.map(({ kind }) => {
    const slot = ((right - left) * weights[kind]) / total;
    const middle = way === 1 ? left + at + slot / 2 : right - at - slot / 2;
    at += slot;
    const wide = Math.min(slot * 0.86, tall * weights[kind] * 1.2);
    return box(middle - wide / 2, top, middle + wide / 2, bottom);
  });
  const takers = machines.flatMap(({ took }, i) => (took ? [i] : []));
  const middleOf = (i: number) => boxes[i]!.x + boxes[i]!.width / 2;
  const compartments = new Map<number, Box>();
  const order = [...takers].sort((a, b) => middleOf(a) - middleOf(b));
  order.forEach((i, k) => {
    const before = order[k - 1];
    const after = order[k + 1];
    const from = before === undefined ? boxes[i]!.x - 4 : (middleOf(before) + middleOf(i)) / 2;
    const to = after === undefined ? boxes[i]!.x + boxes[i]!.width + 4 : (middleOf(i) + middleOf(after)) / 2;
    compartments.set(i, box(from, trough[0], to, trough[1]));
  });
  return {
    way,
    bandY,
    turnX,
    machines: machines.map((machine, i) => ({
      machine,
      box: boxes[i]!,
      way,
      bandY,
      compartment: compartments.get(i) ?? null,
    })),
  };
}

/** Distributor and feeder below the line; laid along a way that starts where the line turns down. */
function layWorks(
  width: number,
  y: (share: number) => number,
  rows: {
    readonly pipe: number;
    readonly auger: readonly [number, number];
    readonly feeder: readonly [number, number];
    readonly hopper: number;
    readonly binTop: number;
    readonly pocketTop: number;
  },
  outPx: number,
  way: Way,
): Works {
  const x = (share: number): number => (way === 1 ? share * width : width - share * width);
  const across = (from: number, to: number, top: number, bottom: number): Box =>
    box(Math.min(x(from), x(to)), top, Math.max(x(from), x(to)), bottom);
  const floor = y(rows.feeder[1]);
  const augerTop = y(rows.auger[0]);
  const augerBottom = y(rows.auger[1]);
  const auger = across(0.1, 0.66, augerTop, augerBottom);
  const outY = floor - outPx / 2 - 3;
  const pipeY = y(rows.pipe);
  const hopperBottom = y(rows.hopper);
  const pipeWide = Math.max(11, (augerBottom - augerTop) * 0.72);
  return {
    way,
    auger,
    hopper: across(0.588, 0.672, augerBottom - 2, hopperBottom),
    pipe: [
      [x(0.63), hopperBottom - pipeWide * 0.5],
      [x(0.7), hopperBottom - pipeWide * 0.5],
      [x(0.7), pipeY],
      [x(0.125), pipeY],
      [x(0.125), augerTop + 3],
    ],
    pipeWide,
    feeder: across(0.2, 0.41, y(rows.feeder[0]), floor),
    pocket: across(0.02, 0.165, y(rows.pocketTop), floor),
    bin: across(0.865, 0.985, y(rows.binTop), floor),
    outPath: [
      [x(0.3), outY],
      [x(0.88), outY],
    ],
  };
}

export function layCleaning(input: CleaningInput, captions: { readonly long: string; readonly short: string }) {
  const { width, height } = input.size;
  return width > height * WIDE_FROM ? layWide(input, captions) : layTall(input, captions);
}

type Captions = { readonly long: string; readonly short: string };

function layWide(input: CleaningInput, captions: Captions): CleaningLayout {
  const { width: w, height: h } = input.size;
  const roomy = w >= 700;
  const text = roomy ? 16 : 14;
  const caption = roomy ? captions.long : captions.short;
  const floor = h - hemPx(caption, w, 14);
  const y = (share: number) => share * floor;
  const inPx = Math.min(0.125 * floor, 0.07 * w);
  const pxPerKg = inPx / massOf(input.seedCotton.masses);
  const bandY = y(0.29);
  const row = layRow(input.line, {
    left: (roomy ? 0.15 : 0.192) * w,
    right: 0.885 * w,
    top: y(0.125),
    bottom: y(0.425),
    bandY,
    trough: [y(0.435), y(0.57)],
    turnX: w - 14 - inPx / 2,
    way: 1,
  });
  const outPx = massOf(input.cleaned.masses) * pxPerKg;
  const works = layWorks(
    w,
    y,
    { pipe: 0.614, auger: [0.654, 0.734], feeder: [0.738, 0.97], hopper: 0.83, binTop: 0.755, pocketTop: 0.875 },
    outPx,
    -1,
  );
  return {
    tall: false,
    phone: false,
    brief: true,
    text,
    small: 14,
    pxPerKg,
    floorY: y(0.59),
    rows: [row],
    works,
    lipTall: 19,
    caption,
    slots: {
      in: box(PAD, 8, (roomy ? 0.148 : 0.19) * w, bandY - inPx / 2 - 4),
      trash: box(PAD, bandY + inPx / 2 + 8, (roomy ? 0.148 : 0.19) * w, y(0.58)),
      cleaned: box(PAD, y(0.6), (roomy ? 0.158 : 0.285) * w, y(0.745)),
      overflow: box(0.415 * w, y(0.74), 0.588 * w, floor - outPx - (roomy ? 12 : 2)),
      evaporated: box(0.875 * w, 8, w - 6, bandY - inPx / 2 - 3),
      share: roomy ? box(0.163 * w, y(0.6), 0.287 * w, floor - outPx - 14) : null,
    },
  };
}

function layTall(input: CleaningInput, captions: Captions): CleaningLayout {
  const { width: w, height: h } = input.size;
  const phone = w < 520;
  const text = Math.min(20, Math.max(13, w * 0.02));
  const small = phone ? 13 : Math.max(14, text - 3);
  const caption = phone ? captions.short : captions.long;
  const floor = h - hemPx(caption, w, small);
  const y = (share: number) => share * floor;
  const inPx = (phone ? 0.075 : 0.085) * floor;
  const pxPerKg = inPx / massOf(input.seedCotton.masses);
  const right = w - 10 - inPx / 2;
  const two = input.line.length > MOST_IN_ROW;
  const half = two ? Math.ceil(input.line.length / 2) : input.line.length;
  const names = phone ? 0 : 0.034;
  const first = layRow(input.line.slice(0, half), {
    left: 0.27 * w,
    right: 0.885 * w,
    top: y(0.025 + names),
    bottom: y(two ? 0.205 : 0.31),
    bandY: y(two ? 0.125 : 0.19),
    trough: two ? [y(0.208), y(phone ? 0.288 : 0.272)] : [y(0.32), y(0.415)],
    turnX: right,
    way: 1,
  });
  const rows = two
    ? [
        first,
        layRow(input.line.slice(half), {
          left: 0.33 * w,
          right: 0.885 * w,
          top: y(0.33 + names * 0.4),
          bottom: y(0.488),
          bandY: y(0.42),
          trough: [y(0.493), y(phone ? 0.573 : 0.56)],
          turnX: 10 + inPx / 2,
          way: -1,
        }),
      ]
    : [first];
  const outPx = massOf(input.cleaned.masses) * pxPerKg;
  const works = layWorks(
    w,
    y,
    two
      ? { pipe: 0.624, auger: [0.657, 0.716], feeder: [0.72, 0.97], hopper: 0.783, binTop: 0.77, pocketTop: 0.87 }
      : { pipe: 0.52, auger: [0.56, 0.63], feeder: [0.635, 0.97], hopper: 0.71, binTop: 0.71, pocketTop: 0.85 },
    outPx,
    two ? 1 : -1,
  );
  const x = (share: number): number => (two ? share * w : w - share * w);
  const across = (from: number, to: number, top: number, bottom: number): Box =>
    box(Math.min(x(from), x(to)), top, Math.max(x(from), x(to)), bottom);
  const bandEnd = first.bandY + inPx / 2;
  return {
    tall: true,
    phone,
    brief: phone,
    text,
    small,
    pxPerKg,
    floorY: y(two ? 0.59 : 0.46),
    rows,
    works,
    lipTall: phone ? small * 1.3 : small * 1.4,
    caption,
    slots: {
      in: box(PAD, bandEnd + 4, 0.255 * w, y(two ? 0.303 : 0.362)),
      trash: two
        ? box(10 + inPx + 4, y(0.42) + inPx / 2 + 3, 0.325 * w, y(0.6))
        : box(PAD, y(0.366), 0.255 * w, y(0.5)),
      cleaned: across(0.725, 0.985, y(two ? 0.6 : 0.53), y(two ? 0.762 : 0.7)),
      overflow: across(0.465, 0.845, works.hopper.y + works.hopper.height + 3, floor - outPx - 9),
      evaporated: two ? box(PAD, y(0.31), 0.325 * w, y(0.375)) : box(0.27 * w, y(0.42), 0.7 * w, y(0.488)),
      share: phone ? null : box(PAD + 4, y(0.012), 0.265 * w, first.bandY - inPx / 2 - 3),
    },
  };
}
