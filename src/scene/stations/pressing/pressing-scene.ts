import { bandMarks } from '../../cloth/band.ts';
import { partStitches } from '../../cloth/part-stitch.ts';
import { patch } from '../../cloth/patch.ts';
import { piecedGround } from '../../cloth/pieced-ground.ts';
import { type Box, pathLength, rectangle } from '../../cloth/point.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPiece, SceneFrame } from '../../scene-frame.ts';
import { captionHem } from '../flow/caption-hem.ts';
import { type FlowLegend, type Masses, stripsOf } from '../flow/flow-input.ts';
import { legendOf } from '../flow/piece-mass.ts';
import { pocketed } from '../flow/pocket.ts';
import { ridingPieces } from '../flow/ride.ts';
import { weightMarks, weightsStill, yardMarks, yardStill } from './bale-yard.ts';
import {
  baleCloth,
  FULL_AT,
  insideOf,
  PRESSED_AT,
  pressedBox,
  pressOver,
  pressStill,
  tramperPart,
} from './press-art.ts';
import type { PressingInput } from './pressing-input.ts';
import { layPressing, type PressingLayout } from './pressing-layout.ts';
import { pressingWords } from './pressing-words.ts';

/** Every piece goes the whole of its path in this time, seconds. */
const LAP_SECONDS = 26;

export interface PressingFrame extends SceneFrame {
  readonly legend: FlowLegend;
}

/** What pieces stand for. */
export const pressingLegend = ({ lint, pressed, unitKg }: PressingInput): FlowLegend =>
  legendOf(
    {
      inflow: [lint.masses],
      outflow: [pressed.masses],
      unitKg,
    },
    { mostTufts: 52, mostBits: 8 },
  );

/**
 * The double-box press: lint is tramped into one box, turned under the ram, pressed to a bale and tied, while the bales of the
 * whole field gather beside it.
 * @returns the frame for a share of the work done, 0 to 1; what stands still is the same until the bale is pressed, and from then on
 */
export function pressingScene(input: PressingInput): (progress: number) => PressingFrame {
  const { width, height } = input.size;
  const legend = pressingLegend(input);
  const layout = layPressing(input, { long: input.labels.caption(legend), short: input.labels.captionShort(legend) });
  const { pxPerKg, slidePath } = layout;
  const band = (name: string, path: readonly Point[], masses: Masses): Mark =>
    group(
      `band/${name}`,
      bandMarks(`pressing/${name}`, path, stripsOf(masses, pxPerKg), { rowPx: legend.rowKg * pxPerKg }),
    );
  const still: Mark[] = [
    ...ground(input, layout),
    ...pressStill(layout),
    yardStill(input, layout),
    ...weightsStill(input, layout),
    ...(input.water ? [band('in/moistureAdded', waterPath(layout), input.water.masses)] : []),
    band('in/lot', slidePath, input.lint.masses),
    ...(input.water ? dampBox(layout) : []),
  ];
  // The bale's cloth lies under its tufts: from then on the rest is another list, painted once more.
  const baledStill = [...still, baleCloth(input, layout)];
  const fed = [
    ...rides('in/lot', intoBox(layout), input.lint.masses, pxPerKg, legend),
    ...(input.water ? rides('in/moistureAdded', waterPath(layout), input.water.masses, pxPerKg, legend) : []),
  ];
  const parts = [tramperPart(input, layout)];
  const yard = yardMarks(input, layout);
  const weights = weightMarks(input, layout);
  const words = pressingWords(input, layout);
  const hem = captionHem('pressing', layout.caption, input.size, layout.small);
  return (progress) => ({
    width,
    height,
    still: progress < PRESSED_AT ? still : baledStill,
    parts,
    moving: [...fed, ...baled(input, layout, legend, progress)],
    over: [...pressOver(input, layout, progress), ...yard(progress), ...weights(progress), ...hem, ...words(progress)],
    lapSeconds: LAP_SECONDS,
    legend,
  });
}

/** Where one leaves a picture's edge for the lint in the tramped box. */
const intoBox = ({ slidePath, trampBox }: PressingLayout): Point[] => [
  [1, slidePath[0]![1]],
  ...slidePath.slice(1),
  [slidePath.at(-1)![0], trampBox.y + trampBox.height * 0.3],
];

/** From the picture's upper edge down into the lint on the slide. */
const waterPath = ({ damp: [x, y] }: PressingLayout): Point[] => [
  [x, 1],
  [x, y],
];

const rides = (
  band: string,
  path: readonly Point[],
  masses: Masses,
  pxPerKg: number,
  legend: FlowLegend,
): MovingPiece[] =>
  ridingPieces({ name: `pressing/${band}`, band, path, visible: [[0, pathLength(path)]], pxPerKg }, masses, legend);

/** The lint of this bale: tramped into its box, tuft by tuft, then pressed to its place in the bale. */
function baled(input: PressingInput, layout: PressingLayout, legend: FlowLegend, progress: number): MovingPiece[] {
  const account = { band: 'out/lot', masses: input.pressed.masses, form: 'tuft' } as const;
  return progress < FULL_AT
    ? pocketed(account, insideOf(layout.trampBox), legend, progress / FULL_AT)
    : pocketed(account, pressedBox(input, layout, progress), legend, 1);
}

/** Where damp air goes through the lint on its slide: a box across the band, sewn with waves. */
function dampBox({ damp: [x, y], slidePath, phone }: PressingLayout): Mark[] {
  const half = (slidePath.at(-1)![1] - slidePath[0]![1]) * 0.9 + (phone ? 6 : 12);
  const wide = phone ? 22 : 30;
  return [
    patch('pressing/damp', rectangle(x - wide / 2, y - half, wide, half * 2), 'mid', {
      shadow: 2.6,
      seam: 4,
      scissors: { miss: 1 },
    }),
    {
      kind: 'stitches',
      stitches: partStitches(
        'water',
        [
          [x, y - half + 5],
          [x, y + half - 5],
        ],
        'pressing/damp',
        1,
      ),
      ink: 'thread',
      width: 1.8,
    },
  ];
}

function ground({ size }: PressingInput, { floorY }: PressingLayout): Mark[] {
  const box: Box = { x: 3, y: 3, width: size.width - 7, height: size.height - 8 };
  return [
    patch('pressing/ground', rectangle(box.x, box.y, box.width, box.height), 'weld', {
      shadow: 4,
      seam: 0,
      grain: null,
    }),
    ...piecedGround(
      'pressing/wall',
      { ...box, height: floorY - box.y },
      { inks: ['weld', 'weldPale'], strips: 3, thread: 'walnut' },
    ),
    ...piecedGround(
      'pressing/floor',
      { ...box, y: floorY, height: box.height + box.y - floorY },
      { inks: ['calico', 'muslin'], strips: 1 },
    ),
  ];
}
