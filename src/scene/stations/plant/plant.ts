import type { CottonKind } from '../../cloth/flower.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { chalkRule, notchMarks, type RulerTick } from '../../cloth/ruler.ts';
import { type DisplayList, group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import { type FieldGround, type FieldWeather, rowsMarks, skyMarks, soilMarks } from './field-ground.ts';
import { type LaidNode, layPlant } from './plant-layout.ts';
import { cutBollOf, insetBoll, plantMarks } from './plant-marks.ts';
import type { DrawnPlant } from './plant-sample.ts';

export interface PlantScene {
  readonly plant: DrawnPlant;
  readonly dayOfYear: number;
  readonly kind: CottonKind;
  readonly heightInches: number;
  readonly weather: FieldWeather;
  readonly soilWaterFraction: number;
  /** Share of the leaves still on, 0 to 1; 1 before a harvest aid. */
  readonly leafShare: number;
  /** Share of the kept bolls that are open, 0 to 1. */
  readonly openShare: number;
  /** Shows the oldest green boll cut open, where there is room. */
  readonly cutBoll?: boolean;
  readonly size: { readonly width: number; readonly height: number };
  readonly labels: PlantLabels;
}

/** Words for the picture, already translated. */
export interface PlantLabels {
  /** Ticks for the height rule: inches above the soil, and what to write there; a tick without words is short. */
  readonly heightTicks: readonly { readonly inches: number; readonly text?: string }[];
  readonly node: (number: number) => string;
  /** Caption of the cut boll, with the number of seeds drawn. */
  readonly cutBoll?: (seeds: number) => string;
}

/** Heights the rule can show, inches: the picture steps back as the plant grows. */
const VIEW_INCHES = [10, 18, 28, 40, 54, 72] as const;
/** Every so many nodes one is named. */
const NODES_NAMED = 5;

/** How tall the view is for a plant: the caller makes ticks up to here. */
export const viewInchesFor = (heightInches: number): number =>
  VIEW_INCHES.find((view) => view >= heightInches * 1.12 + 1) ?? 72;

/** One plant in its field on one day, every organ where the model has it. */
export function plantScene(scene: PlantScene): DisplayList {
  const { width, height } = scene.size;
  const wide = width > height * 1.2;
  const box: Box = { x: 3, y: 3, width: width - 9, height: height - 10 };
  const soilY = box.y + box.height * (wide ? 0.845 : 0.86);
  const view = viewInchesFor(scene.heightInches);
  const pxPerInch = (soilY - box.y - (wide ? 14 : 10)) / view;
  const foot: Point = [box.x + box.width * (wide ? 0.46 : 0.53), soilY + 4];
  const nodes = layPlant(scene.plant, {
    dayOfYear: scene.dayOfYear,
    heightInches: scene.heightInches,
    foot,
    pxPerInch,
  });
  const ground: FieldGround = {
    box,
    soilY,
    weather: scene.weather,
    cropShare: Math.min(1, scene.heightInches / 40),
    openShare: scene.openShare,
    leafShare: scene.leafShare,
    soilWaterFraction: scene.soilWaterFraction,
  };
  const cut = scene.cutBoll && wide ? cutBollOf(nodes, scene.dayOfYear) : null;
  const marks: Mark[] = [
    patch('field/backing', rectangle(box.x, box.y, box.width, box.height), 'fadedPale', {
      shadow: 4,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    ...skyMarks(ground),
    ...rowsMarks(ground),
    ...soilMarks(ground),
    group('height', heightRule(scene, box, soilY, pxPerInch, view)),
    group(
      'nodes',
      nodeNames(cut ? nodes.filter(({ at }) => at[1] < box.y + box.height * 0.54) : nodes, scene, box, wide),
    ),
    ...plantMarks(nodes, { dayOfYear: scene.dayOfYear, pxPerInch, kind: scene.kind, leafShare: scene.leafShare, foot }),
  ];
  if (cut) marks.push(...insetMarks(scene, cut, box));
  return marks;
}

/** The height rule is a tailor's tape that hangs beside the plant, from the top of the picture to the soil. */
function heightRule(scene: PlantScene, box: Box, soilY: number, pxPerInch: number, view: number): Mark[] {
  const ticks: RulerTick[] = scene.labels.heightTicks
    .filter((tick) => tick.inches <= view - 0.5)
    .map(({ inches, text }) => (text === undefined ? { at: inches * pxPerInch } : { at: inches * pxPerInch, text }));
  const roomy = box.width > 500;
  const wide = roomy ? 66 : 50;
  const x = box.x + (roomy ? 18 : 6);
  const tape = rectangle(x, box.y - 1, wide, soilY - box.y + 9);
  return [
    patch('height/tape', tape, 'muslin', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8, snip: 120, bow: 0.002 },
    }),
    ...chalkRule([x + wide - 12, soilY], view * pxPerInch - 2, ticks, {
      direction: 'up',
      ink: 'ink',
      size: roomy ? 15 : 12.5,
    }),
    ...notchMarks('height/notch', [x + wide + 8, soilY - scene.heightInches * pxPerInch], 'right', 'madder'),
  ];
}

/** Names every fifth node on a tag beside the plant, with a chalk line across to it. */
function nodeNames(nodes: readonly LaidNode[], scene: PlantScene, box: Box, wide: boolean): Mark[] {
  const size = wide ? 15 : 13;
  const left = box.x + box.width * (wide ? 0.76 : 0.84);
  const stitches: Stitch[] = [];
  const tags: Mark[] = [];
  for (const { node, at } of nodes) {
    if (node.number % NODES_NAMED !== 0 && node.number !== 1) continue;
    const text = scene.labels.node(node.number);
    const width = text.length * size * 0.53 + 12;
    const x = Math.min(left, box.x + box.width - width - 2);
    for (let from = at[0] + 8; from < x - 4; from += 11) stitches.push([from, at[1], Math.min(from + 6, x), at[1]]);
    tags.push(
      patch(`tag/${node.number}`, rectangle(x, at[1] - size * 0.72, width, size * 1.44), 'muslin', {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: 1 },
      }),
      { kind: 'text', text, x: x + width / 2, y: at[1] + size * 0.3, size, ink: 'ink', anchor: 'middle', italic: true },
    );
  }
  return [{ kind: 'stitches', stitches, ink: 'chalk', width: 1.1, flat: true }, ...tags];
}

function insetMarks(scene: PlantScene, cut: Parameters<typeof insetBoll>[0], box: Box): Mark[] {
  const side = box.height * 0.4;
  const x = box.x + box.width - side - 14;
  const y = box.y + box.height - side - 12;
  const marks: Mark[] = [
    patch('inset/pad', rectangle(x, y, side, side), 'indigo', { shadow: 6, seam: 7, scissors: { miss: 2 } }),
    insetBoll(cut, [x + side / 2, y + side * 0.47], side * 0.36),
  ];
  if (scene.labels.cutBoll)
    marks.push({
      kind: 'text',
      text: scene.labels.cutBoll(cut.site.seeds),
      x: x + side / 2,
      y: y + side - 16,
      size: 15,
      ink: 'lint',
      anchor: 'middle',
      italic: true,
    });
  return marks;
}
