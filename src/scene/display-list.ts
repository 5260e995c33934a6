import type { InkName } from '../style/inks.ts';

/** A point in scene pixels: x to the right, y down. */
export type Point = readonly [x: number, y: number];
/** One stitch: from, to. A stitch of no length is a knot: a dot as wide as its thread. */
export type Stitch = readonly [x0: number, y0: number, x1: number, y1: number];
/** How high a piece lies above the cloth, px of hard shadow: sewn in, counted piece, laid on, machine, in the hand. */
export type ShadowPx = 0 | 1.2 | 2.6 | 4 | 6;

export interface Stitching {
  readonly stitches: readonly Stitch[];
  readonly ink: InkName;
  readonly width: number;
}

/** A cut piece of cloth. */
export interface PatchMark {
  readonly kind: 'patch';
  readonly points: readonly Point[];
  readonly ink: InkName;
  readonly shadow: ShadowPx;
  readonly stitch?: Stitching;
  /** Thick and thin places of the yarn in the cloth: light and dark threads. */
  readonly grain?: { readonly light: readonly Stitch[]; readonly dark: readonly Stitch[] };
}

/** Stitches on whatever lies beneath. "flat" ones (chalk, veins drawn by hand) cast no shade into the cloth. */
export interface StitchesMark extends Stitching {
  readonly kind: 'stitches';
  readonly flat?: boolean;
}

/** Words. They come in already translated. */
export interface TextMark {
  readonly kind: 'text';
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly ink: InkName;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly italic?: boolean;
  readonly bold?: boolean;
  readonly display?: boolean;
}

/** Marks that show one quantity, named; with how many there are, when they can be counted. */
export interface GroupMark {
  readonly kind: 'group';
  readonly name: string;
  readonly count?: number;
  readonly marks: DisplayList;
}

export type Mark = PatchMark | StitchesMark | TextMark | GroupMark;
/** A picture: marks from the bottom to the top. */
export type DisplayList = readonly Mark[];

export const group = (name: string, marks: DisplayList, count?: number): GroupMark =>
  count === undefined ? { kind: 'group', name, marks } : { kind: 'group', name, count, marks };

/** Every mark of a list, groups opened, in painting order. */
export function* flatMarks(list: DisplayList): Generator<PatchMark | StitchesMark | TextMark> {
  for (const mark of list) {
    if (mark.kind === 'group') yield* flatMarks(mark.marks);
    else yield mark;
  }
}

/** Every group of a list at any depth. */
export function* groupsOf(list: DisplayList): Generator<GroupMark> {
  for (const mark of list) {
    if (mark.kind !== 'group') continue;
    yield mark;
    yield* groupsOf(mark.marks);
  }
}
