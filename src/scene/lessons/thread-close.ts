import type { InkName } from '../../style/inks.ts';
import { chanceOf, spread } from '../cloth/chance.ts';
import { flatThreads } from '../cloth/flat-threads.ts';
import { patch } from '../cloth/patch.ts';
import type { Mark, Point, Stitch } from '../display-list.ts';

export interface CloseThread {
  /** Left end and length of the stretch that is shown, and its middle line, px. */
  readonly x: number;
  readonly y: number;
  readonly lengthPx: number;
  /** Of the whole thread, px. */
  readonly diameterPx: number;
  /** Turns of twist in a pixel. */
  readonly turnsPerPx: number;
  /** Unevenness of its mass, CV percent; 0 draws it even. */
  readonly cvPercent: number;
  /** Hairs in the stretch. */
  readonly hairs: number;
  /** Singles plied together. */
  readonly plies: number;
  readonly ink: InkName;
}

/** Thick and thin places follow one another about every so many px. */
const PLACE_PX = 34;
const STEP_PX = 5;

/** Half the thickness along the thread, px: thickness goes with the root of the mass, so it varies half as much. */
function halves(name: string, thread: CloseThread): number[] {
  const chance = chanceOf(`${name}/thick`);
  // Places drawn evenly from -half to half vary by half over the root of three.
  const swing = (thread.cvPercent / 100 / 2) * Math.sqrt(3);
  const places = Array.from({ length: Math.ceil(thread.lengthPx / PLACE_PX) + 2 }, () => spread(chance, swing));
  return Array.from({ length: Math.floor(thread.lengthPx / STEP_PX) + 1 }, (_, i) => {
    const at = (i * STEP_PX) / PLACE_PX;
    const k = Math.floor(at);
    const ease = (1 - Math.cos((at - k) * Math.PI)) / 2;
    const here = places[k]! + (places[k + 1]! - places[k]!) * ease;
    return (thread.diameterPx / 2) * (1 + here);
  });
}

/** A single: its outline, the turns of its fibres, and hairs. */
function single(name: string, thread: CloseThread): Mark[] {
  const half = halves(name, thread);
  const { x, y, diameterPx, turnsPerPx, ink } = thread;
  const lengthPx = (half.length - 1) * STEP_PX;
  const upper = half.map((tall, i): Point => [x + i * STEP_PX, y - tall]);
  const lower = half.map((tall, i): Point => [x + i * STEP_PX, y + tall]).reverse();
  // A turn goes round the thread once: what is seen of it leans by half the way it takes.
  const lean = turnsPerPx > 0 ? Math.min(diameterPx * 1.6, 0.5 / turnsPerPx) : 0;
  const pitch = Math.max(4, diameterPx * 0.42);
  const turns: Stitch[] = [];
  for (let at = pitch; at < lengthPx + lean; at += pitch) {
    const middle = Math.max(0, Math.min(half.length - 1, Math.round((at - lean / 2) / STEP_PX)));
    const tall = half[middle]! * 0.86;
    // Where the stretch begins or ends in the middle of a turn, so does the line.
    const from = Math.max(1, at - lean);
    const to = Math.min(lengthPx - 1, at);
    const height = (px: number) => y + tall * (1 - (2 * (px - (at - lean))) / (lean || 1));
    if (to > from) turns.push([x + from, height(from), x + to, height(to)]);
  }
  return [
    ...hairMarks(name, thread, half),
    patch(name, [...upper, ...lower], ink, { shadow: 2.6, seam: 0, grain: null, scissors: 'asDrawn' }),
    { kind: 'stitches', stitches: turns, ink: 'faded', width: Math.max(0.8, diameterPx * 0.07), flat: true },
  ];
}

function hairMarks(name: string, { x, y, lengthPx, hairs, ink, diameterPx }: CloseThread, half: number[]): Mark[] {
  const chance = chanceOf(`${name}/hairs`);
  const stitches = Array.from({ length: Math.round(hairs) }, (_, i): Stitch[] => {
    const at = chance() * (lengthPx - 20) + 6;
    const side = i % 2 ? 1 : -1;
    const tall = half[Math.round(at / STEP_PX)] ?? diameterPx / 2;
    const reach = 5 + chance() * 9;
    const lean = 3 + chance() * 9;
    const foot: Point = [x + at, y + side * tall * 0.8];
    const knee: Point = [x + at + lean, y + side * (tall + reach * 0.6)];
    return [
      [...foot, ...knee],
      [...knee, knee[0] + 5 + chance() * 6, y + side * (tall + reach)],
    ];
  }).flat();
  return stitches.length === 0 ? [] : [{ kind: 'stitches', stitches, ink, width: 1.1, flat: true }];
}

/** Plied thread: each single winds round the others; what lies behind is drawn first. */
function plied(thread: CloseThread): Mark[] {
  const { x, y, diameterPx, turnsPerPx, lengthPx, plies, ink } = thread;
  const thick = diameterPx / Math.sqrt(plies);
  const swing = (diameterPx - thick) / 2 + thick * 0.22;
  const behind: Stitch[] = [];
  const before: Stitch[] = [];
  for (let ply = 0; ply < plies; ply++)
    for (let at = 0; at < lengthPx; at += STEP_PX) {
      const angle = (px: number) => 2 * Math.PI * (px * turnsPerPx + ply / plies);
      const end = Math.min(lengthPx, at + STEP_PX);
      const piece: Stitch = [x + at, y + swing * Math.sin(angle(at)), x + end, y + swing * Math.sin(angle(end))];
      (Math.cos(angle((at + end) / 2)) > 0 ? before : behind).push(piece);
    }
  return [
    flatThreads(behind, 'ink', thick + 1.6),
    flatThreads(behind, 'faded', thick),
    flatThreads(before, 'ink', thick + 1.6),
    flatThreads(before, ink, thick),
  ];
}

/** A thread seen close: thickness, turns, thick and thin places and hairs as given. */
export const closeThread = (name: string, thread: CloseThread): Mark[] =>
  thread.plies > 1 ? plied(thread) : single(name, thread);
