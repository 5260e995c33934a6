import type { Point, Stitch } from '../display-list.ts';

/** A strip lying level, its upper left corner at the origin, before and after a pull. */
export interface PulledStrip {
  /** Threads of both ways as they lie in the strip. */
  readonly warp: readonly Stitch[];
  readonly weft: readonly Stitch[];
  readonly outline: readonly Point[];
}

export interface StripPull {
  /** Before the pull, px. */
  readonly length: number;
  readonly width: number;
  /** Direction of the strip from the warp, radians. */
  readonly fromWarp: number;
  readonly pitchPx: number;
  /** Angle between warp and weft after the pull, radians, and how much longer the strip is, percent. */
  readonly angle: number;
  readonly stretchPercent: number;
}

/** The part of a line through a point that lies inside a box from the origin; null where it misses it. */
function within([px, py]: Point, [dx, dy]: Point, length: number, width: number): Stitch | null {
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  for (const [at, way, end] of [
    [px, dx, length],
    [py, dy, width],
  ] as const) {
    if (Math.abs(way) < 1e-9) {
      if (at < 0 || at > end) return null;
      continue;
    }
    const [one, other] = [-at / way, (end - at) / way];
    low = Math.max(low, Math.min(one, other));
    high = Math.min(high, Math.max(one, other));
  }
  return high - low > 1 ? [px + dx * low, py + dy * low, px + dx * high, py + dy * high] : null;
}

/** Threads that run one way through the strip, a pitch apart. */
function family(way: Point, { length, width, pitchPx }: StripPull): Stitch[] {
  const across: Point = [-way[1], way[0]];
  const middle: Point = [length / 2, width / 2];
  const reach = Math.ceil((length + width) / pitchPx);
  return Array.from({ length: reach * 2 + 1 }, (_, i) => (i - reach + 0.5) * pitchPx).flatMap((off) => {
    const found = within([middle[0] + across[0] * off, middle[1] + across[1] * off], way, length, width);
    return found ? [found] : [];
  });
}

/** The strip as cut. */
export function stripAsCut(strip: StripPull): PulledStrip {
  const { length, width, fromWarp } = strip;
  const warp: Point = [Math.cos(fromWarp), Math.sin(fromWarp)];
  return {
    warp: family(warp, strip),
    weft: family([warp[1], -warp[0]], strip),
    outline: [
      [0, 0],
      [length, 0],
      [length, width],
      [0, width],
    ],
  };
}

/** The strip drawn out as far as it goes: threads keep their length and turn at the crossings, the pull stays level. */
export function stripPulled(strip: StripPull): PulledStrip {
  const { fromWarp, angle, stretchPercent } = strip;
  const before = stripAsCut(strip);
  const [cos, sin] = [Math.cos(fromWarp), Math.sin(fromWarp)];
  const sheared = Math.sqrt(1 + 2 * sin * cos * Math.cos(angle)) - 1;
  const straight = 100 * sheared < stretchPercent - 1e-9;
  const turn = Math.atan2(sin * Math.sin(angle), cos + sin * Math.cos(angle));
  const warp: Point = [Math.cos(turn), Math.sin(turn)];
  const weft: Point = [Math.cos(turn - angle), Math.sin(turn - angle)];
  const move = ([x, y]: Point): Point => {
    if (straight) return [x * (1 + stretchPercent / 100), y];
    // A point by how far it lies along warp and weft, laid out again along both as they lie now.
    const [a, b] = [x * cos + y * sin, x * sin - y * cos];
    return [a * warp[0] + b * weft[0], a * warp[1] + b * weft[1]];
  };
  const moved = ([x0, y0, x1, y1]: Stitch): Stitch => [...move([x0, y0]), ...move([x1, y1])];
  return { warp: before.warp.map(moved), weft: before.weft.map(moved), outline: before.outline.map(move) };
}
