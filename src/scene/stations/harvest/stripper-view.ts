import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { type Slot, slotAt, tagHeight } from '../../cloth/slot-words.ts';
import type { Mark } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import {
  type AccountPaths,
  accountBands,
  accountTags,
  type NamePlace,
  nameSlips,
  widthOf,
} from '../flow/account-bands.ts';
import { entryOf } from '../flow/labelled-entry.ts';
import { basketFill, basketStill } from './basket.ts';
import type { HarvestRoom, HarvestView } from './harvest-input.ts';
import { cleanerBars, cleanerSaw, rowPlant, strippingRoll } from './stripper-parts.ts';

interface Layout {
  readonly rolls: { readonly x: number; readonly y: number; readonly r: number; readonly apart: number };
  readonly cleaner: { readonly x: number; readonly y: number; readonly r: number } | null;
  readonly soilTop: number;
  readonly plantTop: number;
  readonly paths: AccountPaths;
  readonly basket: Box | null;
  readonly tags: Readonly<Partial<Record<string, Slot>>>;
  readonly names: readonly NamePlace[];
}

/**
 * Seen along the row: the plant stands between the rolls, which pull it through; all of it goes up and over, past the field
 * cleaner where there is one, which drops burs and sticks to the ground.
 */
function lay(room: HarvestRoom): Layout {
  const { input, scale, textPx, wide, floor } = room;
  const { tallPx: h } = room;
  const { width: w } = input.size;
  const grown = widthOf(entryOf(input.inflow, 'grown'), scale);
  const along = widthOf(entryOf(input.inflow, 'takenAlong'), scale);
  const lot = widthOf(entryOf(input.outflow, 'lot'), scale);
  const left = widthOf(entryOf(input.outflow, 'leftInField'), scale);
  const line = tagHeight(textPx);
  const twoLines = tagHeight(textPx, 2);
  const cleans = input.method === 'stripperFieldCleaner';
  const x = (wide ? 0.37 : 0.36) * w;
  const soilTop = floor - (wide ? 0.13 : 0.16) * h;
  const r = wide ? Math.min(0.165 * h, 0.1 * w) : 0.125 * w;
  const inTop = soilTop - grown - along - 3 - (wide ? 4 : 2);
  const grownY = inTop + grown / 2;
  const alongY = inTop + grown + 3 + along / 2;
  const over = (wide ? 0.3 : 0.3) * h + lot / 2;
  const rolls = { x, y: (over + lot / 2 + inTop) / 2 + r * 0.1, r, apart: Math.max(lot / 2, r * 0.5) + r * 0.5 };
  const cleaner = cleans
    ? { x: (wide ? 0.66 : 0.74) * w, y: over + lot * 0.28, r: wide ? 0.135 * h : 0.115 * w }
    : null;
  const dropX = cleaner ? cleaner.x : x;
  const groundY = soilTop + Math.max(left / 2, 2) + (wide ? 0.018 : 0.012) * h;
  // What the weather took is told under the name of the rolls, where there is room for it.
  const rollsTop = over - lot / 2 + 4;
  const rollsTall = Math.min(textPx * 2.9, w > 760 ? inTop - twoLines - 8 - rollsTop : Number.POSITIVE_INFINITY);
  const basketX = 0.86 * w;
  return {
    rolls,
    cleaner,
    soilTop,
    plantTop: over - lot / 2 - (wide ? 0.005 : 0.01) * h,
    paths: {
      'out/weathered': {
        path: [
          [0.045 * w, grownY],
          [0.045 * w, floor - 8],
          [-4, floor - 8],
        ],
      },
      'out/evaporated': {
        path: [
          [0.44 * w, over],
          [0.44 * w, -4],
        ],
      },
      'in/grown': {
        path: [
          [-4, grownY],
          [x + lot / 2, grownY],
        ],
        visible: [[0, x - r]],
        form: 'boll',
      },
      'in/takenAlong': {
        path: [
          [-4, alongY],
          [x + lot / 2, alongY],
        ],
        visible: [[0, x - lot / 2]],
      },
      'in/moistureTakenUp': {
        path: [
          [0.2 * w, -4],
          [0.2 * w, grownY],
        ],
      },
      'out/leftInField': {
        path: [
          [dropX, cleaner ? cleaner.y : alongY],
          [dropX, groundY],
          [w + 4, groundY],
        ],
        visible: [[cleaner ? cleaner.r * 1.2 : 4, groundY - (cleaner ? cleaner.y : alongY) + w - dropX]],
      },
      'out/lot': {
        path: [
          [x, alongY + along / 2],
          [x, over],
          [wide ? 0.9 * w : w + 4, over],
        ],
        visible: [[2 * r + grown + along, alongY + along / 2 - over + (wide ? basketX : w) - x]],
      },
    },
    basket: wide ? { x: basketX, y: over - lot * 0.6, width: 0.125 * w, height: Math.max(lot * 1.15, 0.26 * h) } : null,
    tags: wide
      ? {
          'in/grown': slotAt(10, 8, (w > 760 ? 0.185 : 0.26) * w, 0.15 * h),
          'in/takenAlong': slotAt(0.07 * w, soilTop + 5, 0.24 * w, line),
          ...(w > 760
            ? {
                'out/weathered': slotAt(10, inTop - twoLines - 6, 0.17 * w, twoLines),
                'out/evaporated': slotAt(0.445 * w, 8, 0.125 * w, 0.15 * h),
                'in/moistureTakenUp': slotAt(0.205 * w, 8, 0.22 * w, 0.15 * h),
              }
            : {}),
          'out/leftInField': slotAt(0.72 * w, groundY - left / 2 - line - 6, 0.265 * w, line, 'end'),
          'out/lot': slotAt(0.78 * w, over - lot * 0.6 + Math.max(lot * 1.15, 0.26 * h) + 5, 0.21 * w, line, 'end'),
        }
      : {
          'in/grown': slotAt(6, 6, 0.41 * w, line),
          'out/leftInField': slotAt(0.3 * w, floor - line - 2, 0.42 * w, line),
          'out/lot': slotAt(0.55 * w, over + lot / 2 + (cleaner ? cleaner.r * 0.9 : 6), 0.435 * w, line, 'end'),
        },
    names: wide
      ? [
          {
            text: input.labels.rolls,
            slot: slotAt(0.02 * w, rollsTop, (w > 760 ? 0.28 : 0.2) * w, rollsTall),
            to: [rolls.x - rolls.apart, rolls.y - r * 0.5],
          },
          ...(cleaner
            ? [
                {
                  text: input.labels.fieldCleaner,
                  slot: slotAt(cleaner.x - 0.225 * w, cleaner.y + cleaner.r * 0.9, 0.145 * w, textPx * 2.9, 'end'),
                  to: [cleaner.x - cleaner.r * 0.6, cleaner.y + cleaner.r * 0.3],
                } as const,
              ]
            : []),
        ]
      : [],
  };
}

