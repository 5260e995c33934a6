import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, place, rectangle, ring } from '../../cloth/point.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';
import type { HarvestInput } from './harvest-input.ts';

/** From here on the stalks are cut down. */
const CUT_FROM = 0.97;

export const stalksAreCut = (share: number): boolean => share >= CUT_FROM;

interface Plant {
  /** Where it stands along the row, 0 to 1. */
  readonly along: number;
  readonly stems: readonly Stitch[];
  readonly locks: readonly Mark[];
  readonly stub: Stitch;
  readonly shreds: readonly Stitch[];
}

function plantAt(name: string, box: Box, i: number, count: number, pitch: number): Plant {
  const chance = chanceOf(`${name}/plant${i}`);
  const foot = box.y + box.height;
  const along = (i + 0.5) / count;
  const x = box.x + along * box.width + spread(chance, 2);
  const tall = box.height * (0.62 + 0.2 * chance());
  const lean = spread(chance, 2);
  const branches = (
    [
      [-1, 0.42],
      [1, 0.62],
      [-0.7, 0.86],
      [0.5, 1],
    ] as const
  ).map(([side, up]): { readonly from: Point; readonly to: Point } => ({
    from: [x + lean * up, foot - tall * (up - 0.12)],
    to: [x + lean * up + side * box.height * 0.13, foot - tall * up],
  }));
  return {
    along,
    stems: [[x, foot, x + lean, foot - tall], ...branches.map(({ from, to }): Stitch => [...from, ...to])],
    locks: branches.map(({ to }, k) => ({
      kind: 'patch',
      points: ring(to[0], to[1], box.height * 0.1 * (0.9 + 0.2 * chance()), 6, k + chance()),
      ink: 'lint',
      shadow: 0,
    })),
    stub: [x, foot, x + lean * 0.2, foot - box.height * 0.16],
    shreds: [0, 1, 2].map((): Stitch => {
      const sx = x + spread(chance, pitch * 0.5);
      return [sx, foot + 1, sx + 3 + 3 * chance(), foot + spread(chance, 1.5)];
    }),
  };
}

/**
 * The field in the distance: white where it waits, bare where it has been gathered, stubble in the end.
 * @returns what is seen when a share of the work is done, 0 to 1: as much of the row is gathered
 */
export function farField(name: string, box: Box, method: HarvestInput['method']): (share: number) => Mark[] {
  const pitch = Math.max(13, box.height * 0.42);
  const count = Math.max(6, Math.floor(box.width / pitch));
  const plants = Array.from({ length: count }, (_, i) => plantAt(name, box, i, count, pitch));
  const thread = Math.max(1.2, box.height * 0.035);
  return (share) => [
    ...(stalksAreCut(share)
      ? [
          stitched(
            plants.map(({ stub }) => stub),
            'walnut',
            thread,
          ),
          stitched(
            plants.flatMap(({ shreds }) => shreds),
            'walnut',
            1.6,
          ),
        ]
      : [
          stitched(
            plants.flatMap(({ stems }) => stems),
            'walnut',
            thread,
          ),
          ...plants.flatMap(({ along, locks }) => (along < share ? [] : locks)),
        ]),
    ...gatherer(name, box, share, method),
  ];
}

const stitched = (stitches: readonly Stitch[], ink: 'walnut', width: number): Mark => ({
  kind: 'stitches',
  stitches,
  ink,
  width,
  flat: true,
});

/** Who gathers, small, as far along as the work is: a machine of no make, or a sack on the row. */
function gatherer(name: string, box: Box, share: number, method: HarvestInput['method']): Mark[] {
  const unit = box.height;
  const foot = box.y + box.height * 1.04;
  const x = box.x + unit * 1.4 + (box.width - unit * 2.9) * share;
  const cut = (id: string, points: readonly Point[], ink: Parameters<typeof patch>[2], seam = 0) =>
    patch(`${name}/${id}`, place(points, { x, y: foot, size: unit }), ink, {
      shadow: 1.2,
      seam,
      grain: null,
      scissors: { miss: 0.8, snip: 40 },
    });
  if (method === 'hand')
    return [
      cut(
        'sack',
        [
          [-1.1, -0.1],
          [-0.95, -0.3],
          [0.1, -0.42],
          [0.42, -0.34],
          [0.5, -0.12],
          [0.1, 0],
          [-0.9, 0.02],
        ],
        'muslin',
      ),
      cut(
        'strap',
        [
          [0.4, -0.32],
          [0.56, -0.62],
          [0.64, -0.58],
          [0.5, -0.26],
        ],
        'madder',
      ),
    ];
  const wheel = (id: string, wx: number, radius: number): Mark[] => [
    patch(`${name}/${id}`, ring(x + wx * unit, foot - radius * unit, radius * unit, 10), 'iron', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.5 },
    }),
    patch(`${name}/${id}hub`, ring(x + wx * unit, foot - radius * unit, radius * unit * 0.4, 7), 'weldPale', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: 0.3 },
    }),
  ];
  return [
    cut(
      'body',
      [
        [-1.3, -1.16],
        [0.1, -1.2],
        [0.16, -0.4],
        [-1.3, -0.36],
      ],
      'indigo',
      3,
    ),
    cut(
      'cab',
      [
        [0.16, -1.3],
        [0.62, -1.26],
        [0.74, -0.42],
        [0.16, -0.4],
      ],
      'mid',
    ),
    cut(
      'window',
      [
        [0.24, -1.18],
        [0.54, -1.16],
        [0.62, -0.78],
        [0.24, -0.78],
      ],
      'fadedThin',
    ),
    cut(
      'head',
      [
        [0.62, -0.5],
        [1.2, -0.44],
        [1.42, -0.04],
        [0.66, 0],
      ],
      'weld',
      2.5,
    ),
    ...wheel('rear', -0.95, 0.24),
    ...wheel('front', 0.2, 0.34),
  ];
}

/** The soil that the distant row stands on. */
export const farSoil = (name: string, box: Box): Mark =>
  patch(`${name}/soil`, rectangle(box.x, box.y + box.height * 0.86, box.width, box.height * 0.4), 'walnutPale', {
    shadow: 0,
    seam: 0,
    scissors: { miss: 1.4 },
  });
