import { textWidth } from '../../cloth/letter-widths.ts';
import { linesHeight, linesOf } from '../../cloth/lettering.ts';
import type { Box } from '../../cloth/point.ts';
import { slipHeight } from '../../cloth/slot-words.ts';
import { hemPx } from '../flow/caption-hem.ts';
import type { SewingScene } from './sewing-input.ts';

/** From the needle's slip to the thread's, px. */
export const SLIP_GAP = 5;

/** A spool with a needle before it, and beside them the words of advice. */
export interface Notions extends Box {
  /** Half the spool's height, px. */
  readonly spool: number;
  /** Where the words begin, and how wide they may be, px. */
  readonly wordsX: number;
  readonly wordsWidth: number;
}

/** Where things lie on the sewing table, px. */
export interface SewingLayout {
  readonly wide: boolean;
  /** Room for needle, thread and their advice. */
  readonly roomy: boolean;
  readonly text: number;
  readonly statement: Box;
  readonly measure: number;
  readonly words: number;
  readonly mat: Box;
  readonly notions: Notions | null;
  /** The cloth comes in from the left edge to the cut. */
  readonly band: { readonly y: number; readonly cutX: number; readonly height: number };
  readonly pockets: { readonly main: Box; readonly side: readonly Box[] };
}

/** Lays the table out from fractions of the box: side by side where it is wide, one under the other where it is tall. */
export function laySewing(
  { size: { width, height }, labels, outflow }: SewingScene,
  captionText: string,
): SewingLayout {
  const wide = width > height * 1.15;
  const roomy = width > 500;
  const text = roomy ? Math.min(22, Math.max(14, width / (wide ? 56 : 46))) : 13;
  const pad = roomy ? Math.max(12, width * 0.018) : 8;
  const left = wide ? width * (width < 700 ? 0.36 : 0.315) : width - pad;
  const words = wide ? Math.min(26, left / 10.4) : roomy ? width / 22 : width / 20;
  const measure = words * (wide ? 2.4 : 1.9);
  const statement = {
    x: pad,
    y: pad,
    width: left - pad,
    height: statementTall(labels, words, measure, left - pad - words * 1.2) + words * (wide ? 0.8 : 1.05),
  };
  const foot = height * (wide ? 0.665 : roomy ? 0.79 : 0.66);
  const under = statement.y + statement.height + pad;
  const notionsTall = wide ? foot + pad * 0.6 - under : roomy ? height * 0.12 : 0;
  const notions =
    left > 180
      ? notionsIn(
          { x: pad, y: wide ? under : foot - notionsTall, width: left - pad, height: notionsTall },
          labels,
          text,
        )
      : null;
  const matFoot = wide || !notions ? foot : notions.y - pad * 0.5;
  const mat = wide
    ? { x: left + pad, y: pad, width: width - left - pad * 2, height: matFoot - pad }
    : { x: pad, y: under, width: width - pad * 2, height: matFoot - under };
  const top = foot + text * (roomy ? 1.9 : 3.1) + pad;
  const caption = hemPx(captionText, width, captionSize(text, roomy)) + 4;
  const tall = Math.min(height * 0.12, height - top - pad - caption);
  const cutX = width * 0.37;
  return {
    wide,
    roomy,
    text,
    statement,
    measure,
    words,
    mat,
    notions,
    band: { y: top + 4 + tall / 2, cutX, height: tall },
    pockets: pocketsAt(
      cutX + 34,
      width - pad,
      top - 2,
      height - pad * 0.5 - caption,
      Math.max(1, outflow.length - 1),
      pad,
    ),
  };
}

/** Spools to try, as shares of the largest: beside a smaller one the words have more room. */
const spoolShares = [1, 0.8, 0.65, 0.5];

/** Spool, needle and advice in a box; null where they do not fit, and the table alone has the advice. */
function notionsIn(box: Box, labels: SewingScene['labels'], text: number): Notions | null {
  const most = Math.min(box.height * 0.44, 52, box.width * 0.16);
  if (most < 18) return null;
  for (const share of spoolShares) {
    const spool = most * share;
    const wordsX = box.x + spool * 2.2;
    const wordsWidth = box.x + box.width - wordsX;
    const words = slipHeight(labels.needle, text, wordsWidth) + slipHeight(labels.thread, text, wordsWidth) + SLIP_GAP;
    if (words <= box.height) return { ...box, spool, wordsX, wordsWidth };
  }
  return null;
}

const display = { display: true } as const;
/** Width of the measure, px. */
export const measureWidth = (text: string, size: number): number => textWidth(text, size, display);

export const captionSize = (text: number, roomy: boolean): number => (roomy ? Math.max(14, text * 0.9) : 13);

/** Where the words after the measure stand: beside it on one or two lines, or below it where they do not fit. */
export function afterWords(
  { measure: number, after }: SewingScene['labels'],
  words: number,
  measure: number,
  width: number,
) {
  const room = width - measureWidth(number, measure) - words * 0.4;
  const lines = linesOf(after, words, Math.max(room, 1), display);
  const fits = lines.length <= 2 && lines.every((line) => textWidth(line, words, display) <= room);
  return fits ? { beside: true, lines } : { beside: false, lines: linesOf(after, words, width, display) };
}

/** The statement's own height: words, the measure, and the words after it where they stand below. */
function statementTall(labels: SewingScene['labels'], words: number, measure: number, width: number): number {
  const before = linesHeight(linesOf(labels.before, words, width, display).length, words);
  const after = afterWords(labels, words, measure, width);
  return (
    before +
    (after.beside
      ? Math.max(measure, linesHeight(after.lines.length, words) + words * 0.3)
      : measure + linesHeight(after.lines.length, words))
  );
}

/** The cut pieces get the big pocket, next to the cut; whatever else there is the small ones beyond it. */
function pocketsAt(left: number, right: number, top: number, bottom: number, sides: number, gap: number) {
  const wide = right - left;
  const small = (wide * 0.36) / sides;
  const height = bottom - top;
  return {
    main: { x: left, y: top, width: wide * 0.64 - gap, height },
    side: Array.from(
      { length: sides },
      (_, i): Box => ({ x: left + wide * 0.64 + i * small, y: top, width: small - (i + 1 < sides ? gap : 0), height }),
    ),
  };
}
