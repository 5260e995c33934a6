import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { seedLeafShape } from '../../cloth/piece-shapes.ts';
import { type Box, place, rectangle, ring } from '../../cloth/point.ts';
import { chalkRule } from '../../cloth/ruler.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { type DisplayList, group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import { type FieldGround, type FieldWeather, skyMarks, soilMarks } from './field-ground.ts';

export interface FurrowScene {
  readonly seedsPerFoot: number;
  /** How far the seed has come from planting (0) to breaking the soil (1). */
  readonly progress: number;
  /** Share of the seeds that come up, 0 to 1. */
  readonly emergingShare: number;
  readonly weather: FieldWeather;
  readonly soilWaterFraction: number;
  readonly size: { readonly width: number; readonly height: number };
  readonly labels: {
    /** Ticks along the furrow: feet from the left edge, and what to write there. */
    readonly rowTicks: readonly { readonly feet: number; readonly text?: string }[];
  };
}

/** Feet of furrow in view. */
export const furrowFeet = (width: number): number => (width > 500 ? 4 : 2);

/** A cut through the furrow before the crop is up: the planter, the seed at its count to the foot, and what it becomes. */
export function furrowScene(scene: FurrowScene): DisplayList {
  const { width, height } = scene.size;
  const box: Box = { x: 3, y: 3, width: width - 9, height: height - 10 };
  const soilY = box.y + box.height * 0.5;
  const ground: FieldGround = {
    box,
    soilY,
    weather: scene.weather,
    soilWaterFraction: scene.soilWaterFraction,
  };
  const pxPerFoot = box.width / furrowFeet(width);
  const unit = Math.min(width, height * 1.3) / 728;
  const planting = scene.progress < 0.05;
  const last = planting ? box.x + box.width * 0.72 : box.x + box.width;
  const spacing = pxPerFoot / scene.seedsPerFoot;
  const depthPx = 74 * unit;
  const seeds: Mark[] = [];
  let sown = 0;
  for (let x = box.x + spacing / 2; x < last; x += spacing) {
    const rises = chanceOf(`furrow/${sown}`)() < scene.emergingShare;
    seeds.push(
      ...seedlingMarks(
        `furrow/${sown}`,
        x,
        soilY,
        depthPx,
        Math.min(20 * unit, spacing * 0.32),
        rises ? scene.progress : Math.min(0.2, scene.progress),
      ),
    );
    sown++;
  }
  const trench: Mark = {
    kind: 'stitches',
    stitches: runningStitches(
      [
        [box.x + 6, soilY + depthPx + 20 * unit],
        [last, soilY + depthPx + 20 * unit],
      ],
      'furrow/line',
      { on: 8, off: 8, closed: false },
    ),
    ink: 'walnutPale',
    width: 1.6,
  };
  const tape = rectangle(box.x - 2, box.y + box.height - 46, box.width + 4, 34);
  const ticks = scene.labels.rowTicks.map(({ feet, text }) =>
    text === undefined ? { at: feet * pxPerFoot } : { at: feet * pxPerFoot, text },
  );
  return [
    patch('furrow/backing', rectangle(box.x, box.y, box.width, box.height), 'walnut', {
      shadow: 4,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    ...skyMarks(ground),
    ...soilMarks(ground),
    trench,
    group('seedsSown', seeds, sown),
    patch('furrow/tape', tape, 'muslin', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8, snip: 120, bow: 0.001 },
    }),
    ...chalkRule([box.x, box.y + box.height - 44], box.width, ticks, { direction: 'right', ink: 'ink', size: 14 }),
    ...(planting ? [group('planter', planterMarks(last, soilY, unit))] : []),
  ];
}

