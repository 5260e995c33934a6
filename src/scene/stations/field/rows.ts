import { chanceOf } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import type { Box } from '../../cloth/point.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';

/** How the field behind the plant stands. */
export interface RowsLook {
  /** Height of the crop over that of a tall one, 0 to 1. */
  readonly cropShare: number;
  /** Mean numbers for one plant: each hump is a plant. */
  readonly whiteFlowers: number;
  readonly pinkFlowers: number;
  readonly openBolls: number;
  /** Share of the leaves still on, 0 to 1. */
  readonly leafShare: number;
  readonly kind: 'upland' | 'pima';
}

interface Row {
  readonly name: string;
  readonly y: number;
  readonly depth: number;
  readonly tall: number;
  readonly pitch: number;
  readonly cloth: 'bollGreen' | 'leafGreen';
}

const rowsOf = (soilY: number, unit: number): readonly Row[] => [
  { name: 'row/0', y: soilY - 74 * unit, depth: 22 * unit, tall: 17 * unit, pitch: 15 * unit, cloth: 'bollGreen' },
  { name: 'row/1', y: soilY - 52 * unit, depth: 28 * unit, tall: 30 * unit, pitch: 25 * unit, cloth: 'leafGreen' },
  { name: 'row/2', y: soilY - 20 * unit, depth: 34 * unit, tall: 46 * unit, pitch: 40 * unit, cloth: 'bollGreen' },
];

const unitOf = (box: Box): number => Math.min(box.height, box.width * 0.8) / 560;

/** The bare rows, which stand still. */
export function bareRowsMarks(box: Box, soilY: number): Mark[] {
  const unit = unitOf(box);
  const right = box.x + box.width;
  const rows = rowsOf(soilY, unit);
  const soil = (name: string, points: readonly Point[], ink: 'walnut' | 'walnutWarm' | 'walnutPale') =>
    patch(name, points, ink, { shadow: 0, seam: 0, grain: 0.02, scissors: { miss: 0.8, snip: 110, bow: 0.002 } });
  return [
    soil(
      'row/far',
      [
        [box.x - 1, rows[0]!.y - 6 * unit],
        [right + 1, rows[0]!.y - 9 * unit],
        [right + 1, soilY + 1],
        [box.x - 1, soilY + 1],
      ],
      'walnutPale',
    ),
    ...rows.map(({ name, y, depth }, i) =>
      soil(
        `${name}/soil`,
        [
          [box.x - 1, y + depth * 0.5],
          [right + 1, y + depth * 0.46],
          [right + 1, y + depth + 2],
          [box.x - 1, y + depth + 2],
        ],
        i === 1 ? 'walnutWarm' : 'walnut',
      ),
    ),
  ];
}

/** The crop in the rows, with as many flowers and open bolls as its plants have on the mean. */
export function cropRowsMarks(box: Box, soilY: number, look: RowsLook): Mark[] {
  const unit = unitOf(box);
  return rowsOf(soilY, unit).flatMap((row) => cropRow(row, box, look));
}

function cropRow(row: Row, box: Box, look: RowsLook): Mark[] {
  const tall = row.tall * look.cropShare;
  if (tall < 1.5) return [];
  const { name, pitch } = row;
  const chance = chanceOf(name);
  const right = box.x + box.width;
  const foot = row.y + row.depth * 0.5;
  const plants = Math.ceil(box.width / pitch);
  const peaks = Array.from({ length: plants }, () => tall * (0.86 + 0.28 * chance()));
  const top: Point[] = peaks.flatMap((peak, i): Point[] => {
    const x = box.x + i * pitch;
    return [
      [x, foot - peak * 0.42],
      [x + pitch * 0.28, foot - peak * 0.96],
      [x + pitch * 0.56, foot - peak],
      [x + pitch * 0.84, foot - peak * 0.6],
    ];
  });
  // Dots go to the plants by turns, so that a row of n plants holds n times the mean.
  const dots = (kind: string, mean: number): Stitch[] => {
    const place = chanceOf(`${name}/${kind}`);
    return Array.from({ length: Math.round(mean * plants) }, (): Stitch => {
      const plant = Math.min(plants - 1, Math.floor(place() * plants));
      const x = Math.min(right - 2, box.x + (plant + 0.15 + 0.7 * place()) * pitch);
      const y = foot - peaks[plant]! * (0.2 + 0.6 * place());
      return [x, y, x, y];
    });
  };
  const wide = Math.max(2.2, row.tall * 0.16);
  const sewn = (kind: string, mean: number, ink: 'lint' | 'blush' | 'weld' | 'madder', scale = 1): Mark[] => {
    const stitches = dots(kind, mean);
    return stitches.length === 0
      ? []
      : [group(`${name}/${kind}`, [{ kind: 'stitches', stitches, ink, width: wide * scale }], stitches.length)];
  };
  return [
    patch(
      `${name}/crop`,
      [
        ...top.map(([x, y]): Point => [Math.min(right + 1, x), y]),
        [right + 1, row.y + row.depth * 0.62],
        [box.x - 1, row.y + row.depth * 0.64],
      ],
      look.leafShare > 0.4 ? row.cloth : 'walnutWarm',
      { shadow: 1.2, seam: 0, grain: null, scissors: { miss: 0.5, snip: 60, bow: 0.02 } },
    ),
    ...sewn('open', look.openBolls, 'lint', 1.05),
    ...sewn('white', look.whiteFlowers, look.kind === 'pima' ? 'weld' : 'lint'),
    ...sewn('pink', look.pinkFlowers, look.kind === 'pima' ? 'madder' : 'blush'),
  ];
}
