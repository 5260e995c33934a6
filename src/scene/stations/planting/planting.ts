import type { CottonKind } from '../../cloth/flower.ts';
import { lettered } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { chalkRule, type RulerTick } from '../../cloth/ruler.ts';
import { type DisplayList, group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPiece, SceneFrame } from '../../scene-frame.ts';
import { backingMark, skyMarks } from '../field/ground.ts';
import { type HeatTape, heatLaidMarks, heatTapeMarks } from '../field/heat-tape.ts';
import { padMark } from '../field/pad.ts';
import { cloudMarks, dropPieces, dropsOf, type FieldWeather, rainPath, sunPart } from '../field/weather.ts';
import { layPlant } from '../plant/plant-layout.ts';
import { plantMarks } from '../plant/plant-marks.ts';
import type { DrawnPlant } from '../plant/plant-sample.ts';
import { countBandMarks, type SeedCounts } from './count-band.ts';
import { horsePlanter } from './horse-planter.ts';
import { PLANTER_HEIGHT, type PlanterWords, rowPlanter } from './planter.ts';
import { type PlantingPlot, plantingPlot, rowFeet } from './planting-plot.ts';
import { type LargeSeed, seedPadMarks } from './seed-pad.ts';
import { risenMarks, seedlingMarks, wayOf } from './seedling.ts';
import { furrowSeeds, soilCutMarks } from './soil-cut.ts';
import { type ThermometerScale, thermometerMarks, warmthMarks } from './thermometer.ts';

/** What stays the same on every day of Planting. */
export interface PlantingScene {
  readonly size: { readonly width: number; readonly height: number };
  readonly seedsPerFoot: number;
  /** Share of the seeds that come up, 0 to 1. */
  readonly emergingShare: number;
  /** Plants by lot, one after another along the row. */
  readonly plants: readonly DrawnPlant[];
  readonly kind: CottonKind;
  /** Height of the plants on the station's last day, inches. */
  readonly mostHeightInches: number;
  /** One row drawn by a mule, or a row of many drawn by a tractor. */
  readonly planter: 'row' | 'horse';
  /** Mass of one seed, and the water of one drop. */
  readonly seedKg: number;
  readonly drop: { readonly inches: number; readonly kg: number };
  readonly heat: HeatTape;
  readonly thermometer: ThermometerScale;
  readonly labels: {
    readonly caption: (feet: number) => string;
    readonly captionShort: (feet: number) => string;
    readonly planter: PlanterWords;
    /** Ticks of the row tape up to so many inches. */
    readonly rowTicks: (inches: number) => readonly { readonly inches: number; readonly text?: string }[];
  };
}

/** One day of Planting; the first day has steps of sowing. */
export interface PlantingDay {
  readonly dayOfYear: number;
  /** How much of the field is sown, 0 to 1. */
  readonly sownShare: number;
  /** How far the seed has come from planting (0) to breaking the soil (1), by heat. */
  readonly risenShare: number;
  readonly heightInches: number;
  readonly warmth: { readonly minF: number; readonly maxF: number };
  readonly weather: FieldWeather;
  readonly counts: SeedCounts;
  /** Words of the seed shown large. */
  readonly large: LargeSeed['labels'];
  readonly heat: { readonly dd60: number; readonly text: string; readonly short: string };
  readonly sunShows: string;
}

/** While the scene plays, the whole row in view passes under the planter in this time, seconds. */
const CROSSING_SECONDS = 2.4;
/** A drop falls, and a seed goes down its tube, in this time. */
const FALL_SECONDS = 1.8;
/** Seeds on their way down the tube at once. */
const SEEDS_IN_TUBE = 3;

