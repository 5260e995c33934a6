import { bandMarks } from '../../cloth/band.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { slip } from '../../cloth/slot-words.ts';
import { type DisplayList, group, type Mark, type Point } from '../../display-list.ts';
import type { SceneFrame } from '../../scene-frame.ts';
import { captionHem } from '../flow/caption-hem.ts';
import { type FlowLegend, massOf, stripsOf } from '../flow/flow-input.ts';
import { roundMass } from '../flow/piece-mass.ts';
import { pocketed, pocketMarks, riding } from '../flow/pocket.ts';
import { sceneGround } from '../scene-ground.ts';
import { baleMarks, sampleMarks, sampleThreads } from './bale-and-sample.ts';
import type { ClassingScene } from './classing-input.ts';
import { type ClassingLayout, captionSize, layClassing } from './classing-layout.ts';
import { colourChart, standardBoxes } from './colour-chart.ts';
import { priceLines, priceSlipStill } from './price-slip.ts';
import { baleNotch, headMarks, leafScale, lengthScale, micronaireScale, type Scale } from './scales.ts';

/** About so many tufts can be told apart in the pocket. */
const MOST_TUFTS = 60;
const LAP_SECONDS = 26;

/** Shares of the work: the sample is cut, the readings fall one after the other, the price is built, the sum is written. */
const cutBy = 0.1;
const readFrom = 0.1;
const readEach = 0.08;
const priceFrom = 0.44;
const summedFrom = 0.84;

/** What a tuft stands for in the classing room, kg. */
export const tuftKgOf = ({ inflow, unitKg }: Pick<ClassingScene, 'inflow' | 'unitKg'>): number =>
  roundMass(massOf(inflow) / MOST_TUFTS, unitKg);

/**
 * The classing room: one bale sampled from both its sides, its readings on their scales among the season's other bales, and its
 * price line by line. Laid out once; the function gives the frame at a share of the work done.
 */
export function classingScene(scene: ClassingScene): (progress: number) => SceneFrame {
  const { width, height } = scene.size;
  const tuftKg = tuftKgOf(scene);
  const legend: FlowLegend = { tuftKg, bitKg: tuftKg, rowKg: tuftKg };
  const caption = scene.labels.caption(tuftKg);
  const layout = layClassing(scene, caption);
  const scales = scalesOf(scene, layout);
  const { band, pocket, bale } = layout;
  const ride: Point[] = [
    [bale.x + bale.width * 0.5, band.y],
    [pocket.x + 10, band.y],
  ];
  const still: DisplayList = [
    ...sceneGround('classing/ground', scene.size, ['calico', 'muslin', 'cotton'], layout.wide ? 3 : 5, 'walnutPale'),
    patch(
      'classing/table',
      rectangle(layout.table.x, layout.table.y, layout.table.width, layout.table.height),
      'indigo',
      {
        shadow: 4,
        seam: 5,
        thread: 'faded',
        scissors: { miss: 1.4, snip: 90, bow: 0.002 },
      },
    ),
    group(
      'band/in/lot',
      bandMarks(
        'classing/in',
        [
          [-4, band.y],
          [pocket.x + 10, band.y],
        ],
        stripsOf(scene.inflow, band.px / massOf(scene.inflow)),
        {
          rowPx: band.px / 3,
        },
      ),
    ),
    sampleThreads(scene, layout),
    ...scales.flatMap(({ scale }) => scale.still),
    ...priceSlipStill(scene.price, layout.price, layout.text),
    group('pocket/lot', pocketMarks('classing/pocket', pocket, 'calico', 'madder')),
    ...captionHem('classing', caption, scene.size, captionSize(layout.text, layout.roomy)),
  ];
  const baleOver = baleMarks(scene, layout);
  return (progress) => ({
    width,
    height,
    still,
    parts: [],
    moving: [
      ...riding({ band: 'in/lot', masses: scene.inflow, form: 'tuft' }, ride, band.px * 0.8, legend, progress),
      ...pocketed({ band: 'out/lot', masses: scene.onward, form: 'tuft' }, pocket, legend, progress),
    ],
    over: [
      ...baleOver,
      ...sampleMarks(scene, layout, Math.min(1, progress / cutBy), progress),
      ...scales.flatMap((each, i) => readMarks(each, i, layout, progress)),
      ...priceMarks(scene, layout, progress),
      ...slip(
        'classing/onward',
        scene.labels.onward(progress),
        { ...layout.onward, anchor: 'end', stands: 'bottom' },
        { size: layout.text, bold: true },
      ),
    ],
    lapSeconds: LAP_SECONDS,
  });
}

interface PlacedScale {
  readonly scale: Scale;
  readonly words: { readonly name: string; readonly value: string };
  readonly box: Box;
}

function scalesOf({ length, colour, micronaire, leaf }: ClassingScene, { cells, text }: ClassingLayout): PlacedScale[] {
  const placed: PlacedScale[] = [
    { scale: lengthScale(length, cells[0]!, text), words: length, box: cells[0]! },
    {
      scale: colour.kind === 'chart' ? colourChart(colour, cells[1]!, text) : standardBoxes(colour, cells[1]!, text),
      words: colour,
      box: cells[1]!,
    },
  ];
  if (micronaire)
    placed.push({ scale: micronaireScale(micronaire, cells[2]!, text), words: micronaire, box: cells[2]! });
  if (leaf) placed.push({ scale: leafScale(leaf, cells[3]!, text), words: leaf, box: cells[3]! });
  return placed;
}

/** A reading's mark on its way down to its scale, and what it says once it is there. */
function readMarks({ scale, words, box }: PlacedScale, i: number, { text }: ClassingLayout, progress: number): Mark[] {
  const share = Math.max(0, Math.min(1, (progress - readFrom - i * readEach) / readEach));
  const there = share >= 1;
  const head = headMarks(words, box, text, there);
  if (share === 0) return head;
  const from = box.y + text * 1.4 + 10;
  const y = from + (scale.at[1] - from) * share * share;
  return [...head, ...(there ? scale.read : []), ...baleNotch(`classing/notch${i}`, [scale.at[0], y])];
}

function priceMarks({ price }: ClassingScene, layout: ClassingLayout, progress: number): Mark[] {
  const lines = price.lines.length;
  const share = (progress - priceFrom) / (summedFrom - priceFrom);
  const shown = share < 0 ? 0 : Math.min(lines, Math.floor(share * lines + 1));
  return priceLines(price, layout.price, layout.text, shown, progress >= summedFrom);
}
