import type { Mark } from '../display-list.ts';

/** Shapes that a sewn thing is cut as; a quilt is drawn in its layers instead. */
export const pieceShapes = ['shirt', 'tee', 'skirt', 'jeans', 'apron', 'square', 'tote', 'sheet', 'bolt'] as const;
export type PieceShape = (typeof pieceShapes)[number];

/** Width and length, inches. */
export type Inches = readonly [width: number, length: number];

/** What is drawn of the cloth: a quilt in three layers, or a piece laid on the cloth it is cut from. */
export type DrawnCloth =
  | { readonly kind: 'quilt'; readonly top: Inches; readonly batting: Inches; readonly backing: Inches }
  | { readonly kind: 'piece'; readonly shape: PieceShape; readonly finished: Inches; readonly cloth: Inches };

/** A mass with its name and amount, already in words. */
export interface Weighed {
  readonly kg: number;
  readonly name: string;
  readonly text: string;
}

/** All that the picture of a trace shows: plain numbers, and words already translated. */
export interface TraceDrawing {
  /** How many times their usual size the letters have: more at the back of a room. */
  readonly letters: number;
  readonly title: string;
  readonly cloth: DrawnCloth;
  /** How many of it are made, in words; empty for one. */
  readonly many: string;
  readonly clothTags: readonly { readonly name: string; readonly text: string }[];
  readonly layers: { readonly top: string; readonly batting: string; readonly backing: string };
  /** Inches in one stitch of the cloth's rule, and what is said of it. */
  readonly clothRule: { readonly inches: number; readonly text: string };
  readonly masses: {
    readonly cloth: Weighed;
    /** Nothing for what has no batting. */
    readonly batting: Weighed | null;
    readonly yarn: Weighed;
    readonly lint: Weighed;
    readonly seed: Weighed;
    readonly seedParts: readonly Weighed[];
    readonly ginWaste: Weighed;
    readonly seedCotton: Weighed;
  };
  readonly lost: string;
  readonly massRule: { readonly kg: number; readonly text: string };
  readonly bolls: {
    readonly count: number;
    /** Bolls that one drawn stands for. */
    readonly each: number;
    readonly text: string;
    readonly scale: string;
  };
  readonly field: {
    readonly squareFeet: number;
    readonly rowFeet: number;
    readonly text: string;
    readonly scale: string;
    /** Feet that the rule of the field measures. */
    readonly ruleFeet: number;
    readonly familiar: { readonly feet: readonly [width: number, length: number]; readonly text: string };
    readonly plants: { readonly count: number; readonly each: number; readonly text: string; readonly scale: string };
  };
  readonly water: {
    readonly scale: string;
    readonly rain: { readonly feet: number; readonly text: string };
    readonly irrigation: { readonly feet: number; readonly text: string };
  };
}

/** One part of the tall picture, laid out from a top edge down. */
export interface Stretch {
  readonly marks: Mark[];
  readonly height: number;
}

/** Size of the words on a picture so wide, px. */
export const wordsPx = ({ letters }: Pick<TraceDrawing, 'letters'>, width: number): number =>
  letters * (width < 460 ? 13.5 : width < 760 ? 15.5 : 18);
