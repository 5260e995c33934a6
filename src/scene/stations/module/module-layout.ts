import type { Box } from '../../cloth/point.ts';
import { type Slot, slotAt, tagHeight } from '../../cloth/slot-words.ts';
import type { Point } from '../../display-list.ts';
import { type AccountPaths, widthOf } from '../flow/account-bands.ts';
import { entryOf } from '../flow/labelled-entry.ts';
import type { ModuleInput, ModuleRoom } from './module-input.ts';

/** Where everything stands in the picture of the module, px. */
export interface ModuleLayout {
  readonly horizon: number;
  readonly rain: Box;
  /** Holds the module, its wheels too. */
  readonly module: Box;
  readonly core: Point;
  /** How far the rings may reach round the core, px. */
  readonly reach: number;
  readonly thermometer: Box;
  readonly moisture: Box;
  /** Words over the ruler of moisture. */
  readonly moistureWords: Slot;
  readonly yard: Box;
  readonly paths: AccountPaths;
  readonly tags: Readonly<Partial<Record<string, Slot>>>;
  readonly day: Slot;
  readonly fallen: Slot;
  /** Null on a small picture: there the modules in the yard are the count. */
  readonly count: Slot | null;
  readonly coreTag: Slot;
  readonly verdict: Slot;
}

/** Width of a round module as drawn, its side with it, for its height. */
const ROUND_WIDE = 1.18;
/** Width of a wagon for its height, heap and wheels with it. */
const WAGON_WIDE = 1.75;

/** The module on its ground, as big as a room allows. */
function moduleBox(input: ModuleInput, left: number, ground: number, room: { width: number; height: number }): Box {
  const ratio =
    input.kind === 'round' ? ROUND_WIDE : input.kind === 'wagon' ? WAGON_WIDE : Math.min(4, input.longOverHigh);
  const width = Math.min(room.width, room.height * ratio);
  return { x: left, y: ground - width / ratio, width, height: width / ratio };
}

const coreOf = ({ kind }: ModuleInput, { x, y, width, height }: Box): Point =>
  kind === 'round'
    ? [x + height / 2, y + height / 2]
    : [x + width * 0.5, y + height * (kind === 'wagon' ? 0.44 : 0.55)];

/** Bands come in at the left, go behind the module, and out at the right; moisture comes down from the cloud or goes up to it. */
function pathsOf(w: number, { box, core, bandY, rain, loss }: Standing): AccountPaths {
  const air = (share: number): number => core[0] + box.height * share;
  const top = rain.y + rain.height * 0.3;
  return {
    'out/moduleLoss': { path: loss },
    'out/evaporated': {
      path: [
        [air(-0.22), box.y + 20],
        [air(-0.22), top],
      ],
    },
    'in/moistureTakenUp': {
      path: [
        [air(0.22), top],
        [air(0.22), core[1]],
      ],
    },
    'in/lot': {
      path: [
        [-4, bandY],
        [core[0], bandY],
      ],
      visible: [[0, box.x + 6]],
    },
    'out/lot': {
      path: [
        [core[0], bandY],
        [w + 4, bandY],
      ],
      visible: [[box.x + box.width - core[0] - 4, w - core[0]]],
    },
  };
}
interface Standing {
  readonly box: Box;
  readonly core: Point;
  readonly bandY: number;
  readonly rain: Box;
  readonly loss: readonly Point[];
}

const hasEntry = (entries: readonly { readonly account: string }[], account: string): boolean =>
  entries.some((entry) => entry.account === account);

const bandsOf = ({ input, scale }: ModuleRoom): number =>
  Math.max(widthOf(entryOf(input.inflow, 'lot'), scale), widthOf(entryOf(input.outflow, 'lot'), scale));