/** A stripper at work, seen along the row. */
export function stripperView(room: HarvestRoom): HarvestView {
  const { input, scale, textPx } = room;
  const at = lay(room);
  const { width } = input.size;
  const bands = accountBands('harvest', input, at.paths, scale);
  const { rolls, cleaner } = at;
  const names = nameSlips('harvest', at.names, textPx);
  const housing: Mark[] = cleaner
    ? [
        patch(
          'harvest/housing',
          [
            [cleaner.x - cleaner.r * 1.35, cleaner.y - cleaner.r * 1.25],
            [cleaner.x + cleaner.r * 1.3, cleaner.y - cleaner.r * 1.2],
            [cleaner.x + cleaner.r * 1.45, cleaner.y + cleaner.r * 0.5],
            [cleaner.x + cleaner.r * 0.6, cleaner.y + cleaner.r * 1.45],
            [cleaner.x - cleaner.r * 0.6, cleaner.y + cleaner.r * 1.45],
            [cleaner.x - cleaner.r * 1.45, cleaner.y + cleaner.r * 0.5],
          ],
          'faded',
          { shadow: 4, seam: 6, scissors: { miss: 1.6, snip: 70 } },
        ),
      ]
    : [];
  const plant = rowPlant('harvest/plant', rolls.x, at.soilTop + 6, at.plantTop, rolls.r * 0.4);
  return {
    still: [
      patch('harvest/soil', rectangle(-4, at.soilTop, width + 8, input.size.height - at.soilTop), 'walnutWarm', {
        shadow: 0,
        seam: 6,
        scissors: { miss: 2, snip: 80, bow: 0.002 },
      }),
      ...bands.marks,
      ...housing,
      ...(at.basket ? basketStill('harvest/basket', at.basket) : []),
    ],
    pieces: bands.pieces,
    parts: turningParts(at, input.turning),
    over: (share) => [
      ...(cleaner ? cleanerBars('harvest/bars', cleaner.x, cleaner.y, cleaner.r) : []),
      ...plant,
      ...(at.basket ? basketFill('harvest/basket', at.basket, share) : []),
      ...names,
      ...accountTags('harvest', input, at.tags, share, textPx),
    ],
  };
}

/** The rolls turn upwards where they meet; the saw of the cleaner turns with the cotton. */
function turningParts({ rolls, cleaner }: Layout, turning: HarvestRoom['input']['turning']): MovingPart[] {
  const roll = (side: -1 | 1): MovingPart => {
    const x = rolls.x + side * rolls.apart;
    return {
      name: 'strippingRoll',
      marks: strippingRoll('harvest/roll', x, rolls.y, rolls.r),
      middle: [x, rolls.y],
      radius: rolls.r + 4,
      motion: { kind: 'turn', turnsPerSecond: side * turning.rolls.turnsPerSecond },
      passes: 'abovePieces',
      shows: turning.rolls.shows,
    };
  };
  return [
    roll(-1),
    roll(1),
    ...(cleaner
      ? [
          {
            name: 'cleanerSaw',
            marks: cleanerSaw('harvest/saw', cleaner.x, cleaner.y, cleaner.r),
            middle: [cleaner.x, cleaner.y],
            radius: cleaner.r + 4,
            motion: { kind: 'turn', turnsPerSecond: turning.cleaner.turnsPerSecond },
            passes: 'abovePieces',
            shows: turning.cleaner.shows,
          } satisfies MovingPart,
        ]
      : []),
  ];
}
