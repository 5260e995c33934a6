import type { StationId } from '../../model/station.ts';
import { linesOf } from '../cloth/lettering.ts';
import { patch } from '../cloth/patch.ts';
import { type Box, rectangle } from '../cloth/point.ts';
import { letter, slotIn } from '../cloth/slot-words.ts';
import { type DisplayList, group, type Mark } from '../display-list.ts';
import type { BlockState } from '../quilt/block-marks.ts';
import type { ClothLook } from '../stations/sewing/cut-patch.ts';
import { cardPatch } from './card-patch.ts';
import { cardQuilt } from './card-quilt.ts';

/** What a season's card says: plain numbers, and words already translated. */
export interface SeasonCard {
  /** What this page is, and whose farm: 'Season card of an invented farm'. */
  readonly kind: string;
  /** The farm's name, as somebody typed it. */
  readonly name: string;
  /** Where, how large, which season, whose weather. */
  readonly setting: string;
  /** The one fact: what one boll made, or where the season stopped. */
  readonly headline: string;
  /** The patch of one boll; null where no cloth was made. */
  readonly patch: { readonly inches: number; readonly cloth: ClothLook; readonly seamInches: number } | null;
  /** What is said under the patch at true size and at half size, and the length of one mark of its ruler, inches. */
  readonly size: { readonly trueSize: string; readonly halfSize: string; readonly markInches: number };
  readonly figures: readonly { readonly label: string; readonly text: string }[];
  readonly stateOf: (station: StationId) => BlockState;
  readonly stations: Readonly<Record<StationId, string>>;
  /** Where every pound went, in a line or two. */
  readonly closing: readonly string[];
  readonly linkWords: string;
  readonly link: string;
}

/** The card's size, CSS px: 7.3 by 10.1 inches, which both US Letter and A4 hold inside margins of a centimeter. */
export const cardSize = { width: 700, height: 968 } as const;

const edge = 22;
const inner: Box = { x: edge, y: edge, width: cardSize.width - 2 * edge, height: cardSize.height - 2 * edge };
const headHeight = 118;
const gap = 12;
const fewestQuiltPx = 168;
const mostQuiltPx = 300;
const figurePx = 38;
const closing = { size: 12.5, line: 14.5 };
const linkType = { size: 11.5, line: 13 };

/** A word without a space, such as an address, cut wherever a line is full. */
function cutLines(text: string, size: number, width: number): string[] {
  // Narrow letters make up for wide ones over a line; a mean of the text face, rounded up.
  const letters = Math.max(1, Math.floor(width / (size * 0.52)));
  return Array.from({ length: Math.ceil(text.length / letters) }, (_, i) => text.slice(i * letters, (i + 1) * letters));
}

/** A text short enough for its line: names may be any length, and need not have spaces. */
function shortened(text: string, size: number, width: number): string {
  const [first = '', ...rest] = cutLines(text, size, width);
  return rest.length > 0 ? `${first.slice(0, -1)}…` : first;
}

/** Mean advance of a letter of the display face, as a share of its size, rounded up. */
const displayWide = 0.5;
const largestDisplay = 32;
const leastDisplay = 21;

/** The headline on one line while that keeps it large; a long one, such as why a crop failed, on up to three smaller ones. */
function headlineMarks(text: string): Mark[] {
  const { x, y, width } = inner;
  const oneLine = Math.min(largestDisplay, width / (text.length * displayWide));
  const size =
    oneLine >= leastDisplay ? oneLine : text.length * displayWide * leastDisplay < 2 * width ? leastDisplay : 15;
  // The breaking rule counts letters of the text face; those of the display face are wider.
  const lines = oneLine >= leastDisplay ? [text] : linesOf(text, size, width / 1.1);
  return lines.slice(0, 3).map((line, i) => ({
    kind: 'text',
    text: line,
    x,
    y: y + 22 + size * 0.82 + i * size * 1.1,
    size,
    ink: 'indigo',
    anchor: 'start',
    display: true,
  }));
}

