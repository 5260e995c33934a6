import { dimension } from '../../cloth/dimension.ts';
import { piecedGround } from '../../cloth/pieced-ground.ts';
import type { Box } from '../../cloth/point.ts';
import { slip } from '../../cloth/slot-words.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { SceneFrame } from '../../scene-frame.ts';
import { accountBands, accountTags } from '../flow/account-bands.ts';
import { captionHem, hemPx } from '../flow/caption-hem.ts';
import { massOf } from '../flow/flow-input.ts';
import { legendOf } from '../flow/piece-mass.ts';
import { cottonWagon } from './cotton-wagon.ts';
import { longModule } from './long-module.ts';
import { MODULE_LAP_SECONDS, type ModuleInput, type ModuleRoom } from './module-input.ts';
import { layOutModule, type ModuleLayout } from './module-layout.ts';
import { rainFallen, rainStill, rainToday } from './rain-strip.ts';
import { roundModule } from './round-module.ts';
import { coreRings, moistureRuler, probeRod, TUBE, thermometerNow, thermometerStill } from './thermometer.ts';
import { yardMarks } from './yard.ts';

const isRound = ({ kind }: ModuleInput): boolean => kind === 'round';

/** How far the side of a round module reaches past the middle of its end, of its radius. */
const ROUND_DEPTH = 1.1;

function moduleMarks(input: ModuleInput, box: Box): Mark[] {
  if (isRound(input)) {
    const r = box.height / 2;
    return roundModule(box.x + r, box.y + r, r, r * ROUND_DEPTH, input.cover);
  }
  return input.kind === 'conventional' ? longModule(box, input.cover) : cottonWagon(box, input.cover);
}

/**
 * Seed cotton waits for the gin: a module or a wagon with a probe in its core, the rain of every day it stands, its moisture
 * as it came and as it goes, and the farm's other modules counted in the yard.
 * @returns the frame when a share of the days has passed, 0 to 1
 */
export function moduleScene(input: ModuleInput): (share: number) => SceneFrame {
  const { width, height } = input.size;
  const wide = width > 1.15 * height;
  const phone = width < 480;
  const textPx = wide ? Math.min(18, Math.max(14, width * 0.018)) : phone ? 13 : Math.min(26, width * 0.024);
  const captionPx = Math.max(13, Math.min(textPx, 18));
  const legend = legendOf(
    {
      inflow: input.inflow.map(({ account, masses }) => ({ account, ...masses })),
      outflow: input.outflow.map(({ account, masses }) => ({ account, ...masses })),
      unitKg: input.unitKg,
    },
    { mostTufts: phone ? 14 : 30, mostBits: phone ? 4 : 8 },
  );
  const inKg = input.inflow.reduce((sum, entry) => sum + massOf(entry.masses), 0);
  const caption = input.labels.caption(legend, width < 700 ? 'phone' : height < 410 ? 'low' : 'full');
  const room: ModuleRoom = {
    input,
    wide,
    textPx,
    floor: height - hemPx(caption, width, captionPx),
    scale: { pxPerKg: inKg > 0 ? (wide ? 0.17 * height : 0.17 * width) / inKg : 0, legend },
  };
  const at = layOutModule(room);
  const bands = accountBands('module', input, at.paths, room.scale);
  const still = [...groundMarks(room, at), ...bands.marks, ...rainStill(room, at.rain)];
  const sized = dimensions(room, at);
  const fixed = [
    ...moduleMarks(input, at.module),
    ...sized,
    ...thermometerStill(room, at.thermometer),
    ...moistureRuler(room, at.moisture),
    ...moistureWords(room, at),
    ...(at.count ? slip('module/count', input.labels.count, at.count, { size: textPx, italic: true }) : []),
    group('caption', captionHem('module', caption, input.size, captionPx)),
  ];
  const days = input.rainInches.length;
  return (share) => {
    const day = Math.round(share * days);
    const f = input.coreF[day] ?? input.startF;
    return {
      width,
      height,
      still,
      parts: [],
      moving: bands.pieces,
      over: [...fixed, ...today(room, at, day, f), ...accountTags('module', input, at.tags, share, textPx)],
      lapSeconds: MODULE_LAP_SECONDS,
    };
  };
}

/** What a day changes: its rain, the core, the words. */
function today({ input, textPx }: ModuleRoom, at: ModuleLayout, day: number, f: number): Mark[] {
  const room = { input, textPx } as ModuleRoom;
  const { labels } = input;
  const fallen = input.rainInches.slice(0, day).reduce((sum, inches) => sum + inches, 0);
  const { rain, module: box, thermometer } = at;
  const under: Box = {
    x: rain.x + 10,
    y: rain.y + rain.height + 4,
    width: thermometer.x - rain.x - 30,
    height: Math.max(10, box.y + box.height * 0.2 - rain.y - rain.height),
  };
  const verdict = input.verdictOn(day);
  const pad = verdict === 'sound' ? 'bollGreen' : verdict === 'ginSoon' ? 'weld' : 'madder';
  const from: Point = [thermometer.x + thermometer.width * TUBE, thermometer.y + thermometer.height + 8];
  return [
    ...rainFallen(room, rain, day),
    ...rainToday('module/falls', under, input.rainInches[day - 1] ?? 0),
    ...coreRings(room, at.core, at.reach, f),
    ...probeRod(from, at.core),
    ...thermometerNow(room, thermometer, f),
    ...slip('module/day', labels.day(day), at.day, { size: textPx * 1.45, bold: true }),
    ...slip('module/fallen', labels.rain(fallen), at.fallen, { size: textPx, italic: true }),
    ...slip('module/core', labels.core(f), at.coreTag, { size: textPx * 1.3, bold: true }),
    ...slip(
      'module/verdict',
      labels.verdicts[verdict],
      at.verdict,
      { size: textPx, bold: true, ink: verdict === 'ginSoon' ? 'ink' : 'lint' },
      { cloth: pad },
    ),
  ];
}

function groundMarks({ input, floor }: ModuleRoom, at: ModuleLayout): Mark[] {
  const { width } = input.size;
  return [
    ...piecedGround(
      'module/sky',
      { x: 0, y: 0, width, height: at.horizon },
      { inks: ['fadedPale', 'fadedThin', 'fadedPale'], strips: 3, thread: 'quilting' },
    ),
    ...piecedGround(
      'module/yard',
      { x: 0, y: at.horizon, width, height: floor - at.horizon + 6 },
      { inks: ['leafGreen', 'youngGreen', 'leafGreen'], strips: 3, thread: 'thread' },
    ),
    group('yard', yardMarks(at.yard, input.kind, input.count), input.count),
  ];
}

/** A dimension line under the module, where there is room for one: across a round one's end, along a long one. */
function dimensions({ input, textPx, wide }: ModuleRoom, { module: box }: ModuleLayout): Mark[] {
  if (!wide || input.size.width < 700 || input.kind === 'wagon') return [];
  const y = box.y + box.height + 5;
  const to = box.x + (isRound(input) ? box.height : box.width);
  const text = isRound(input) ? input.labels.height : input.labels.length;
  return dimension([box.x, y], [to, y], text, { ink: 'ink', size: textPx, words: 'after' });
}

/** Moisture as it came and as it goes, over its ruler. */
const moistureWords = ({ input, textPx }: ModuleRoom, { moistureWords: slot }: ModuleLayout): Mark[] =>
  slip('module/moistWords', input.labels.moistureBoth, slot, { size: textPx, italic: true });
