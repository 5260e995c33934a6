import { trashParts } from '../../../model/lot.ts';
import { chanceOf } from '../../cloth/chance.ts';
import type { Shown } from '../../cloth/part-cloth.ts';
import { type Box, pathLength } from '../../cloth/point.ts';
import type { Point } from '../../display-list.ts';
import type { MovingPiece } from '../../scene-frame.ts';
import { type FlowLegend, type Masses, massOf, shownKg, shownParts } from '../flow/flow-input.ts';
import { pieceCount, pieceKg } from '../flow/piece-mass.ts';
import { pocketed } from '../flow/pocket.ts';
import { ridingPieces } from '../flow/ride.ts';
import type { CleaningInput } from './cleaning-input.ts';
import type { CleaningLayout, PlacedMachine } from './cleaning-layout.ts';
import type { MachineArt } from './line-machines.ts';

export interface LineArt {
  readonly placed: PlacedMachine;
  readonly art: MachineArt;
}

/** Something that takes trash, and where the trash lies. */
export interface Taker {
  readonly id: string;
  readonly masses: Masses;
  readonly holds: Box;
}

/** Machines that take trash, in the order the cotton meets them. */
export const takersOf = (input: CleaningInput, layout: CleaningLayout): Taker[] => [
  ...layout.rows.flatMap(({ machines }) =>
    machines.flatMap(({ machine, compartment }) =>
      machine.took && compartment
        ? [
            {
              id: machine.id,
              masses: machine.took.masses,
              holds: { ...compartment, height: compartment.height - layout.lipTall },
            },
          ]
        : [],
    ),
  ),
  { id: 'extractorFeeder', masses: input.feeder.took.masses, holds: layout.works.pocket },
];

/** The golden section: numbers stepped by it fall evenly between 0 and 1. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Shares pieces of a part out in proportion to masses: every machine gets within one piece of its due, all together exact.
 * @returns how many each machine gets
 */
function dealt(count: number, dues: readonly number[]): number[] {
  const total = dues.reduce((sum, due) => sum + due, 0);
  if (!(total > 0)) return dues.map(() => 0);
  let run = 0;
  let given = 0;
  return dues.map((due) => {
    run += due;
    const upTo = Math.round((count * run) / total);
    const here = upTo - given;
    given = upTo;
    return here;
  });
}

/** A bit of trash where it lies, and the share of the work after which it lies there. */
interface Fallen {
  readonly piece: MovingPiece;
  readonly arrives: number;
}

/** No bit in a trough is drawn smaller, px. */
const SMALLEST_BIT_PX = 6.5;

/**
 * The pieces of the trash account, each under the machine that took it.
 * @returns those that have come after a share of the work
 */
export function trashPieces(
  { trash }: CleaningInput,
  takers: readonly Taker[],
  legend: FlowLegend,
): (progress: number) => MovingPiece[] {
  const counts = new Map(
    shownParts.map((part) => [
      part,
      dealt(
        pieceCount(trash.masses, part, legend),
        takers.map(({ masses }) => shownKg(masses, part)),
      ),
    ]),
  );
  const all = takers.flatMap(({ id, holds }, k): Fallen[] => {
    const countOf = (part: Shown) => counts.get(part)![k]!;
    const whole = (part: Shown) => countOf(part) * pieceKg(part, legend);
    const dryKg = Object.fromEntries(
      shownParts.flatMap((part) => (part === 'water' ? [] : [[part, whole(part)]])),
    ) as Masses['dryKg'];
    const seen = new Map<Shown, number>();
    return pocketed(
      { band: 'out/ginTrash', masses: { dryKg, waterKg: whole('water') }, form: 'tuft' },
      holds,
      legend,
      1,
    ).map((piece) => {
      const nth = seen.get(piece.part) ?? 0;
      seen.set(piece.part, nth + 1);
      return { piece: { ...piece, name: `${id}/${piece.name}` }, arrives: (nth + 0.5) / countOf(piece.part) };
    });
  });
  // A bit is as large under one machine as under another.
  const size = Math.max(SMALLEST_BIT_PX, Math.min(...all.map(({ piece }) => piece.size)));
  const lying = all.map(({ piece, arrives }): Fallen => ({ piece: { ...piece, size }, arrives }));
  return (progress) => lying.flatMap(({ piece, arrives }) => (arrives <= progress ? [piece] : []));
}

/** Cotton keeps this much of its band's width inside a machine and on the screw. */
const NARROW = 0.3;

/**
 * The way of a piece through the line, a distance to the right of the middle of the band.
 * @param until the machine whose trough it falls into; null for cotton that goes on to the feeder
 */
