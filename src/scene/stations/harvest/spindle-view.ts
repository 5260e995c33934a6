import { patch } from '../../cloth/patch.ts';
import { type Box, pathLength, rectangle } from '../../cloth/point.ts';
import { type Slot, slotAt, tagHeight } from '../../cloth/slot-words.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import { type AccountPaths, accountBands, accountTags, type NamePlace, nameSlips } from '../flow/account-bands.ts';
import { basketFill, basketStill } from './basket.ts';
import { HARVEST_LAP_SECONDS, type HarvestRoom, type HarvestView } from './harvest-input.ts';
import { doffer, emptyBurs, spindleDrum, wetPad } from './spindle-drum.ts';
import { widthsOf } from './widths.ts';

interface Wheel {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}
interface Layout {
  readonly drum: Wheel;
  readonly doffer: Wheel;
  readonly pad: { readonly x: number; readonly y: number; readonly size: number; readonly turn: number };
  readonly paths: AccountPaths;
  /** Which way the drum turns: with the row. */
  readonly turns: 1 | -1;
  readonly basket: Box | null;
  readonly plate: Box | null;
  readonly burs: readonly Point[];
  readonly tags: Readonly<Partial<Record<string, Slot>>>;
  readonly names: readonly NamePlace[];
}

/** Where the doffer touches the drum, radians below its middle to the right. */
const DOFFER_AT = 0.56;
const dofferOf = ({ x, y, r }: Wheel): Wheel => ({
  x: x + Math.cos(DOFFER_AT) * 0.98 * r,
  y: y + Math.sin(DOFFER_AT) * 0.98 * r,
  r: 0.3 * r,
});

/** The row runs from the left; the drum stands below it and turns with it; the cotton leaves by the doffer to the right. */
function layWide(room: HarvestRoom): Layout {
  const { input, textPx } = room;
  const { tallPx: h } = room;
  const { width: w } = input.size;
  const { grown, along, lot } = widthsOf(room);
  const top = 0.305 * h;
  const row = top + grown / 2;
  const r = Math.min(0.275 * h, 0.17 * w);
  const drum = { x: 0.41 * w, y: top + grown * 0.4 + r, r };
  const off = dofferOf(drum);
  const pad = { x: drum.x - 0.86 * r, y: drum.y + 0.66 * r, size: 0.4 * r, turn: 0.9 };
  const alongY = top + grown + 3 + along / 2;
  const under = top + grown + along + 4;
  const line = tagHeight(textPx);
  const under2 = tagHeight(textPx, w > 760 ? 1 : 2);
  const weatherY = under + under2 + 3;
  const waterY = 0.93 * h;
  return {
    drum,
    doffer: off,
    pad,
    turns: 1,
    paths: {
      'out/leftInField': {
        path: [
          [drum.x, row],
          [w + 4, row],
        ],
        visible: [[r, w - drum.x]],
      },
      'out/weathered': {
        path: [
          [0.235 * w, row],
          [0.235 * w, weatherY],
          [-4, weatherY],
        ],
      },
      'out/evaporated': {
        path: [
          [0.27 * w, row],
          [0.27 * w, -4],
        ],
      },
      'in/grown': {
        path: [
          [-4, row],
          [drum.x, row],
        ],
        visible: [[0, drum.x - r * 0.34]],
        form: 'boll',
      },
      'in/takenAlong': {
        path: [
          [-4, alongY],
          [drum.x - r * 0.3, alongY],
        ],
      },
      'in/moistureTakenUp': {
        path: [
          [-4, waterY],
          [pad.x, waterY],
          [pad.x, pad.y],
        ],
      },
      'out/lot': {
        path: [
          [off.x, off.y],
          [0.9 * w, off.y],
        ],
        visible: [[off.r, 0.865 * w - off.x]],
      },
    },
    basket: { x: 0.865 * w, y: off.y - 0.2 * h, width: 0.122 * w, height: 0.3 * h },
    burs: [0.5, 0.73, 0.585, 0.815, 0.67, 0.9, 0.76, 0.975, 0.85, 0.94].map(
      (share, i): Point => [share * w, row + (i % 2 ? 0.062 : -0.068) * h],
    ),
    plate: { x: drum.x - r * 0.95, y: top - 9, width: r * 1.9, height: 9 },
    tags: {
      'in/grown': slotAt(10, 8, (w > 700 ? 0.22 : 0.27) * w, 0.16 * h),
      'in/takenAlong': slotAt(10, under, 0.215 * w, under2),
      'out/weathered': slotAt(10, weatherY + 2, 0.235 * w, under2),
      ...(w > 760
        ? {
            'in/moistureTakenUp': slotAt(10, waterY - line, 0.235 * w, line),
            'out/evaporated': slotAt(0.275 * w + 4, 8, 0.16 * w, 0.16 * h),
          }
        : {}),
      'out/leftInField': slotAt((w > 700 ? 0.735 : 0.7) * w, row + 0.03 * h, (w > 700 ? 0.25 : 0.285) * w, line, 'end'),
      'out/lot': slotAt(0.63 * w, off.y - lot / 2 - line - 3, 0.225 * w, line, 'end'),
    },
    names: [
      {
        text: w > 700 ? input.labels.drum : input.labels.drumShort,
        slot: slotAt(0.525 * w, row + (w > 700 ? 0.05 : 0.025) * h, (w > 700 ? 0.21 : 0.17) * w, textPx * 2.9),
        to: [drum.x + r * 0.46, drum.y - r * 0.34],
      },
      ...(w > 700
        ? [
            {
              text: input.labels.doffer,
              slot: slotAt(off.x + off.r * 0.5, off.y - lot / 2 - textPx * 2.5, 0.17 * w, textPx * 2),
              to: [off.x, off.y - off.r * 0.6] as const,
            },
          ]
        : []),
    ],
  };
}

