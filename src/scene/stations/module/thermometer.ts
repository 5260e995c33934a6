import { textWidth } from '../../cloth/letter-widths.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle, ring } from '../../cloth/point.ts';
import { notchMarks } from '../../cloth/ruler.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import type { ModuleRoom, ScaleTick } from './module-input.ts';

/** Where the tube stands across its scale, of the scale's width. */
export const TUBE = 0.15;

/** Where a value lies on an upright scale. */
function heightOn(ticks: readonly ScaleTick[], box: Box, value: number): number {
  const low = ticks[0]?.value ?? 0;
  const high = ticks.at(-1)?.value ?? 1;
  const share = Math.min(1, Math.max(0, (value - low) / (high - low)));
  return box.y + box.height * (1 - share);
}

/** An upright ruler of degrees, with double notches at the published rules: gin soon, gin at once. */
export function thermometerStill({ input, textPx }: ModuleRoom, box: Box): Mark[] {
  const { temperatureTicks: ticks, ginSoonF, ginNowF } = input;
  const size = textPx;
  const stitches: Stitch[] = [];
  const words: Mark[] = [];
  const tube = box.x + box.width * TUBE;
  let free = Number.NEGATIVE_INFINITY;
  // From the top down: the highest carries the unit, and those without room stay unwritten.
  for (const { value, text } of [...ticks].reverse()) {
    const y = heightOn(ticks, box, value);
    // The highest has its unit where its tick would be.
    if (value !== ticks.at(-1)?.value) stitches.push([tube + 8, y, tube + (text && box.width > 60 ? 16 : 11), y]);
    if (!text || y < free) continue;
    free = y + size * 1.08;
    words.push({ kind: 'text', text, x: box.x + box.width - 5, y: y + size * 0.33, size, ink: 'ink', anchor: 'end' });
  }
  return [
    patch('module/scale', rectangle(box.x, box.y - 12, box.width, box.height + 30), 'weldPale', {
      shadow: 4,
      seam: 0,
      scissors: { miss: 1, snip: 90, bow: 0.002 },
    }),
    patch('module/tube', rectangle(tube - 5, box.y - 4, 10, box.height + 8), 'muslin', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: 0.5 },
    }),
    { kind: 'stitches', stitches, ink: 'ink', width: 1.4, flat: true },
    ...words,
    ...notchMarks('module/soon', [box.x + 1, heightOn(ticks, box, ginSoonF)], 'right', 'walnut', true),
    ...notchMarks('module/now', [box.x + 1, heightOn(ticks, box, ginNowF)], 'right', 'madder', true),
  ];
}

/** How warm the core is: a column from the bulb up. */
export function thermometerNow({ input }: ModuleRoom, box: Box, f: number): Mark[] {
  const tube = box.x + box.width * TUBE;
  const top = heightOn(input.temperatureTicks, box, f);
  return [
    patch('module/column', rectangle(tube - 3, top, 6, box.y + box.height + 6 - top), 'madder', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    patch('module/bulb', ring(tube, box.y + box.height + 8, 9, 9), 'madder', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.4 },
    }),
  ];
}

/** The probe: a long rod from the thermometer to the core. */
export const probeRod = (from: Point, to: Point): Mark[] => [
  { kind: 'stitches', stitches: [[...from, ...to]], ink: 'iron', width: 4.5 },
  patch('module/tip', ring(to[0], to[1], 5.5, 7), 'madder', {
    shadow: 2.6,
    seam: 0,
    grain: null,
    scissors: { miss: 0.3 },
  }),
];

/** Rings round the core, each for so much warming. */
export function coreRings({ input }: ModuleRoom, [x, y]: Point, reach: number, f: number): Mark[] {
  const count = Math.max(0, Math.round((f - input.startF) / input.ringF));
  const most = Math.max(8, count);
  const stitches = Array.from({ length: count }, (_, i) =>
    runningStitches(ring(x, y, 11 + ((i + 0.4) / most) * reach, 26, i), `module/warm${i}`, { on: 7, off: 4 }),
  ).flat();
  return [group('rings', count === 0 ? [] : [{ kind: 'stitches', stitches, ink: 'madder', width: 2.6 }], count)];
}

/** A level ruler of moisture: one notch as it came, one as it goes, a double notch at the published limit. */
export function moistureRuler({ input, textPx }: ModuleRoom, box: Box): Mark[] {
  const { ticks, inPercent, outPercent, safePercent } = input.moisture;
  const low = ticks[0]?.value ?? 0;
  const high = ticks.at(-1)?.value ?? 1;
  const at = (value: number) => box.x + 12 + (box.width - 24) * Math.min(1, Math.max(0, (value - low) / (high - low)));
  const size = textPx;
  const stitches: Stitch[] = [];
  const words: Mark[] = [];
  let free = box.x;
  for (const { value, text } of ticks) {
    const x = at(value);
    stitches.push([x, box.y + 1, x, box.y + (text ? 10 : 6)]);
    const half = textWidth(text ?? '', size) / 2;
    if (!text || x - half < free || x + half > box.x + box.width) continue;
    free = x + half + 5;
    words.push({ kind: 'text', text, x, y: box.y + 11 + size * 0.86, size, ink: 'ink', anchor: 'middle' });
  }
  return [
    patch('module/moist', rectangle(box.x, box.y, box.width, box.height), 'muslin', {
      shadow: 2.6,
      seam: 0,
      scissors: { miss: 1, snip: 90, bow: 0.002 },
    }),
    { kind: 'stitches', stitches, ink: 'ink', width: 1.4, flat: true },
    ...words,
    ...notchMarks('module/safe', [at(safePercent), box.y], 'down', 'walnut', true),
    ...notchMarks('module/came', [at(inPercent), box.y], 'down', 'faded'),
    ...notchMarks('module/goes', [at(outPercent), box.y], 'down', 'mid'),
  ];
}