/** Lays out one row from sowing to the first square: planter, seeds counted along a tape, seedlings, young plants. */
export function layOutPlanting(scene: PlantingScene): (day: PlantingDay) => SceneFrame {
  const feet = rowFeet(scene.size, scene.mostHeightInches, scene.labels);
  const plot = plantingPlot(scene.size, feet, scene.labels);
  const { box, soilY, textPx } = plot;
  const seeds = furrowSeeds(plot, scene.seedsPerFoot, scene.emergingShare);
  const ticks: RulerTick[] = scene.labels
    .rowTicks(feet * 12)
    .map(({ inches, text }) =>
      text === undefined ? { at: inches * plot.pxPerInch } : { at: inches * plot.pxPerInch, text },
    );
  const still: Mark[] = [
    backingMark(box),
    ...skyMarks(box, soilY),
    ...soilCutMarks(plot),
    group('rowTape', rowTapeMarks(plot, ticks)),
    group('heatTape', heatTapeMarks(scene.heat, plot.heatTape, textPx)),
  ];
  const thermometer = group('thermometer', thermometerMarks(scene.thermometer, plot.thermometer, textPx));
  const caption = lettered(plot.caption.lines, [plot.caption.x, plot.caption.y], {
    size: textPx,
    ink: 'lint',
    italic: true,
  });
  const unit = (soilY - plot.sowing.skyTop - textPx * 0.3) / PLANTER_HEIGHT;
  const rowPx = plot.rowEnd - plot.rowX;
  const edges = { left: plot.thermometer.x + 4, right: box.x + box.width };
  const drawPlanter = scene.planter === 'horse' ? horsePlanter : rowPlanter;
  const padOf = (box: Box | null) => box && { box, cloth: padMark('planting', box) };
  const pads = { later: padOf(plot.pad), sowing: padOf(plot.sowing.pad) };
  return (day) => {
    const sowing = day.sownShare < 1;
    const pad = sowing ? pads.sowing : pads.later;
    const sunAt = sowing ? plot.sowing.sunAt : plot.sun.at;
    const cloudY = sowing ? plot.sowing.cloudY : plot.cloudY;
    const tubeX = plot.rowX + rowPx * day.sownShare;
    const planter = sowing
      ? drawPlanter({
          tube: [tubeX, plot.seedY],
          soilY,
          depthPx: plot.seedY - soilY,
          unit,
          pxPerFoot: plot.pxPerInch * 12,
          seedsPerFoot: scene.seedsPerFoot,
          pxPerSecond: rowPx / CROSSING_SECONDS,
          words: scene.labels.planter,
          edges,
        })
      : null;
    const lying = seeds.filter(({ x }) => !sowing || x <= tubeX);
    return {
      width: plot.width,
      height: plot.height,
      still,
      parts: [sunPart(sunAt, plot.sun.mostPx, day.weather.dd60, day.sunShows), ...(planter?.parts ?? [])],
      moving: [
        ...waterPieces(plot, cloudY, day.weather, scene.drop),
        ...tubePieces(planter?.seedPath, plot, scene.seedKg),
      ],
      over: [
        ...cloudMarks(
          [plot.rowX, cloudY],
          { x: plot.rowEnd - 6, depth: (soilY - box.y) * 0.2 },
          day.weather.rainInches,
        ),
        group('seedsSown', rowMarks(scene, plot, lying, day), lying.length),
        ...(planter?.body ?? []),
        thermometer,
        warmthMarks(scene.thermometer, plot.thermometer, { ...day.warmth, dd60: day.weather.dd60 }, textPx),
        ...(pad ? [pad.cloth, ...seedPadMarks(pad.box, largeOf(scene, day), day.counts, textPx)] : []),
        ...(plot.counts
          ? [countsSlip(plot.counts, textPx), ...countBandMarks(day.counts, plot.counts, textPx, 'ink')]
          : []),
        ...caption,
        heatLaidMarks(scene.heat, plot.heatTape, day.heat, textPx),
      ],
      lapSeconds: FALL_SECONDS,
    };
  };
}

/** The cloth under the counts where they lie on the sky. */
const countsSlip = ({ x, y, width, height }: Box, textPx: number): Mark => {
  const pad = textPx * 0.45;
  return patch('counts/slip', rectangle(x - pad, y - pad, width + 2 * pad, height + 2 * pad), 'muslin', {
    shadow: 1.2,
    seam: 0,
    grain: null,
    scissors: { miss: 0.9, snip: 60, bow: 0.004 },
  });
};

