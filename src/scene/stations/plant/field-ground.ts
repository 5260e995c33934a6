import { chanceOf, spread } from '../../cloth/chance.ts';
import { partStitches } from '../../cloth/part-stitch.ts';
import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { piecedGround } from '../../cloth/pieced-ground.ts';
import { type Box, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';

export interface FieldWeather {
  /** Heat units of the day, base 60 °F: the size of the sun. */
  readonly dd60: number;
  readonly rainInches: number;
  readonly irrigationInches: number;
}

/** One rain stitch stands for this much rain, and one drop in the furrow for this much irrigation, inches. */
const RAIN_STITCH_INCHES = 0.02;
const IRRIGATION_DROP_INCHES = 0.25;
/** Most rain stitches drawn: beyond it the picture is only wet. */
const MOST_RAIN_STITCHES = 120;
/** From here on the sky is covered. */
const HEAVY_RAIN_INCHES = 0.3;

export interface FieldGround {
  readonly box: Box;
  /** Where the soil begins, y. */
  readonly soilY: number;
  readonly weather: FieldWeather;
  /** Water in the root zone over what it can hold, 0 to 1. */
  readonly soilWaterFraction: number;
}

export function skyMarks({ box, soilY, weather }: FieldGround): Mark[] {
  const wet = weather.rainInches > 0;
  const sky = piecedGround(
    wet ? 'sky/wet' : 'sky/dry',
    { ...box, height: soilY - box.y },
    {
      inks: wet ? ['faded', 'fadedPale', 'faded'] : ['fadedPale', 'fadedThin', 'fadedPale', 'fadedThin'],
      strips: box.width > 500 ? 5 : 4,
      thread: 'muslin',
    },
  );
  return [...sky, ...(wet ? rainMarks(box, soilY, weather.rainInches) : sunMarks(box, weather.dd60))];
}

function sunMarks(box: Box, dd60: number): Mark[] {
  const unit = Math.min(box.width, box.height) / 420;
  const radius = (20 + Math.min(30, Math.max(0, dd60)) * 1.15) * unit;
  const [x, y] = [box.x + box.width * 0.89, box.y + 62 * unit];
  const halo = runningStitches(ring(x, y, radius * 1.32, 30), 'sun/halo', { on: 7, off: 9 });
  return [
    group('heatUnits', [
      patch('sun', ring(x, y, radius, 14, 0.2), 'weld', {
        shadow: 4,
        seam: Math.max(4, radius * 0.16),
        thread: 'muslin',
        scissors: { miss: 1 },
      }),
      { kind: 'stitches', stitches: halo, ink: 'weldPale', width: 2 },
    ]),
  ];
}

function rainMarks(box: Box, soilY: number, rainInches: number): Mark[] {
  const { x, y, width: w } = box;
  // A shower brings a small cloud, an inch of rain the whole sky.
  const deep = (soilY - y) * (0.09 + 0.11 * Math.min(1, rainInches));
  const heavy = rainInches >= HEAVY_RAIN_INCHES;
  const cloud = (name: string, from: number, to: number, ink: 'indigo' | 'mid' | 'indigoWarm', drop: number): Mark => {
    const bottom: Point[] = [];
    const bumps = Math.max(3, Math.round(((to - from) * w) / 80));
    for (let i = bumps; i >= 0; i--) {
      const px = x + w * (from + ((to - from) * i) / bumps);
      bottom.push([px, y + deep * (drop + (i % 2 ? 0.42 : 0.05))]);
    }
    return patch(name, [[x + w * from, y - 1], [x + w * to, y - 1], ...bottom], ink, {
      shadow: 4,
      seam: 7,
      scissors: { miss: 1.6 },
    });
  };
  const count = Math.min(MOST_RAIN_STITCHES, Math.max(1, Math.round(rainInches / RAIN_STITCH_INCHES)));
  const chance = chanceOf('rain');
  const stitches = Array.from({ length: count }, (_, i): Stitch => {
    const px = x + w * ((i + 0.5 + spread(chance, 0.4)) / count) * 0.98 + 10;
    const py = y + deep * 1.2 + (soilY - y - deep * 1.9) * chance();
    const length = 20 + 10 * chance();
    return [px, py, px - length * 0.34, py + length];
  });
  return [
    ...(heavy ? [cloud('cloud/left', 0, 0.62, 'indigo', 0.8)] : []),
    cloud('cloud/right', 0.5, 1, 'mid', 0.5),
    group('rain', [{ kind: 'stitches', stitches, ink: 'indigo', width: 2.6 }], count),
  ];
}

/** The soil at the plant's foot, down to the edge of the picture, with its water as rows of wave stitch, five when full. */
export function soilMarks({ box, soilY, soilWaterFraction, weather }: FieldGround): Mark[] {
  const bottom = box.y + box.height;
  const depth = bottom - soilY;
  const marks: Mark[] = piecedGround(
    'soil',
    { x: box.x, y: soilY, width: box.width, height: depth },
    { inks: ['walnut', 'walnutWarm', 'walnut', 'iron'], strips: 4 },
  );
  marks.push({
    kind: 'stitches',
    stitches: runningStitches(
      [
        [box.x + 8, soilY + 6],
        [box.x + box.width - 8, soilY + 5],
      ],
      'soil/edge',
      { on: 9, off: 7, closed: false },
    ),
    ink: 'thread',
    width: 1.7,
  });
  const rows = 5;
  const full = Math.round(Math.min(1, Math.max(0, soilWaterFraction)) * rows);
  const water: Mark[] = [];
  for (let i = 0; i < full; i++) {
    const y = bottom - depth * (0.1 + 0.15 * i);
    water.push({
      kind: 'stitches',
      stitches: partStitches(
        'water',
        [
          [box.x + 14, y],
          [box.x + box.width - 14, y + 1],
        ],
        `soil/water${i}`,
        1,
      ),
      ink: 'faded',
      width: 1.5,
    });
  }
  marks.push(group('soilWater', water, full));
  const drops = Math.round(weather.irrigationInches / IRRIGATION_DROP_INCHES);
  if (drops > 0)
    marks.push(
      group(
        'irrigation',
        Array.from({ length: drops }, (_, i) =>
          pieceMarks('water', `irrigation/${i}`, {
            x: box.x + (box.width * (i + 0.5)) / drops,
            y: soilY + 14,
            size: 8,
          }),
        ).flat(),
        drops,
      ),
    );
  return marks;
}
