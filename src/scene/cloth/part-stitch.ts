import type { Point, Stitch } from '../display-list.ts';
import { chanceOf, spread } from './chance.ts';
import type { Shown } from './part-cloth.ts';
import { pathLength, spotAt } from './point.ts';

/** How a part's stitch is made: room along the row, and its reach to either side, px. */
interface Habit {
  readonly pitch: number;
  readonly reach: number;
}
const habits: Readonly<Record<Shown, Habit>> = {
  lint: { pitch: 24, reach: 0 },
  seed: { pitch: 13, reach: 0 },
  burs: { pitch: 11, reach: 5 },
  sticks: { pitch: 14, reach: 3.6 },
  leaf: { pitch: 14, reach: 4 },
  motes: { pitch: 9, reach: 3.6 },
  dirt: { pitch: 9, reach: 3.4 },
  size: { pitch: 10, reach: 3 },
  finish: { pitch: 12, reach: 2.2 },
  water: { pitch: 14, reach: 3.2 },
};

/** Thread width of a part's stitch; a knot is a dot as wide as its thread. */
export const partThreadWidth = (part: Shown): number => (part === 'seed' ? 3.4 : part === 'dirt' ? 2 : 1.7);

/**
 * A row of the stitch that marks a part: long running for lint, French knots for seed, blanket for burs, cross for sticks,
 * chevron for leaf, whip for motes, loose specks for dirt, a wave for water; couching for size, back stitch for finish.
 * @param path middle line of the row; @param size 1 is full size, smaller for narrow strips
 */
export function partStitches(part: Shown, path: readonly Point[], name: string, size = 1): Stitch[] {
  const habit = habits[part];
  const length = pathLength(path);
  const count = Math.floor(length / (habit.pitch * Math.max(0.6, size)));
  if (count < 1) return [];
  const pitch = length / count;
  const reach = habit.reach * size;
  const chance = chanceOf(`${name}/${part}`);
  const stitches: Stitch[] = [];
  for (let i = 0; i < count; i++) {
    /** A point of this stitch: along the row in pitches, across it in reaches. */
    const at = (along: number, across: number): Point => {
      const spot = spotAt(path, (i + along) * pitch);
      const off = across * reach;
      return [spot.at[0] - spot.along[1] * off, spot.at[1] + spot.along[0] * off];
    };
    const sew = (from: Point, to: Point) => stitches.push([...from, ...to]);
    const sway = spread(chance, 0.05);
    switch (part) {
      case 'lint':
        sew(at(0.18 + sway, 0), at(0.82 + sway, 0));
        break;
      case 'seed': {
        const knot = at(0.5 + sway, 0);
        sew(knot, knot);
        break;
      }
      case 'burs':
        sew(at(0, 0.5), at(1, 0.5));
        sew(at(0.5 + sway, 0.5), at(0.5 + sway, -1));
        break;
      case 'sticks':
        sew(at(0.5 - reach / pitch, -1), at(0.5 + reach / pitch, 1));
        sew(at(0.5 - reach / pitch, 1), at(0.5 + reach / pitch, -1));
        break;
      case 'leaf':
        sew(at(0.22 + sway, -1), at(0.5 + sway, 1));
        sew(at(0.5 + sway, 1), at(0.78 + sway, -1));
        break;
      case 'motes':
        sew(at(0.2 + sway, 1), at(0.75 + sway, -1));
        break;
      case 'dirt': {
        const speck = at(0.5 + spread(chance, 0.4), spread(chance, 1));
        sew(speck, [speck[0] + spread(chance, 1.6), speck[1] + spread(chance, 1.6)]);
        break;
      }
      case 'size':
        sew(at(0, 0), at(1, 0));
        sew(at(0.5 + sway, -1), at(0.5 + sway, 1));
        break;
      case 'finish':
        sew(at(0.08, -1), at(0.92, -1));
        sew(at(0.08, 1), at(0.92, 1));
        break;
      case 'water':
        for (let step = 0; step < 6; step++)
          sew(at(step / 6, wave(step / 6)), at((step + 1) / 6, wave((step + 1) / 6)));
        break;
    }
  }
  return stitches;
}

const wave = (share: number): number => Math.sin(share * 2 * Math.PI);