/** The row comes down from the field; the drum stands beside it; the cotton leaves downwards on the right. */
function layTall(room: HarvestRoom): Layout {
  const { input, textPx, floor } = room;
  const { tallPx: h } = room;
  const { width: w } = input.size;
  const { grown, along, lot } = widthsOf(room);
  const left = 0.03 * w + along + 3;
  const row = left + grown / 2;
  const r = Math.min(0.25 * w, 225);
  const top = 0.255 * h;
  const drum = { x: left + grown * 0.62 + r, y: (top + floor) / 2 + 0.03 * h, r };
  const off = dofferOf(drum);
  const lotX = 0.97 * w - lot / 2;
  const line = tagHeight(textPx);
  const alongX = 0.03 * w + along / 2;
  const roomy = w > 600;
  return {
    drum,
    doffer: off,
    pad: { x: drum.x + 0.12 * r, y: drum.y + 1.02 * r, size: 0.4 * r, turn: 0 },
    turns: -1,
    paths: {
      'out/leftInField': {
        path: [
          [row, drum.y],
          [row, h + 4],
        ],
        visible: [[0.1 * h, 0.28 * h]],
      },
      'out/weathered': {
        path: [
          [row, 0.37 * h],
          [-4, 0.37 * h],
        ],
      },
      'out/evaporated': {
        path: [
          [row + grown * 0.2, 0.3 * h],
          [row + grown * 0.2, -4],
        ],
      },
      'in/grown': {
        path: [
          [row, top],
          [row, drum.y],
        ],
        visible: [[0, drum.y - r * 0.12 - top]],
        form: 'boll',
      },
      'in/takenAlong': {
        path: [
          [alongX, top],
          [alongX, drum.y - r * 0.2],
        ],
      },
      'in/moistureTakenUp': {
        path: [
          [drum.x + 0.12 * r, h + 4],
          [drum.x + 0.12 * r, drum.y + 1.1 * r],
        ],
      },
      'out/lot': {
        path: [
          [off.x, off.y],
          [lotX, off.y],
          [lotX, h + 4],
        ],
        visible: [[off.r, off.r + 0.36 * h]],
      },
    },
    basket: null,
    plate: null,
    burs: [0.74, 0.84].map((share, i): Point => [row + (i % 2 ? 0.06 : -0.062) * w, share * h]),
    tags: {
      'in/grown': slotAt(left + grown + 8, top + 6, roomy ? 0.42 * w : 0.6 * w - left - grown - 12, line),
      'out/leftInField': {
        ...slotAt(
          row + 8,
          floor - tagHeight(textPx, 2) - 3,
          (roomy ? 0.45 : 0.51) * w - row - 12,
          tagHeight(textPx, 2),
        ),
        stands: 'bottom',
      },
      'out/lot': slotAt(0.6 * w, off.y - lot / 2 - line - 6, 0.385 * w, line, 'end'),
      ...(roomy ? { 'in/takenAlong': slotAt(left + grown + 8, top + line + 14, 0.36 * w, line) } : {}),
    },
    names: roomy
      ? [
          {
            text: input.labels.drum,
            slot: slotAt(0.62 * w, 0.36 * h, 0.36 * w, line, 'end'),
            to: [drum.x + r * 0.4, drum.y - r * 0.4],
          },
          {
            text: input.labels.doffer,
            slot: slotAt(0.45 * w, floor - line, 0.2 * w, line),
            to: [off.x - off.r * 0.2, off.y + off.r * 0.6],
          },
        ]
      : [
          {
            text: input.labels.drum,
            slot: slotAt(0.6 * w, 0.27 * h, 0.385 * w, textPx * 3, 'end'),
            to: [drum.x + r * 0.4, drum.y - r * 0.4],
          },
          {
            text: input.labels.doffer,
            slot: slotAt(0.51 * w, floor - textPx * 1.75, 0.29 * w, textPx * 1.7),
            to: [off.x, off.y + off.r * 0.6],
          },
        ],
  };
}

