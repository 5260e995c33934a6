import { dimension } from '../cloth/dimension.ts';
import { flatThreads } from '../cloth/flat-threads.ts';
import { linesHeight, linesOf } from '../cloth/lettering.ts';
import { patch } from '../cloth/patch.ts';
import { ring } from '../cloth/point.ts';
import { letter, slotAt } from '../cloth/slot-words.ts';
import { type DisplayList, group, type Mark, type Point, type Stitch } from '../display-list.ts';

/** A stretch of cloth seen from the side along one thread, or that thread alone. */
interface WaveRow {
  readonly key: string;
  readonly name: string;
  /** From one crossing thread to the next, in. */
  readonly spacingIn: number;
  /** How much longer the thread is than the cloth, percent. */
  readonly crimpPercent: number;
}

export interface ThreadWavesScene {
  readonly width: number;
  /** Threads that cross the one shown. */
  readonly crossings: number;
  readonly diameterIn: number;
  readonly crossingDiameterIn: number;
  readonly rows: readonly WaveRow[];
  /** Name of the thread drawn straight, which is as long in each row. */
  readonly straight: string;
}

const STEPS = 48;
const textPx = 15;
const marginPx = 16;
const gapPx = 16;

/** Points of a wave over one spacing, from its middle line up and back. */
const wave = (spacing: number, height: number): Point[] =>
  Array.from({ length: STEPS + 1 }, (_, i) => [(spacing * i) / STEPS, height * Math.sin((Math.PI * i) / STEPS)]);

const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - points[i]![0], y - points[i]![1]), 0);

/** Height of a wave from its middle line, in the unit of its spacing, such that its path is longer than the spacing by the crimp. */
export function heightOfWave(spacing: number, crimpPercent: number): number {
  let [low, high] = [0, spacing * 2];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (lengthOf(wave(spacing, middle)) < spacing * (1 + crimpPercent / 100)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The same thread in cloth as bought and as washed, and drawn straight, to one scale; the drawing and its height, px. */
export function threadWaves(scene: ThreadWavesScene): { readonly marks: DisplayList; readonly height: number } {
  const { width, crossings, rows, straight } = scene;
  const { spacingIn, crimpPercent } = rows[0]!;
  const threadIn = crossings * spacingIn * (1 + crimpPercent / 100);
  const scale = (width - 2 * marginPx) / threadIn;
  const thick = scene.diameterIn * scale;
  const boughtX = marginPx + crossings * spacingIn * scale;
  const marks: Mark[] = [];
  let y = 0;
  const title = (text: string): void => {
    const tall = linesHeight(linesOf(text, textPx, width - 4, { bold: true }).length, textPx) + 3;
    marks.push(...letter(text, slotAt(2, y, width - 4, tall), { size: textPx, bold: true }));
    y += tall;
  };
  const measure = (to: number): void => {
    marks.push(...dimension([marginPx, y], [to, y], '', { ink: 'ink', size: textPx }));
    y += gapPx;
  };
  for (const row of rows) {
    title(row.name);
    const tall = heightOfWave(row.spacingIn, row.crimpPercent) * scale;
    const across = scene.crossingDiameterIn * scale;
    const half = Math.max(tall + thick / 2, Math.abs(tall - (thick + across) / 2) + across / 2) + 5;
    y += half;
    marks.push(...rowMarks(scene, row, scale, y));
    y += half + 9;
    measure(marginPx + crossings * row.spacingIn * scale);
  }
  marks.push(chalk(boughtX, y));
  title(straight);
  y += thick / 2 + 3;
  const line: Stitch[] = [[marginPx, y, width - marginPx, y]];
  marks.push(group('straight', [flatThreads(line, 'ink', thick + 2), flatThreads(line, 'weld', thick)]));
  y += thick / 2 + 11;
  measure(width - marginPx);
  return { marks, height: Math.ceil(y) };
}

/** How far the cloth reached as bought, chalked down through the rows. */
function chalk(x: number, tall: number): Mark {
  const stitches: Stitch[] = [];
  for (let y = linesHeight(1, textPx) + 8; y < tall - gapPx; y += 11) stitches.push([x, y, x, y + 6]);
  return { kind: 'stitches', stitches, ink: 'madder', width: 1.7, flat: true };
}

/** One row: the crossing threads cut through, and the thread that waves over and under them. */
function rowMarks(scene: ThreadWavesScene, row: WaveRow, scale: number, y: number): Mark[] {
  const { crossings, diameterIn, crossingDiameterIn } = scene;
  const pitch = row.spacingIn * scale;
  const tall = heightOfWave(row.spacingIn, row.crimpPercent) * scale;
  const [thick, across] = [diameterIn * scale, crossingDiameterIn * scale];
  const cell = wave(pitch, tall);
  const path: Point[] = Array.from({ length: crossings }, (_, i) =>
    cell.map(([x, up]): Point => [marginPx + i * pitch + x, y - up * (i % 2 ? -1 : 1)]),
  ).flat();
  const thread = path.slice(1).map((to, i): Stitch => [...path[i]!, ...to]);
  const cut = Array.from({ length: crossings }, (_, i): Mark => {
    const side = i % 2 ? -1 : 1;
    const middle = y - side * (tall - (thick + across) / 2);
    return patch(`waves/${row.key}/${i}`, ring(marginPx + (i + 0.5) * pitch, middle, across / 2, 18), 'indigo', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    });
  });
  return [
    group(`${row.key}/crossing`, cut, crossings),
    group(`${row.key}/thread`, [flatThreads(thread, 'ink', thick + 2), flatThreads(thread, 'weld', thick)]),
  ];
}