const largeOf = ({ plants, kind }: PlantingScene, day: PlantingDay): LargeSeed => ({
  plant: plants[0]!,
  kind,
  dayOfYear: day.dayOfYear,
  risenShare: day.risenShare,
  heightInches: day.heightInches,
  labels: day.large,
});

/** Every seed of the row as it is on the day: lying, rooting, rising, or a plant; those that stay, staying. */
function rowMarks(
  scene: PlantingScene,
  plot: PlantingPlot,
  seeds: ReturnType<typeof furrowSeeds>,
  day: PlantingDay,
): DisplayList {
  const up = day.risenShare >= 1;
  const below: Mark[] = [];
  const above: Mark[] = [];
  seeds.forEach(({ name, x, comesUp }, i) => {
    const place = { x, y: plot.seedY, soilY: plot.soilY, size: plot.seedPx };
    if (!up || !comesUp) {
      below.push(...seedlingMarks(name, place, wayOf(name, Math.min(1, day.risenShare), comesUp)));
      return;
    }
    below.push(...risenMarks(name, place));
    const foot: Point = [x, plot.soilY + 2];
    const { pxPerInch } = plot;
    const nodes = layPlant(scene.plants[i % scene.plants.length]!, {
      dayOfYear: day.dayOfYear,
      heightInches: day.heightInches,
      foot,
      pxPerInch,
    });
    above.push(...plantMarks(nodes, { dayOfYear: day.dayOfYear, pxPerInch, kind: scene.kind, leafShare: 1, foot }));
  });
  return [...below, group('plants', above, up ? seeds.filter(({ comesUp }) => comesUp).length : 0)];
}

/** A tailor's tape along the furrow, so that the seeds can be counted to the foot. */
function rowTapeMarks({ rowX, rowEnd, rowTape, textPx }: PlantingPlot, ticks: readonly RulerTick[]): Mark[] {
  return [
    patch('row/tape', rectangle(rowTape.x, rowTape.y, rowTape.width, rowTape.height), 'muslin', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8, snip: 160, bow: 0.0006 },
    }),
    ...chalkRule([rowX, rowTape.y + 2], rowEnd - rowX, ticks, {
      direction: 'right',
      ink: 'ink',
      size: textPx,
    }),
  ];
}

/** Rain over the row, or irrigation along it. */
function waterPieces(
  plot: PlantingPlot,
  cloudY: number,
  weather: FieldWeather,
  drop: PlantingScene['drop'],
): MovingPiece[] {
  const { soilY, textPx, rowX, rowEnd } = plot;
  const size = Math.max(6, textPx * 0.5);
  const right = rowEnd - 12;
  return [
    ...dropPieces(
      'rain',
      dropsOf(weather.rainInches, drop.inches),
      size,
      drop.kg,
      rainPath(rowX + 6, right, cloudY + (soilY - cloudY) * 0.2, soilY - 6),
    ),
    ...dropPieces('irrigation', dropsOf(weather.irrigationInches, drop.inches), size, drop.kg, () => [
      [rowX, soilY + size * 0.7],
      [right, soilY + size * 0.7],
    ]),
  ];
}

/** Seeds on their way from the plate into the furrow. */
function tubePieces(path: readonly Point[] | undefined, plot: PlantingPlot, seedKg: number): MovingPiece[] {
  if (!path) return [];
  return Array.from(
    { length: SEEDS_IN_TUBE },
    (_, i): MovingPiece => ({
      name: `tube/${i}`,
      band: 'seed',
      part: 'seed',
      form: 'tuft',
      cut: i,
      standsForKg: seedKg,
      path,
      restPx: ((i + 0.3) / SEEDS_IN_TUBE) * (plot.seedY - (path[0]?.[1] ?? 0)),
      size: plot.seedPx * 0.8,
    }),
  );
}
