import { piecedGround } from '../../cloth/pieced-ground.ts';
import type { Box } from '../../cloth/point.ts';
import { type Slot, slip } from '../../cloth/slot-words.ts';
import { group, type Mark } from '../../display-list.ts';
import type { SceneFrame } from '../../scene-frame.ts';
import { captionHem, hemPx } from '../flow/caption-hem.ts';
import { massOf } from '../flow/flow-input.ts';
import { legendOf } from '../flow/piece-mass.ts';
import { farField, farSoil, stalksAreCut } from './far-field.ts';
import type { HarvestInput, HarvestRoom, HarvestView } from './harvest-input.ts';
import { HARVEST_LAP_SECONDS } from './harvest-input.ts';
import { labourDone, labourStill } from './labour.ts';
import { sackView } from './sack-view.ts';
import { spindleView } from './spindle-view.ts';
import { stripperView } from './stripper-view.ts';

const viewOf = (room: HarvestRoom): HarvestView =>
  room.input.method === 'hand'
    ? sackView(room)
    : room.input.method === 'spindle'
      ? spindleView(room)
      : stripperView(room);

/**
 * The harvest: the field in the distance as far as it is gathered, the hand or the machine seen close, what a bale's worth of
 * work comes to, and every account of the ledger as a band.
 * @returns the frame when a share of the work is done, 0 to 1
 */
export function harvestScene(input: HarvestInput): (share: number) => SceneFrame {
  const { width, height } = input.size;
  const wide = width > 1.15 * height;
  const inKg = input.inflow.reduce((sum, entry) => sum + massOf(entry.masses), 0);
  const bandRoom = wide ? 0.235 * height : (width < 480 ? 0.185 : 0.235) * width;
  const phone = width < 480;
  const legend = legendOf(
    { inflow: input.inflow.map(withMasses), outflow: input.outflow.map(withMasses), unitKg: input.unitKg },
    { mostTufts: phone ? 24 : 40, mostBits: phone ? 8 : 16 },
  );
  const textPx = wide ? Math.min(18, Math.max(14, width * 0.018)) : phone ? 13 : Math.min(26, width * 0.024);
  const caption = input.labels.caption(legend, width < 700);
  const floor = height - hemPx(caption, width, hemText(textPx));
  const tall = wide ? floor / 0.953 : height;
  const room: HarvestRoom = {
    input,
    wide,
    textPx,
    floor,
    tallPx: tall,
    scale: { pxPerKg: inKg > 0 ? bandRoom / inKg : 0, legend },
  };
  const far: Box = wide
    ? { x: 0, y: 0.155 * tall, width, height: 0.11 * tall }
    : { x: 0, y: 0.145 * tall, width, height: 0.085 * tall };
  const view = viewOf(room);
  const distance = farField('harvest/far', far, input.method);
  const cutSlip = slip(
    'harvest/stalks',
    input.labels.stalks,
    { x: 0.25 * width, y: far.y - 4, width: 0.5 * width, height: far.height * 0.9, anchor: 'middle', stands: 'middle' },
    { size: textPx, italic: true },
  );
  const still = [
    ...groundMarks(input, far),
    ...labourStill('harvest/labour', input.labour, labourBox(room)),
    ...view.still,
  ];
  const hem = group('caption', captionHem('harvest', caption, input.size, hemText(textPx)));
  return (share) => ({
    width,
    height,
    still,
    parts: view.parts,
    moving: view.pieces,
    over: [
      ...view.over(share),
      group('farField', distance(share)),
      ...(stalksAreCut(share) ? cutSlip : []),
      ...labourDone('harvest/labour', input.labour, labourBox(room), share),
      ...labourWords(room, share),
      hem,
    ],
    lapSeconds: HARVEST_LAP_SECONDS,
  });
}

const withMasses = <Account extends string>({
  account,
  masses,
}: {
  account: Account;
  masses: HarvestInput['inflow'][number]['masses'];
}) => ({
  account,
  ...masses,
});

function groundMarks({ size: { width, height } }: HarvestInput, far: Box): Mark[] {
  const line = far.y + far.height;
  return [
    ...piecedGround(
      'harvest/sky',
      { x: 0, y: 0, width, height: line },
      { inks: ['fadedPale', 'fadedThin'], strips: 2, thread: 'quilting' },
    ),
    ...piecedGround(
      'harvest/rows',
      { x: 0, y: line, width, height: height - line },
      { inks: ['youngGreen', 'leafGreen', 'youngGreen'], strips: 4, thread: 'thread' },
    ),
    farSoil('harvest/far', far),
  ];
}

/** Where the suns or the clock stand: in the sky, on the right. */
function labourBox({ input, wide, tallPx: h }: HarvestRoom): Box {
  const { width: w } = input.size;
  const hand = input.labour.kind === 'personDays';
  if (wide)
    return hand
      ? { x: 0.6 * w, y: 0.012 * h, width: 0.385 * w, height: 0.14 * h }
      : { x: 0.985 * w - 0.16 * h, y: 0.008 * h, width: 0.16 * h, height: 0.16 * h };
  return hand
    ? { x: 0.42 * w, y: 0.01 * h, width: 0.56 * w, height: 0.13 * h }
    : { x: 0.985 * w - 0.135 * h, y: 0.008 * h, width: 0.135 * h, height: 0.135 * h };
}

function labourWords(room: HarvestRoom, share: number): Mark[] {
  const { input, textPx, wide, tallPx: h } = room;
  const box = labourBox(room);
  const { width: w } = input.size;
  const tall = (wide ? 0.15 : 0.14) * h;
  const left = (wide ? 0.575 : 0.43) * w;
  const hand = input.labour.kind === 'personDays';
  const handLeft = (wide ? (w > 700 ? 0.365 : 0.3) : 0.02) * w;
  const slot: Slot = hand
    ? {
        x: handLeft,
        y: 6,
        width: box.x - handLeft - 10,
        height: tall * 0.5,
        anchor: 'end',
        stands: 'bottom',
      }
    : { x: left, y: 6, width: box.x - left - 10, height: tall * 0.5, anchor: 'end', stands: 'bottom' };
  return [
    ...slip('harvest/labourDone', input.labels.labour(share), slot, {
      size: textPx * (hand ? 1.3 : width480(room) ? 1.5 : 1.75),
      bold: true,
    }),
    ...slip(
      'harvest/labourOf',
      input.labels.labourOf,
      { ...slot, y: slot.y + tall * 0.5, height: tall * 0.48, stands: 'top' },
      { size: textPx, italic: true },
    ),
  ];
}

const width480 = ({ input }: HarvestRoom): boolean => input.size.width < 480;

/** Size of the caption's words, px. */
const hemText = (textPx: number): number => Math.max(13, Math.min(textPx, 18));