function wayThrough(
  line: readonly LineArt[],
  { rows, works, lipTall }: CleaningLayout,
  feeder: MachineArt,
  across: number,
  until: string | null,
  seed: string,
): Point[] {
  const chance = chanceOf(seed);
  const fall = (from: Point, box: Box): Point[] => [
    from,
    [box.x + box.width * (0.25 + 0.5 * chance()), box.y + (box.height - lipTall) * 0.7],
  ];
  const first = rows[0]!;
  const points: Point[] = [[first.way === 1 ? 1 : 0, first.bandY + across]];
  for (const { way, bandY, turnX, machines } of rows) {
    const level = bandY + way * across;
    for (const { machine, compartment } of machines) {
      const { track, dropX } = line.find(({ placed }) => placed.machine.id === machine.id)!.art;
      const last = track.length - 1;
      points.push([track[0]![0], level]);
      points.push(...track.slice(1, last).map(([x, y]): Point => [x, y + way * across * NARROW * 0.5]));
      if (machine.id === until && compartment) {
        const low = track.reduce((lowest, spot) => (spot[1] > lowest[1] ? spot : lowest), track[0]!);
        return [...points, ...fall([(low[0] + dropX) / 2, low[1] + 4], compartment)];
      }
      points.push([track[last]![0], level]);
    }
    points.push([turnX - across, level]);
    const next = rows[rows.findIndex((row) => row.bandY === bandY) + 1];
    const nextLevel = next ? next.bandY + next.way * across : works.auger.y + works.auger.height * 0.5;
    points.push([turnX - across, nextLevel - (next ? 0 : works.way * across * NARROW)]);
  }
  const screwY = works.auger.y + works.auger.height * 0.5 + across * NARROW;
  points.push([feeder.track[0]![0], screwY], ...feeder.track);
  if (until !== 'extractorFeeder') return points;
  return [...points.slice(0, -2), ...fall([feeder.dropX, feeder.track.at(-2)![1]], works.pocket)];
}

/** Bits among the cotton are drawn smaller than tufts and seeds, of their size: they weigh less. */
const TRASH_SHARE = 0.78;
/** No tuft of the line is drawn smaller, px. */
const SMALLEST_PX = 5.5;

/** Every counted piece that moves: seed cotton through the line, vapour, cleaned cotton to its bin, and the overflow's rounds. */
export function linePieces(
  input: CleaningInput,
  layout: CleaningLayout,
  line: readonly LineArt[],
  feeder: MachineArt,
  takers: readonly Taker[],
  vapour: readonly (readonly Point[])[],
  legend: FlowLegend,
): MovingPiece[] {
  const { works, pxPerKg } = layout;
  const ride = (band: string, path: readonly Point[], masses: Masses): MovingPiece[] =>
    ridingPieces({ name: `cleaning/${band}`, band, path, visible: [[0, pathLength(path)]], pxPerKg }, masses, legend);
  const length = pathLength(wayThrough(line, layout, feeder, 0, null, ''));
  const straight = ride(
    'in/lot',
    [
      [0, 0],
      [length, 0],
    ],
    input.seedCotton.masses,
  );
  const largest = Math.max(SMALLEST_PX, massOf(input.seedCotton.masses) * pxPerKg * 0.24);
  const seen = new Map<Shown, number>();
  const fed = straight.map((piece): MovingPiece => {
    const nth = seen.get(piece.part) ?? 0;
    seen.set(piece.part, nth + 1);
    const isTrash = (trashParts as readonly Shown[]).includes(piece.part);
    const path = wayThrough(
      line,
      layout,
      feeder,
      piece.path[0]![1],
      isTrash ? takenAt(piece.part, (nth * GOLDEN + 0.5) % 1, input.seedCotton.masses, takers) : null,
      piece.name,
    );
    return {
      ...piece,
      path,
      size: Math.min(piece.size, largest) * (isTrash ? TRASH_SHARE : 1),
      restPx: (piece.restPx / length) * pathLength(path),
    };
  });
  const drops = input.evaporated && vapour[0] ? ride('out/evaporated', vapour[0], input.evaporated.masses) : [];
  const head: Point = [works.pipe.at(-1)![0], works.auger.y + works.auger.height / 2];
  const over: Point = [works.pipe[0]![0], works.auger.y + works.auger.height / 2];
  return [
    ...fed,
    ...drops.map((piece, i) => {
      const path = vapour[i % vapour.length]!;
      return { ...piece, path, restPx: (piece.restPx / pathLength(piece.path)) * pathLength(path) };
    }),
    ...ride('out/lot', works.outPath, input.cleaned.masses),
    ...ride('round/overflow', [head, over, ...works.pipe], input.overflow.masses),
  ];
}

/** Which machine takes a bit out, by its place among all bits of its part; null when it goes on with the cotton. */
function takenAt(part: Shown, share: number, entered: Masses, takers: readonly Taker[]): string | null {
  const total = shownKg(entered, part);
  let run = 0;
  for (const { id, masses } of takers) {
    run += shownKg(masses, part) / total;
    if (share < run) return id;
  }
  return null;
}