function headMarks({ kind, name, setting, headline }: SeasonCard): Mark[] {
  const { x, y, width } = inner;
  const line = (text: string, from: number, style: { size: number; italic?: boolean; bold?: boolean }): Mark[] =>
    letter(text, slotIn({ x, y: y + from, width, height: style.size * 1.4 }), style);
  return [
    ...line(kind, 0, { size: 14, italic: true }),
    ...headlineMarks(headline),
    ...line(shortened(name, 18, width), 70, { size: 18, bold: true }),
    ...line(setting, 92, { size: 14 }),
  ];
}

/** Figures one below the other, each under its name; a row of stitches between. */
function figureMarks(figures: SeasonCard['figures'], { x, y: top, width }: Box): Mark[] {
  return figures.flatMap(({ label, text }, i): Mark[] => {
    const y = top + i * figurePx;
    const stitches = Array.from({ length: 12 }, (_, at) => {
      const from = x + (at * width) / 12;
      return [from, y - 2, from + width / 20, y - 2] as const;
    });
    return [
      ...letter(label, slotIn({ x, y, width, height: 16 }), { size: 12.5, italic: true }),
      ...letter(text, slotIn({ x, y: y + 14, width, height: figurePx - 16 }), { size: 16, bold: true }),
      ...(i === 0 ? [] : [{ kind: 'stitches', stitches, ink: 'walnut', width: 0.9, flat: true } as const]),
    ];
  });
}

/** The lines at the foot: where it all went, then the link. */
function closingLines(card: SeasonCard) {
  return {
    lines: card.closing.flatMap((text) => linesOf(text, closing.size, inner.width / 0.95)),
    link: [card.linkWords, ...cutLines(card.link, linkType.size, inner.width)],
  };
}

function closingMarks({ lines, link }: ReturnType<typeof closingLines>, top: number): Mark[] {
  const text = (said: string, y: number, size: number, bold = false): Mark => ({
    kind: 'text',
    text: said,
    x: inner.x,
    y,
    size,
    ink: 'ink',
    anchor: 'start',
    ...(bold ? { bold } : {}),
  });
  const linkTop = top + lines.length * closing.line + 6;
  return [
    ...lines.map((line, i) => text(line, top + (i + 0.8) * closing.line, closing.size)),
    ...link.map((line, i) => text(line, linkTop + (i + 0.8) * linkType.line, linkType.size, i === 0)),
  ];
}

/** One season on one page, to be painted as SVG, on paper and as a picture alike. */
export function seasonCard(card: SeasonCard): DisplayList {
  const ground = patch('card/ground', rectangle(4, 4, cardSize.width - 10, cardSize.height - 10), 'lint', {
    shadow: 0,
    seam: 7,
    grain: null,
    scissors: { miss: 1.4, snip: 120, bow: 0.002 },
  });
  const foot = closingLines(card);
  const footHeight = foot.lines.length * closing.line + foot.link.length * linkType.line + 6;
  const closingTop = inner.y + inner.height - footHeight;
  const top = inner.y + headHeight;
  const figuresHeight = card.figures.length * figurePx;
  // The patch has the room that the least quilt leaves; what it does not need, the quilt gets.
  const room = closingTop - top - fewestQuiltPx - 2 * gap;
  const made = card.patch && cardPatch(card.patch, card.size, { x: inner.x, y: top, width: inner.width, height: room });
  const quiltTop = top + Math.max(made?.height ?? 0, figuresHeight) + gap;
  const quiltHeight = Math.max(fewestQuiltPx, Math.min(mostQuiltPx, closingTop - quiltTop - gap));
  const figuresX = inner.x + (made ? made.width + 34 : 0);
  return [
    ground,
    group('head', headMarks(card)),
    group('patch', made?.marks ?? []),
    group(
      'figures',
      figureMarks(card.figures, {
        x: figuresX,
        y: top - 4,
        width: inner.x + inner.width - figuresX,
        height: figuresHeight,
      }),
    ),
    group(
      'quilt',
      cardQuilt({ x: inner.x, y: quiltTop, width: inner.width, height: quiltHeight }, card.stateOf, card.stations),
    ),
    group('closing', closingMarks(foot, closingTop)),
  ];
}
