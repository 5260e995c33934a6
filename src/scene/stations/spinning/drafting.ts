import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { rectangle } from '../../cloth/point.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';

/** Most threads that can be told apart across the fan. */
const MOST_LINES = 180;

/** How many fibres a line of the fan stands for: one, wherever they can be told apart. */
export const fibresPerLine = (fibres: number): number => Math.max(1, Math.ceil(fibres / MOST_LINES));

export interface Fan {
  readonly axisY: number;
  readonly backX: number;
  readonly nipX: number;
  readonly yarnX: number;
  /** Height of the fan at the front rollers, px. */
  readonly tall: number;
  readonly yarnPx: number;
}

const line = (path: readonly Point[]): Stitch[] => path.slice(1).map((to, i) => [...path[i]!, ...to] as const);

/**
 * The fibres of one section of the yarn, counted: each lies by itself where it leaves the front rollers, its tail as long as
 * it is, and runs together with the others into the yarn.
 * @param lengthsMm lengths of the fibres; the longest just reaches the back rollers
 * @param holds false where too few are there to hold together: they drift apart
 */
export function fibreFan(fibres: number, lengthsMm: readonly number[], fan: Fan, holds: boolean): Mark {
  const { axisY, backX, nipX, yarnX, tall, yarnPx } = fan;
  const per = fibresPerLine(fibres);
  const lines = Math.max(1, Math.round(fibres / per));
  const chance = chanceOf('spinning/fan');
  const longest = Math.max(1, ...lengthsMm);
  const pitch = tall / lines;
  const odd: Stitch[] = [];
  const even: Stitch[] = [];
  for (let i = 0; i < lines; i++) {
    const across = i + 0.5 - lines / 2;
    const y = axisY + across * pitch;
    const lengthMm = lengthsMm[(i * 7919) % Math.max(1, lengthsMm.length)] ?? longest;
    const tail = Math.max(6, (lengthMm / longest) * (backX - nipX));
    const end = holds ? axisY + (across / lines) * yarnPx * 0.7 : axisY + across * pitch * 0.5 + spread(chance, 8);
    const stop = holds ? yarnX : nipX + (yarnX - nipX) * (0.35 + chance() * 0.5);
    const path: Point[] = [
      [nipX + tail, y + spread(chance, pitch * 0.8)],
      [nipX, y],
    ];
    for (let step = 1; step <= 6; step++) {
      const t = step / 6;
      const eased = 1 - (1 - t) ** 1.7;
      path.push([nipX + (stop - nipX) * t, y + (end - y) * eased]);
    }
    (i % 2 ? odd : even).push(...line(path));
  }
  const width = Math.max(0.7, Math.min(1.7, pitch * 0.62));
  return group(
    'fibres',
    [
      { kind: 'stitches', stitches: even, ink: 'lint', width, flat: true },
      { kind: 'stitches', stitches: odd, ink: 'fadedThin', width, flat: true },
    ],
    lines * per === fibres ? fibres : lines,
  );
}

/**
 * A length of yarn seen large, right to left, thickness and turns to one scale. The turns run as the middle of a Z does; one
 * fibre is dyed so that its turns can be counted.
 * @param turnPx length of one turn, px
 */
export function twistedYarn(fromX: number, toX: number, y: number, thickPx: number, turnPx: number): Mark {
  const [left, right] = [Math.min(fromX, toX), Math.max(fromX, toX)];
  const radius = thickPx / 2;
  const chance = chanceOf('spinning/yarn');
  const steps = Math.max(8, Math.round((right - left) / 9));
  const edge = (side: 1 | -1): Point[] =>
    Array.from({ length: steps + 1 }, (_, i) => [
      left + ((right - left) * i) / steps,
      y + side * radius * (1 + spread(chance, 0.07)),
    ]);
  const strand = (phase: number): Stitch[] => {
    const stitches: Stitch[] = [];
    // The front half of each turn runs from the upper edge to the lower one, to the right: a Z turned on its side.
    for (let turn = Math.floor(-1); turn * turnPx < right - left + turnPx; turn++) {
      const from = left + (turn + phase) * turnPx;
      const path = Array.from({ length: 6 }, (_, k): Point => {
        const share = k / 5;
        return [from + (share * turnPx) / 2, y - radius * 0.94 * Math.cos(share * Math.PI)];
      });
      for (const stitch of line(path)) if (stitch[0] >= left && stitch[2] <= right) stitches.push(stitch);
    }
    return stitches;
  };
  const strands = 7;
  const hairs: Stitch[] = Array.from({ length: Math.round((right - left) / 17) }, () => {
    const at = left + chance() * (right - left);
    const side = chance() < 0.5 ? -1 : 1;
    return [at, y + side * radius, at + spread(chance, 10), y + side * (radius + 3 + chance() * thickPx * 0.35)];
  });
  return group('yarn', [
    { kind: 'stitches', stitches: hairs, ink: 'fadedThin', width: 0.9, flat: true },
    patch('spinning/yarn', [...edge(-1), ...edge(1).reverse()], 'lint', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    {
      kind: 'stitches',
      stitches: Array.from({ length: strands - 1 }, (_, i) => strand((i + 1) / strands)).flat(),
      ink: 'faded',
      width: Math.max(0.9, thickPx * 0.07),
      flat: true,
    },
    { kind: 'stitches', stitches: strand(0), ink: 'madder', width: Math.max(1.8, thickPx * 0.15), flat: true },
  ]);
}

/** Rollers seen from above: a fluted bar across the fibres. */
export function rollerBar(name: string, x: number, axisY: number, wide: number, tall: number, loud: boolean): Mark[] {
  const flutes: Stitch[] = Array.from({ length: 4 }, (_, i) => {
    const at = x - wide / 2 + (wide * (i + 1)) / 5;
    return [at, axisY - tall / 2 + 5, at, axisY + tall / 2 - 5];
  });
  return [
    patch(name, rectangle(x - wide / 2, axisY - tall / 2, wide, tall), loud ? 'madder' : 'walnutWarm', {
      shadow: 4,
      seam: 0,
      grain: null,
      scissors: { miss: 1, snip: 60 },
    }),
    { kind: 'stitches', stitches: flutes, ink: loud ? 'blush' : 'walnutPale', width: 1.3, flat: true },
  ];
}

/** A tailor's ruler under the yarn. @param marks numbers by place, px from its left end */
export function yarnRuler(
  name: string,
  [x, y]: Point,
  length: number,
  tickPx: number,
  numberEach: number,
  numberOf: (tick: number) => string,
  size: number,
): Mark[] {
  const tall = size * 1.75;
  const ticks: Stitch[] = [];
  const words: Mark[] = [];
  for (let i = 0; i * tickPx <= length - 2; i++) {
    const at = x + 6 + i * tickPx;
    const long = i % numberEach === 0;
    ticks.push([at, y, at, y + (long ? size * 0.66 : size * 0.4)]);
    if (!long) continue;
    const text = numberOf(i);
    const first = i === 0;
    words.push({
      kind: 'text',
      text,
      x: first ? at - 2 : at + 4,
      y: y + size * 1.45,
      size,
      ink: 'ink',
      anchor: first ? 'start' : 'end',
      bold: true,
    });
  }
  return [
    patch(name, rectangle(x, y, length + 14, tall), 'weld', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8 },
    }),
    { kind: 'stitches', stitches: ticks, ink: 'ink', width: 1.4, flat: true },
    ...words,
  ];
}
