import { cutBollMarks } from '../cloth/boll.ts';
import { piecedGround } from '../cloth/pieced-ground.ts';
import { ring } from '../cloth/point.ts';
import { runningStitches } from '../cloth/running-stitch.ts';
import { type DisplayList, group } from '../display-list.ts';

/** A boll cut across, as large as the picture holds: every seed of the season's boll is drawn, each in its burst of fibre. */
export function bollCut(width: number, height: number, locks: 4 | 5, seeds: number): DisplayList {
  const size = Math.min(width, height) * 0.42;
  const middle = { x: width / 2, y: height / 2 };
  const rings = [1.14, 1.3, 1.48].flatMap((share, i) =>
    runningStitches(ring(middle.x, middle.y, size * share, 64), `kiosk/cut/ring${i}`, { on: 16, off: 12 }),
  );
  return [
    ...piecedGround(
      'kiosk/cut/night',
      { x: 0, y: 0, width, height },
      { inks: ['indigo', 'indigoWarm', 'ink'], strips: 5, thread: 'mid' },
    ),
    { kind: 'stitches', stitches: rings, ink: 'mid', width: 2.4, flat: true },
    group('kiosk/cut', cutBollMarks('kiosk/cut', { ...middle, size, turn: 0.2, wide: 1 }, locks, seeds), seeds),
  ];
}
