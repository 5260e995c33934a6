import type { Point, Stitch } from '../display-list.ts';
import { chanceOf, spread } from './chance.ts';
import { boundsOf } from './point.ts';

/** One thick or thin place for so many square pixels of cloth. */
const AREA_PER_THREAD = 900;
const LONGEST_THREAD = 46;

/**
 * The thick and thin places of the yarn: short threads along the grain, held inside the outline.
 * @param grain direction of the warp, radians
 */
export function grainOf(outline: readonly Point[], name: string, grain: number) {
  const chance = chanceOf(`${name}/grain`);
  const cos = Math.cos(grain);
  const sin = Math.sin(grain);
  const turned = outline.map(([x, y]): Point => [x * cos + y * sin, -x * sin + y * cos]);
  const box = boundsOf(turned);
  const wanted = Math.round((box.width * box.height) / AREA_PER_THREAD);
  const light: Stitch[] = [];
  const dark: Stitch[] = [];
  for (let i = 0; i < wanted; i++) {
    const y = box.y + chance() * box.height;
    const crossings = crossingsAt(turned, y);
    const start = box.x + chance() * box.width - LONGEST_THREAD / 2;
    const end = start + 10 + chance() * (LONGEST_THREAD - 10);
    const slope = spread(chance, 0.4);
    for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
      const from = Math.max(start, crossings[pair]! + 1.5);
      const to = Math.min(end, crossings[pair + 1]! - 1.5);
      if (to - from < 3) continue;
      const stitch: Stitch = [
        from * cos - y * sin,
        from * sin + y * cos,
        to * cos - (y + slope) * sin,
        to * sin + (y + slope) * cos,
      ];
      (i % 2 ? light : dark).push(stitch);
    }
  }
  return { light, dark };
}

function crossingsAt(outline: readonly Point[], y: number): number[] {
  const found: number[] = [];
  for (let i = 0; i < outline.length; i++) {
    const a = outline[i]!;
    const b = outline[(i + 1) % outline.length]!;
    if (a[1] > y !== b[1] > y) found.push(a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]));
  }
  return found.sort((one, other) => one - other);
}
