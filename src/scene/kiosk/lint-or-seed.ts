import { patch } from '../cloth/patch.ts';
import { cutPiece, PIECE_CUTS } from '../cloth/piece.ts';
import { type Box, rectangle, ring } from '../cloth/point.ts';
import { runningStitches } from '../cloth/running-stitch.ts';
import { type DisplayList, group, type Mark, type Point } from '../display-list.ts';
import { sawRim } from '../stations/ginning/saw-stand.ts';

export interface LintOrSeed {
  readonly width: number;
  readonly height: number;
  /** What comes off the saw, kg; bands are as wide as their mass, or alike before the guess. */
  readonly lintKg: number;
  readonly seedKg: number;
  readonly opened: boolean;
}

const teeth = 26;

/** The saw alone: it turns for as long as it is shown. */
function saw(x: number, y: number, r: number): Mark[] {
  const stitched = (share: number): Mark => ({
    kind: 'stitches',
    stitches: runningStitches(ring(x, y, r * share, 44), `kiosk/saw${share}`, { on: 15, off: 11 }),
    ink: 'thread',
    width: Math.max(2, r * 0.016),
  });
  const round = (name: string, share: number, sides: number, ink: 'madder' | 'weld' | 'iron', seam: number) =>
    patch(name, ring(x, y, r * share, sides, 0.2), ink, {
      shadow: seam > 0 ? 4 : 0,
      seam: r * seam,
      ...(ink === 'weld' ? { thread: 'walnut' as const } : {}),
      grain: 0.5,
    });
  return [
    patch('kiosk/saw', sawRim(x, y, r, teeth, 0.14), 'indigo', { shadow: 6, seam: 0, grain: 0.7, scissors: 'asDrawn' }),
    stitched(0.79),
    stitched(0.67),
    round('kiosk/drum', 0.54, 15, 'madder', 0.06),
    round('kiosk/arbor', 0.25, 9, 'weld', 0.05),
    round('kiosk/shaft', 0.09, 6, 'iron', 0),
  ];
}

/** Pieces in rows along a band, as many as it has room for. */
function laid(name: string, part: 'lint' | 'seed', { x, y, width, height }: Box, size: number): Mark {
  const rows = Math.max(1, Math.floor(height / (size * 2.5)));
  const columns = Math.max(1, Math.floor(width / (size * 2.7)));
  const places = Array.from({ length: rows * columns }, (_, i): Point => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    return [x + ((column + (row % 2 ? 0.7 : 0.35)) / columns) * width, y + ((row + 0.5) / rows) * height];
  });
  return group(
    name,
    places.flatMap(([px, py], i) => [...cutPiece(part, i % PIECE_CUTS, 'tuft', px, py, size)]),
  );
}

/** Seed cotton comes to the saw; lint leaves above, seed below. Both are basted alike until the guess opens them. */
export function lintOrSeed({ width, height, lintKg, seedKg, opened }: LintOrSeed): DisplayList {
  const upright = height > width;
  const r = upright ? Math.min(width * 0.36, height * 0.27) : Math.min(width * 0.25, height * 0.37);
  const [cx, cy] = [upright ? width * 0.46 : width * 0.42, height * 0.47];
  const both = r * 1.35;
  const share = opened ? lintKg / (lintKg + seedKg) : 0.5;
  const [lintPx, seedPx] = [both * share * 1.05, both * (1 - share) * 1.05];
  const from = cx + r * 0.1;
  const lint: Box = { x: from, y: cy - r * 0.98, width: width - from + 12, height: lintPx };
  const seedTop = cy + r * 0.5;
  const seed: Box = { x: cx - seedPx * 0.5, y: seedTop + r * 0.42, width: width - cx + seedPx, height: seedPx };
  const loaf: Box = { x: -12, y: cy - r * 0.62, width: cx - r * 0.3, height: r * 1.24 };
  const size = r * 0.1;
  const basted = (name: string, { x, y, width: wide, height: tall }: Box): Mark => ({
    kind: 'stitches',
    stitches: runningStitches(rectangle(x + 6, y + 7, wide, tall - 14), name, { on: 24, off: 13 }),
    ink: 'madder',
    width: 4,
  });
  return [
    patch('kiosk/slab', rectangle(cx - r * 1.15, cy - r * 1.28, r * 2.2, r * 2.5), 'faded', {
      shadow: 6,
      seam: 12,
      grain: 0.3,
    }),
    patch('kiosk/loaf', rectangle(loaf.x, loaf.y, loaf.width, loaf.height), 'walnutPale', {
      shadow: 4,
      seam: 10,
      grain: 0,
    }),
    laid('kiosk/bolls', 'lint', { ...loaf, x: 0, width: loaf.width - size }, size * 1.5),
    group('kiosk/lint', [
      patch('kiosk/lint', rectangle(lint.x, lint.y, lint.width, lint.height), 'lint', {
        shadow: 4,
        seam: opened ? 9 : 0,
        thread: 'indigo',
        grain: 0,
      }),
      ...(opened ? [] : [basted('kiosk/basteLint', lint)]),
      laid(
        'kiosk/tufts',
        'lint',
        { x: cx + r * 1.1, y: lint.y, width: width - cx - r * 1.1, height: lint.height },
        size,
      ),
    ]),
    group('kiosk/seed', [
      patch('kiosk/fold', rectangle(cx - seedPx * 0.5, cy, seedPx, seed.y - cy + seedPx), 'walnutWarm', {
        shadow: 4,
        seam: 0,
        grain: Math.PI / 2,
      }),
      patch('kiosk/seed', rectangle(seed.x, seed.y, seed.width, seed.height), 'walnut', {
        shadow: 4,
        seam: opened ? 9 : 0,
        thread: 'weld',
        grain: 0,
      }),
      ...(opened ? [] : [basted('kiosk/basteSeed', seed)]),
      laid(
        'kiosk/seeds',
        'seed',
        { x: cx + seedPx * 0.6, y: seed.y, width: width - cx - seedPx * 0.6, height: seed.height },
        size,
      ),
    ]),
    group('kiosk/saw', saw(cx, cy, r)),
  ];
}