/** Broad: words at the left, the module in the middle, what is measured at the right. */
function wideLayout(room: ModuleRoom): ModuleLayout {
  const { input, textPx, floor: h } = room;
  const w = input.size.width;
  const small = w < 700;
  const line = tagHeight(textPx);
  const band = bandsOf(room);
  const ground = 0.94 * h;
  const horizon = 0.46 * h;
  const rainX = (small ? 0.42 : 0.34) * w;
  const rain: Box = { x: rainX, y: 0.015 * h, width: 0.98 * w - rainX, height: (small ? 0.15 : 0.17) * h };
  const wagon = input.kind === 'wagon';
  const left = 0.205 * w;
  const measured = (small ? 0.675 : 0.73) * w;
  const box = moduleBox(input, left + (wagon ? 0.06 * w : 0), ground, {
    width: (small ? (input.kind === 'conventional' ? 0.46 : 0.37) : wagon ? 0.38 : 0.5) * w,
    height: ground - 0.25 * h,
  });
  const core = coreOf(input, box);
  const bandY = h - line - 6 - band / 2;
  const bandTop = bandY - band / 2;
  const sideX = 0.17 * w;
  // What went into the air stands below what came from it, where there was any.
  const airWide = (small ? 0.28 : 0.2) * w;
  const topY = 6 + textPx * 4.1;
  const airY = topY + (hasEntry(input.inflow, 'moistureTakenUp') ? line + 5 : 0);
  const thermometerY = rain.y + rain.height + 18;
  const thermometer: Box = {
    x: (small ? 0.57 : 0.64) * w,
    y: thermometerY,
    width: (small ? 0.09 : 0.085) * w,
    height: Math.min(0.28 * h, bandTop - thermometerY - 26),
  };
  const right = w - 12 - measured;
  const tall = textPx * 1.8;
  const moistTall = textPx * 2.1;
  const measuredY = rain.y + rain.height + textPx * 0.6;
  const tagY = bandTop - line - 5;
  // A small picture says what goes on at the foot, where a larger one counts the modules.
  const moistY = (small ? bandTop : tagY) - moistTall - 4;
  const wordsY = measuredY + textPx * 3;
  return {
    horizon,
    rain,
    module: box,
    core,
    reach: Math.min(box.height * 0.3, 110),
    thermometer,
    yard: { x: 0.02 * w, y: horizon - 0.12 * h, width: 0.72 * w, height: 0.14 * h },
    moistureWords: slotAt(measured, wordsY, right, moistY - 10 - wordsY, 'start', 'bottom'),
    moisture: { x: measured, y: moistY, width: right, height: moistTall },
    paths: pathsOf(w, {
      box,
      core,
      bandY,
      rain,
      loss: [
        [sideX, bandY],
        [sideX, h - line * 0.5],
        [0.1 * w, h - line * 0.5],
      ],
    }),
    tags: {
      'in/lot': slotAt(8, tagY, left - 14, line),
      'out/lot': slotAt(measured, small ? h - line - 2 : tagY, right, line, 'end'),
      'in/moistureTakenUp': slotAt(8, topY, airWide, line),
      'out/evaporated': slotAt(8, airY, airWide, line),
      'out/moduleLoss': slotAt(8, h - line - 2, (small ? 0.25 : 0.17) * w, line),
    },
    day: slotAt(8, 6, 0.3 * w, textPx * 2.2),
    fallen: slotAt(8, 6 + textPx * 2.25, (small ? 0.31 : 0.25) * w, textPx * 1.7),
    count: small ? null : slotAt(measured, h - line - 2, right, line - 4, 'end', 'middle'),
    coreTag: slotAt(measured, measuredY, 0.38 * right, tall),
    verdict: slotAt(measured + 0.4 * right, measuredY, 0.6 * right, textPx * 3),
  };
}

/** High: the rain over all of it, the module below, words and rulers at the foot. */
function tallLayout(room: ModuleRoom): ModuleLayout {
  const { input, textPx, floor: h } = room;
  const w = input.size.width;
  const phone = w < 480;
  const line = tagHeight(textPx);
  const band = bandsOf(room);
  const ground = h - textPx * 5.3;
  const horizon = 0.44 * h;
  const rain: Box = { x: (phone ? 0.16 : 0.1) * w, y: 0.095 * h, width: (phone ? 0.81 : 0.87) * w, height: 0.15 * h };
  const left = (phone ? 0.05 : 0.17) * w;
  const top = rain.y + rain.height + textPx * 0.6;
  const box = moduleBox(input, left + (input.kind === 'wagon' ? 0.08 * w : 0), ground, {
    width: (input.kind === 'round' ? 0.6 : phone && input.kind === 'conventional' ? 0.68 : 0.6) * w,
    height: ground - top - textPx * (input.kind === 'round' ? 1.4 : 3),
  });
  const core = coreOf(input, box);
  const bandY = input.kind === 'wagon' ? box.y + box.height * 0.5 : ground - band / 2 - 0.01 * h;
  const slipTall = textPx * 1.8;
  const thermometerY = top + slipTall * (phone ? 1.2 : 2.4) + 14;
  const thermometer: Box = {
    x: (phone ? 0.79 : 0.84) * w,
    y: thermometerY,
    width: (phone ? 0.19 : 0.13) * w,
    height: Math.max(40, Math.min(0.26 * h, bandY - band / 2 - thermometerY - 26)),
  };
  const footWide = 0.52 * w;
  return {
    horizon,
    rain,
    module: box,
    core,
    reach: Math.min(box.height * 0.3, 130),
    thermometer,
    yard: { x: 0.02 * w, y: horizon - 0.1 * h, width: 0.74 * w, height: 0.11 * h },
    moistureWords: slotAt(0.03 * w, ground + textPx * 0.4, footWide, textPx * 1.7),
    moisture: { x: 0.03 * w, y: h - textPx * 2.3, width: footWide, height: textPx * 2.1 },
    paths: pathsOf(w, {
      box,
      core,
      bandY,
      rain,
      loss: [
        [box.x * 0.5, bandY],
        [box.x * 0.5, bandY + band / 2 + 5],
        [-4, bandY + band / 2 + 5],
      ],
    }),
    tags: {
      ...(phone ? {} : { 'in/lot': slotAt(8, bandY - band / 2 - line - 6, 0.15 * w, line) }),
      'out/lot': slotAt(0.57 * w, h - line - 5, 0.41 * w, line, 'end'),
    },
    day: slotAt(8, 5, 0.46 * w, 0.085 * h),
    fallen: slotAt(0.48 * w, 5, 0.5 * w, 0.085 * h, 'end'),
    count: phone ? null : slotAt(8, top, 0.5 * w, textPx * 1.7),
    coreTag: phone ? slotAt(0.79 * w, top, 0.2 * w, slipTall) : slotAt(0.84 * w, top, 0.15 * w, slipTall),
    verdict: phone
      ? slotAt(0.3 * w, top, 0.48 * w, slipTall, 'end')
      : slotAt(0.7 * w, top + slipTall * 1.15, 0.28 * w, slipTall, 'end'),
  };
}

/** Two plans, for broad and for high pictures. */
export const layOutModule = (room: ModuleRoom): ModuleLayout => (room.wide ? wideLayout(room) : tallLayout(room));
