import { textWidth } from '../../../src/scene/cloth/letter-widths.ts';
import { boundsOf } from '../../../src/scene/cloth/point.ts';
import { flatMarks } from '../../../src/scene/display-list.ts';
import { frameAtRest, partAt, type SceneFrame } from '../../../src/scene/scene-frame.ts';

/** Cloth may reach this far over the edge of its picture, px: a band that comes in, an edge cut off square. */
const overEdgePx = 8;

/** What of a frame lies outside its box or is no number, one line each. */
export function outside(frame: SceneFrame): string[] {
  const { width, height } = frame;
  const found: string[] = [];
  for (const mark of flatMarks(frameAtRest(frame))) {
    if (mark.kind === 'text') {
      const wide = textWidth(mark.text, mark.size, mark);
      const left = mark.anchor === 'start' ? mark.x : mark.anchor === 'end' ? mark.x - wide : mark.x - wide / 2;
      if (!(left >= 0 && left + wide <= width && mark.y - mark.size * 0.8 >= 0 && mark.y + mark.size * 0.2 <= height))
        found.push(`text "${mark.text}" at ${mark.x}, ${mark.y}`);
      if (mark.size < (width > 500 ? 14 : 13) - 1e-9) found.push(`text "${mark.text}" of ${mark.size} px`);
      continue;
    }
    const points =
      mark.kind === 'patch' ? mark.points : mark.stitches.flatMap(([a, b, c, d]) => [[a, b] as const, [c, d] as const]);
    if (points.length === 0) continue;
    const box = boundsOf(points);
    const inside =
      box.x >= -overEdgePx &&
      box.y >= -overEdgePx &&
      box.x + box.width <= width + overEdgePx &&
      box.y + box.height <= height + overEdgePx;
    if (!inside) found.push(`${mark.kind} ${mark.ink} ${JSON.stringify(box)}`);
  }
  return found;
}

/** Parts of a frame that say nothing of what they show, or whose marks reach past their radius, one line each. */
export function mutePart(frame: SceneFrame): string[] {
  return frame.parts.flatMap((part) => {
    const faults: string[] = [];
    if (part.shows.trim() === '') faults.push(`${part.name} shows nothing`);
    const [x, y] = part.middle;
    for (const mark of flatMarks(part.marks)) {
      const points =
        mark.kind === 'patch'
          ? mark.points
          : mark.kind === 'stitches'
            ? mark.stitches.flatMap(([a, b, c, d]) => [[a, b] as const, [c, d] as const])
            : [];
      if (points.some(([px, py]) => Math.hypot(px - x, py - y) > part.radius + 1.5)) {
        faults.push(`${part.name} reaches past its radius`);
        break;
      }
    }
    const { turn, shift } = partAt(part, 0.37);
    if (turn === 0 && shift[0] === 0 && shift[1] === 0) faults.push(`${part.name} does not move`);
    return faults;
  });
}

/** How many pieces of each band and part a frame holds, and what they stand for together, kg. */
export function piecesByBand(frame: SceneFrame): Map<string, { count: number; kg: number; standsForKg: number }> {
  const sums = new Map<string, { count: number; kg: number; standsForKg: number }>();
  for (const { band, part, standsForKg } of frame.moving) {
    const key = `${band} ${part}`;
    const sum = sums.get(key) ?? { count: 0, kg: 0, standsForKg };
    sums.set(key, { count: sum.count + 1, kg: sum.kg + standsForKg, standsForKg });
  }
  return sums;
}

/** Words twice as long, as another language might have them; numbers stay. */
export const doubled = (text: string): string => (/\p{L}{3}/u.test(text) ? `${text} ${text}` : text);