/** A spindle picker at work, seen from above. */
export function spindleView(room: HarvestRoom): HarvestView {
  const { input, scale, wide, textPx } = room;
  const lay = wide ? layWide(room) : layTall(room);
  const bands = accountBands('harvest', input, lay.paths, scale);
  const burSize = 0.03 * Math.min(input.size.height, input.size.width * 0.7) + 5;
  const still: Mark[] = [
    group(
      'burs',
      lay.burs.flatMap(([x, y], i) => emptyBurs(`harvest/bur${i}`, x, y, burSize, i)),
    ),
    ...bands.marks,
    ...(lay.plate
      ? [
          patch('harvest/plate', rectangle(lay.plate.x, lay.plate.y, lay.plate.width, lay.plate.height), 'iron', {
            shadow: 2.6,
            seam: 0,
            grain: null,
            scissors: { miss: 0.6 },
          }),
        ]
      : []),
    ...wetPad('harvest/pad', lay.pad.x, lay.pad.y, lay.pad.size, lay.pad.turn),
    ...(lay.basket ? basketStill('harvest/basket', lay.basket) : []),
  ];
  const names = nameSlips('harvest', lay.names, textPx);
  return {
    still,
    pieces: bands.pieces,
    parts: turningParts(lay, input.turning),
    over: (share) => [
      ...(lay.basket ? basketFill('harvest/basket', lay.basket, share) : []),
      ...names,
      ...accountTags('harvest', input, lay.tags, share, textPx),
    ],
  };
}

/** The drum's rim goes as fast as the row does on the page; the doffer's against it. */
function turningParts(
  { drum, doffer: off, paths, turns }: Layout,
  turning: HarvestRoom['input']['turning'],
): MovingPart[] {
  const rowPxPerSecond = pathLength(paths['in/grown']!.path) / HARVEST_LAP_SECONDS;
  const drumTurns = rowPxPerSecond / (2 * Math.PI * drum.r);
  const dofferTurns = rowPxPerSecond / (2 * Math.PI * off.r);
  return [
    {
      name: 'spindleDrum',
      marks: spindleDrum('harvest/drum', drum.x, drum.y, drum.r),
      middle: [drum.x, drum.y],
      radius: drum.r + 4,
      motion: { kind: 'turn', turnsPerSecond: drumTurns * turns },
      passes: 'abovePieces',
      shows: turning.drum(1 / drumTurns),
    },
    {
      name: 'doffer',
      marks: doffer('harvest/doffer', off.x, off.y, off.r),
      middle: [off.x, off.y],
      radius: off.r + 4,
      motion: { kind: 'turn', turnsPerSecond: -dofferTurns * turns },
      passes: 'abovePieces',
      shows: turning.doffer(1 / dofferTurns),
    },
  ];
}
