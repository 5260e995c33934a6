import { chanceOf } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { piecedGround } from '../../cloth/pieced-ground.ts';
import { rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark } from '../../display-list.ts';
import type { PlantingPlot } from './planting-plot.ts';

/** The soil cut open along the row: the crust, the bed the seed lies in, and the deep piece under the tapes. */
export function soilCutMarks({ box, soilY, seedY, seedPx, rowTape, rowX }: PlantingPlot): Mark[] {
  const right = box.x + box.width;
  return [
    ...piecedGround(
      'bed',
      { x: box.x, y: soilY, width: box.width, height: rowTape.y - soilY + 4 },
      { inks: ['walnutWarm', 'walnut', 'walnutWarm'], strips: 3, thread: 'walnutPale' },
    ),
    patch('bed/deep', rectangle(box.x - 1, rowTape.y, box.width + 2, box.y + box.height - rowTape.y), 'walnut', {
      shadow: 0,
      seam: 0,
      scissors: { miss: 0.8, snip: 160, bow: 0.0006 },
    }),
    {
      kind: 'stitches',
      stitches: runningStitches(
        [
          [box.x + 8, soilY + 6],
          [right - 8, soilY + 5],
        ],
        'bed/edge',
        { on: 9, off: 7, closed: false },
      ),
      ink: 'thread',
      width: 1.7,
    },
    {
      kind: 'stitches',
      stitches: runningStitches(
        [
          [rowX, seedY + seedPx * 1.5],
          [right - 8, seedY + seedPx * 1.5],
        ],
        'bed/furrow',
        { on: 5, off: 9, closed: false },
      ),
      ink: 'walnutPale',
      width: 1.6,
      flat: true,
    },
  ];
}

export interface FurrowSeed {
  readonly name: string;
  readonly x: number;
  readonly comesUp: boolean;
}

/** Every seed of the row in view, at its counted number to the foot; the share that comes up is exact, which ones by chance. */
export function furrowSeeds(
  { rowX, feet, pxPerInch }: Pick<PlantingPlot, 'rowX' | 'feet' | 'pxPerInch'>,
  seedsPerFoot: number,
  emergingShare: number,
): FurrowSeed[] {
  const count = Math.floor(feet * seedsPerFoot);
  const spacing = (12 * pxPerInch) / seedsPerFoot;
  const rank = Array.from({ length: count }, (_, i) => ({ i, at: chanceOf(`furrow/${i}/rises`)() }))
    .sort((a, b) => a.at - b.at)
    .slice(0, Math.round(count * emergingShare));
  const rises = new Set(rank.map(({ i }) => i));
  return Array.from({ length: count }, (_, i) => ({
    name: `furrow/${i}`,
    x: rowX + spacing * (i + 0.5),
    comesUp: rises.has(i),
  }));
}
