import type { InkName } from '../../../style/inks.ts';
import { chanceOf, spread } from '../../cloth/chance.ts';
import { offsetPath } from '../../cloth/offset-path.ts';
import type { Shown } from '../../cloth/part-cloth.ts';
import { patch } from '../../cloth/patch.ts';
import { type LintForm, PIECE_CUTS } from '../../cloth/piece.ts';
import { type Box, pathLength } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark, Point } from '../../display-list.ts';
import type { MovingPiece } from '../../scene-frame.ts';
import { type FlowLegend, type Masses, shownParts } from './flow-input.ts';
import { pieceCount, pieceKg } from './piece-mass.ts';

/** A counted piece of an account, and the share of the work after which it has come. */
interface Counted {
  readonly part: Shown;
  readonly arrives: number;
}

/** All pieces of an account in the order they come: each part is spread evenly over the work. */
function countedPieces(masses: Masses, legend: FlowLegend): Counted[] {
  return shownParts
    .flatMap((part) => {
      const count = pieceCount(masses, part, legend);
      return Array.from({ length: count }, (_, i) => ({ part, arrives: (i + 0.5) / count }));
    })
    .sort((one, other) => one.arrives - other.arrives);
}

/** A pocket sewn on the ground, open at the top: what an account has got lies in it. */
export function pocketMarks(name: string, box: Box, ink: InkName, thread: InkName): Mark[] {
  const { x, y, width, height } = box;
  const lean = Math.min(5, width * 0.04);
  const outline: Point[] = [
    [x, y],
    [x + width, y],
    [x + width - lean, y + height],
    [x + lean, y + height],
  ];
  const hem = [[x + 4, y + 5] as Point, [x + lean + 4, y + height - 5] as Point];
  hem.push([x + width - lean - 4, y + height - 5], [x + width - 4, y + 5]);
  return [
    patch(name, outline, ink, { shadow: 2.6, seam: 0, grain: 0, scissors: { miss: 1.2, snip: 60 } }),
    {
      kind: 'stitches',
      stitches: runningStitches(hem, `${name}/hem`, { on: 7, off: 5, closed: false }),
      ink: thread,
      width: 1.7,
    },
  ];
}

/** Places in a pocket, filled from its bottom row up, and the size of a piece that lets all of them in, px. */
function pocketSeats(box: Box, count: number): { readonly size: number; readonly seats: readonly Point[] } {
  const room = { width: box.width - 12, height: box.height - 8 };
  const fair = Math.sqrt((room.width * room.height) / Math.max(1, count)) * 0.5;
  let size = Math.min(12, Math.max(4, fair));
  const columnsOf = (each: number) => Math.max(1, Math.floor(room.width / (each * 2)));
  while (size > 3 && Math.ceil(count / columnsOf(size)) * size * 1.8 > room.height) size -= 0.25;
  const columns = columnsOf(size);
  const pitch = room.width / columns;
  const seats = Array.from({ length: count }, (_, i): Point => {
    const row = Math.floor(i / columns);
    const inRow = Math.min(columns, count - row * columns);
    const column = i % columns;
    const chance = chanceOf(`seat/${i}`);
    return [
      box.x + box.width / 2 + (column - (inRow - 1) / 2) * pitch + spread(chance, size * 0.12),
      box.y + box.height - 6 - size - row * size * 1.8,
    ];
  });
  return { size, seats };
}

export interface Account {
  /** Side of the ledger and account: 'out/cardStrips'. */
  readonly band: string;
  readonly masses: Masses;
  readonly form: LintForm;
}

/** The pieces of an account that have come so far, at rest in its pocket. At progress 1 all of them. */
export function pocketed(
  { band, masses, form }: Account,
  box: Box,
  legend: FlowLegend,
  progress: number,
): MovingPiece[] {
  const all = countedPieces(masses, legend);
  const { size, seats } = pocketSeats(box, all.length);
  return all.flatMap(({ part, arrives }, i) =>
    arrives <= progress ? [piece(`${band}/${i}`, band, part, form, legend, [seats[i]!], 0, size)] : [],
  );
}

/** The golden section: places taken by it in turn are spread evenly however many there are. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The pieces that have not gone in yet, riding along a path. At progress 0 all of them, at 1 none.
 * @param across width of the band they ride on, px
 */
export function riding(
  { band, masses, form }: Account,
  path: readonly Point[],
  across: number,
  legend: FlowLegend,
  progress: number,
): MovingPiece[] {
  const all = countedPieces(masses, legend);
  const length = pathLength(path);
  const fair = Math.sqrt((across * length) / Math.max(1, all.length)) * 0.42;
  const size = Math.min(12, Math.max(4, Math.min(fair, across * 0.46)));
  const lanes = Math.max(1, Math.floor(across / (size * 2.1)));
  return all.flatMap(({ part, arrives }, i) => {
    if (arrives <= progress) return [];
    const lane = offsetPath(path, ((i % lanes) + 0.5 - lanes / 2) * (across / lanes));
    const rest = ((Math.floor(i / lanes) * GOLDEN + (i % lanes) * 0.37) % 1) * pathLength(lane);
    return [piece(`${band}/${i}`, band, part, form, legend, lane, rest, size)];
  });
}

function piece(
  name: string,
  band: string,
  part: Shown,
  form: LintForm,
  legend: FlowLegend,
  path: readonly Point[],
  restPx: number,
  size: number,
): MovingPiece {
  const cut = Math.floor(chanceOf(name)() * PIECE_CUTS);
  return { name, band, part, form, cut, standsForKg: pieceKg(part, legend), path, restPx, size };
}