/** A seed on its way: lying, rooting, hooked under the crust, up with two seed leaves. */
function seedlingMarks(
  name: string,
  x: number,
  soilY: number,
  depthPx: number,
  size: number,
  progress: number,
): Mark[] {
  const chance = chanceOf(name);
  const seedY = soilY + depthPx + spread(chance, size * 0.2);
  const marks: Mark[] = [];
  const thread = (points: readonly Point[], from: number, to: number, part: string): Mark =>
    patch(`${name}/${part}`, taperedStrip(points, from, to), 'muslin', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    });
  const wide = Math.max(2.4, size * 0.26);
  const root = Math.min(1, Math.max(0, (progress - 0.12) / 0.5));
  if (root > 0) {
    const deep = size * 3.6 * root;
    marks.push(
      thread(
        [
          [x, seedY],
          [x + size * 0.12, seedY + deep * 0.5],
          [x - size * 0.06, seedY + deep],
        ],
        wide,
        wide * 0.4,
        'root',
      ),
    );
  }
  const rise = Math.min(1, Math.max(0, (progress - 0.45) / 0.5));
  const headY = seedY - depthPx * rise * (progress >= 1 ? 1.75 : 0.94);
  if (rise > 0 && progress < 1) {
    const hook: Point[] = [
      [x, seedY],
      [x - size * 0.1, headY + size * 0.7],
      [x + size * 0.1, headY],
      [x + size * 0.6, headY - size * 0.1],
      [x + size * 0.8, headY + size * 0.55],
    ];
    marks.push(
      thread(hook, wide, wide, 'hook'),
      ...pieceMarks('seed', name, { x: x + size * 0.8, y: headY + size * 0.9, size: size * 0.8, turn: Math.PI }),
    );
    return marks;
  }
  if (progress >= 1) {
    marks.push(
      thread(
        [
          [x, seedY],
          [x + size * 0.08, soilY],
          [x, headY],
        ],
        wide,
        wide * 0.8,
        'stem',
      ),
    );
    for (const side of [-1, 1]) {
      const leaf = place(
        seedLeafShape.map(([px, py]): Point => [px, py - 0.24]),
        { x: x + side * size * 0.12, y: headY, size: size * 1.55, wide: 0.6, turn: side * 1.2 },
      );
      marks.push(
        patch(`${name}/leaf${side}`, leaf, side < 0 ? 'leafGreen' : 'bollGreen', {
          shadow: 2.6,
          seam: size > 14 ? 4 : 0,
          thread: 'youngGreen',
          grain: null,
          scissors: { miss: 0.5 },
        }),
      );
    }
    return marks;
  }
  marks.push(...pieceMarks('seed', name, { x, y: seedY, size, turn: spread(chance, 0.9) + Math.PI }));
  return marks;
}

/** The planter: a hopper of counted seed, a disc that opens the soil, a wheel that presses it shut. */
function planterMarks(x: number, soilY: number, unit: number): Mark[] {
  const s = unit;
  const disc: Point = [x + 70 * s, soilY - 30 * s];
  const press: Point = [x - 62 * s, soilY - 38 * s];
  const spokes: Stitch[] = Array.from({ length: 6 }, (_, i) => {
    const angle = (i / 6) * 2 * Math.PI;
    return [
      press[0] + Math.cos(angle) * 8 * s,
      press[1] + Math.sin(angle) * 8 * s,
      press[0] + Math.cos(angle) * 30 * s,
      press[1] + Math.sin(angle) * 30 * s,
    ];
  });
  const hopperSeeds = [
    [-18, -12],
    [8, -20],
    [28, -6],
    [-4, 6],
    [18, 14],
    [4, 30],
  ] as const;
  const machine = (name: string, points: readonly Point[], ink: Parameters<typeof patch>[2], seam = 7) =>
    patch(name, points, ink, { shadow: 4, seam: seam * s, scissors: { miss: 1.6 } });
  return [
    machine(
      'planter/bar',
      [
        [x - 96 * s, soilY - 128 * s],
        [x + 190 * s, soilY - 146 * s],
        [x + 192 * s, soilY - 122 * s],
        [x - 94 * s, soilY - 106 * s],
      ],
      'indigo',
    ),
    machine(
      'planter/arm',
      [
        [x - 78 * s, soilY - 112 * s],
        [x - 52 * s, soilY - 114 * s],
        [x - 50 * s, soilY - 34 * s],
        [x - 72 * s, soilY - 36 * s],
      ],
      'indigoWarm',
      0,
    ),
    machine('planter/press', ring(press[0], press[1], 42 * s, 15), 'mid'),
    { kind: 'stitches', stitches: spokes, ink: 'thread', width: 2 },
    patch('planter/pressHub', ring(press[0], press[1], 9 * s, 7), 'weld', { shadow: 1.2, seam: 0, grain: null }),
    machine(
      'planter/tube',
      [
        [x + 26 * s, soilY - 120 * s],
        [x + 50 * s, soilY - 122 * s],
        [x + 14 * s, soilY + 66 * s],
        [x - 4 * s, soilY + 66 * s],
      ],
      'faded',
      0,
    ),
    machine('planter/disc', ring(disc[0], disc[1], 82 * s, 18), 'indigo', 9),
    {
      kind: 'stitches',
      stitches: runningStitches(ring(disc[0], disc[1], 46 * s, 30), 'planter/ring', { on: 8, off: 6 }),
      ink: 'thread',
      width: 1.8,
    },
    patch('planter/hub', ring(disc[0], disc[1], 16 * s, 7), 'weld', { shadow: 2.6, seam: 0, grain: null }),
    machine(
      'planter/hopper',
      [
        [x - 30 * s, soilY - 236 * s],
        [x + 106 * s, soilY - 244 * s],
        [x + 74 * s, soilY - 128 * s],
        [x + 4 * s, soilY - 126 * s],
      ],
      'madder',
    ),
    ...hopperSeeds.flatMap(([dx, dy], i) =>
      pieceMarks('seed', `planter/seed${i}`, {
        x: x + (38 + dx) * s,
        y: soilY + (-192 + dy) * s,
        size: 12 * s,
        turn: i,
      }),
    ),
  ];
}
