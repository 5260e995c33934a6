import type { Point } from '../display-list.ts';
import { chanceOf } from './chance.ts';

const STEPS_PER_LOBE = 7;

/**
 * The outline of a tuft of lint: a few fat lobes, never the same twice, always the same size, for its size stands for a weight.
 * Drawn as the outer envelope of discs set on a ring, the way a pattern drafter draws a scallop.
 */
export function tuftOutline(x: number, y: number, radius: number, name: string, lobes = 6, start?: number): Point[] {
  const chance = chanceOf(`${name}/tuft`);
  const turn = start ?? chance() * 2 * Math.PI;
  const discs = Array.from({ length: lobes }, (_, lobe) => {
    const angle = turn + ((lobe + 0.55 * (chance() - 0.5)) / lobes) * 2 * Math.PI;
    // Big and small lobes by turns, or it would be a flower.
    const size = radius * ((lobe % 2 ? 0.36 : 0.52) + 0.1 * (chance() - 0.5));
    const out = radius * (0.95 + 0.1 * chance()) - size;
    return { x: Math.cos(angle) * out, y: Math.sin(angle) * out * 0.9, size };
  });
  discs.push({ x: 0, y: 0, size: radius * 0.6 });
  const steps = lobes * STEPS_PER_LOBE;
  return Array.from({ length: steps }, (_, step) => {
    const angle = turn + (step / steps) * 2 * Math.PI;
    const reach = Math.max(...discs.map((disc) => farthestHit(disc, Math.cos(angle), Math.sin(angle))));
    return [x + Math.cos(angle) * reach, y + Math.sin(angle) * reach];
  });
}

/** Where a ray from the middle last leaves a disc; 0 when it misses. */
function farthestHit(disc: { x: number; y: number; size: number }, dx: number, dy: number): number {
  const along = disc.x * dx + disc.y * dy;
  const off = disc.x * disc.x + disc.y * disc.y - along * along;
  const half = disc.size * disc.size - off;
  return half < 0 ? 0 : along + Math.sqrt(half);
}
