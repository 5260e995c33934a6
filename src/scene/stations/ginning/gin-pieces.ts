import { arc, pathLength } from '../../cloth/point.ts';
import type { Point } from '../../display-list.ts';
import type { MovingPiece } from '../../scene-frame.ts';
import type { FlowLegend, Masses } from '../flow/flow-input.ts';
import { ridingPieces } from '../flow/ride.ts';
import type { GinningInput } from './ginning-input.ts';
import type { Circle, GinningLayout } from './ginning-layout.ts';
import { ginningAngle } from './saw-stand.ts';

/** Gives pieces a longer way: what comes before their lane, and after it. Rest places keep their share of the way. */
function withWay(
  pieces: readonly MovingPiece[],
  before: (first: Point) => readonly Point[],
  after: (last: Point) => readonly Point[],
): MovingPiece[] {
  return pieces.map((piece) => {
    const path = [...before(piece.path[0]!), ...piece.path, ...after(piece.path.at(-1)!)];
    const share = piece.restPx / Math.max(1, pathLength(piece.path));
    return { ...piece, path, restPx: share * pathLength(path) };
  });
}

/** Once round the seed roll, against the clock, to where the saws take hold. */
function roundTheRoll({ x, y, r }: Circle, from: Point): Point[] {
  const start = Math.atan2(from[1] - y, from[0] - x);
  const out = Math.min(r * 0.86, Math.max(r * 0.3, Math.hypot(from[0] - x, from[1] - y)));
  const end = -2 * Math.PI - 0.5;
  return arc(x, y, out, start, end, 22);
}

/** Over the wheel with the clock, from the ribs or the knife to the brush, and under it. */
function overTheWheel({ wheel, brush }: GinningLayout, to: Point): Point[] {
  const over = arc(wheel.x, wheel.y, wheel.r * 0.93, ginningAngle - 0.12, 2 * Math.PI - 0.04, 16);
  return [...over, ...arc(brush.x, brush.y, brush.r * 0.8, Math.PI * 0.92, Math.PI * 0.56, 4), to];
}

/** Every counted piece of the scene: what comes in, and each account that it goes to. */
export function ginPieces(input: GinningInput, layout: GinningLayout, legend: FlowLegend): MovingPiece[] {
  const { pxPerKg, roll, wheel } = layout;
  const ride = (band: string, path: readonly Point[], masses: Masses, from = 0, to = pathLength(path)) =>
    ridingPieces({ name: `ginning/${band}`, band, path, visible: [[from, to]], pxPerKg }, masses, legend);
  const inLength = pathLength(layout.inPath) - roll.r * 1.1;
  const fed = ride('in/lot', layout.inPath, input.seedCotton.masses, 6, inLength);
  const round =
    input.stand === 'saw'
      ? (last: Point) => roundTheRoll(roll, last)
      : (last: Point): Point[] => [
          [(last[0] + wheel.x - wheel.r * 1.2) / 2, wheel.y - wheel.r * 0.3],
          [wheel.x - wheel.r * 1.06, wheel.y - wheel.r * 0.1],
        ];
  const seedStart: Point = [wheel.x - wheel.r * 0.94, wheel.y - wheel.r * 0.3];
  const fall: Point[] = [seedStart, [wheel.x - wheel.r * 0.9, wheel.y + wheel.r * 0.3]];
  return [
    ...withWay(fed, () => [], round),
    ...withWay(
      ride('out/seedHouse', layout.seedPath, input.seed.masses),
      () => fall,
      () => [],
    ),
    ...withWay(
      ride('out/lot', layout.lintPath, input.lint.masses),
      (first) => overTheWheel(layout, first),
      () => [],
    ),
    ...ride('out/ginTrash', layout.trashPath, input.trash.masses),
    ...(input.motes ? motePieces(input, layout, legend) : []),
    ...(input.water ? ride('in/moistureAdded', layout.waterPath, input.water.masses) : []),
  ];
}

/** Motes are counted on the whole account and dealt out to the cleaners in the order they come. */
function motePieces(input: GinningInput, layout: GinningLayout, legend: FlowLegend): MovingPiece[] {
  const { motePaths, pxPerKg } = layout;
  if (motePaths.length === 0 || !input.motes) return [];
  const name = 'ginning/out/lintCleanerWaste';
  const first = motePaths[0]!;
  const pieces = ridingPieces(
    { name, band: 'out/lintCleanerWaste', path: first, visible: [[0, pathLength(first)]], pxPerKg },
    input.motes.masses,
    legend,
  );
  return pieces.map((piece, i) => {
    const path = motePaths[i % motePaths.length]!;
    return { ...piece, path, restPx: (piece.restPx / pathLength(piece.path)) * pathLength(path) };
  });
}
