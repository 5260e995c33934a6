import type { InkName } from '../../style/inks.ts';
import { openBollMarks } from '../cloth/boll.ts';
import { flowerMarks, squareMarks } from '../cloth/flower.ts';
import { patch } from '../cloth/patch.ts';
import { seedShape } from '../cloth/piece-shapes.ts';
import { place } from '../cloth/point.ts';
import { letter, type Slot, slotAt } from '../cloth/slot-words.ts';
import { type DisplayList, group, type Mark, type Point, type Stitch } from '../display-list.ts';

/** A row of the calendar: what happened, and on which day. */
interface SummerRow {
  readonly piece: 'seed' | 'seedling' | 'square' | 'flower' | 'openBoll' | 'sack';
  /** Days after the first day of the picture. */
  readonly day: number;
  readonly name: string;
  readonly date: string;
}

/** One shape on the right: as wide on a day as the count on one plant. */
interface SummerCount {
  readonly key: 'squares' | 'greenBolls' | 'openBolls';
  readonly head: string;
  readonly counts: readonly number[];
  /** Number written at its widest place. */
  readonly most: string;
}

export interface PlantSummerScene {
  readonly width: number;
  readonly kind: 'upland' | 'pima';
  /** First days of months. */
  readonly months: readonly { readonly day: number; readonly name: string }[];
  readonly rows: readonly SummerRow[];
  readonly counts: readonly SummerCount[];
  /** Count that fills a column. */
  readonly mostCount: number;
}

/** Every farm on one scale, so that they compare. */
const pxPerDay = 2.7;
const top = 64;
const foot = 26;
const yOf = (day: number): number => top + day * pxPerDay;

/** Height of a summer of some days, px. */
export const plantSummerHeight = (days: number): number => Math.round(yOf(days) + foot);

const textPx = 15;
/** A name and its date, px. */
const labelPx = 39;
const rulerX = 46;
const pieceX = 72;
const inks: Readonly<Record<SummerCount['key'], InkName>> = {
  squares: 'youngGreen',
  greenBolls: 'bollGreen',
  openBolls: 'lint',
};

/** A summer from the top down: months, what the plant did, and how much hung on it each day. */
export function plantSummerMarks(scene: PlantSummerScene): DisplayList {
  const { width, months, rows, counts, mostCount, kind } = scene;
  const labelsY = labelPlaces(rows.map(({ day }) => yOf(day)));
  const shapesX = Math.max(pieceX + 132, width * 0.46);
  const column = (width - shapesX) / counts.length;
  const wordsWide = shapesX - pieceX - 30;
  const end = Math.max(...rows.map(({ day }) => day));
  return [
    ...rule(months, end),
    ...rows.map((row, i) =>
      group(row.piece, [
        thread(yOf(row.day), width),
        ...pieceMarks(row.piece, yOf(row.day), kind),
        ...letter(row.name, nameSlot(labelsY, i, wordsWide), { size: textPx, bold: true }),
        ...letter(row.date, slotAt(pieceX + 22, labelsY[i]! + 1, wordsWide, 18), { size: textPx - 1 }),
      ]),
    ),
    ...counts.flatMap(({ key, head, counts: perDay, most }, i): Mark[] => {
      const x = shapesX + (i + 0.5) * column;
      const scale = (column * 0.46) / mostCount;
      const widest = perDay.indexOf(Math.max(...perDay));
      const half = perDay[widest]! * scale;
      const outline = (extra: number): Point[] => {
        const days = perDay.flatMap((count, day) => (count > 0.02 ? [{ count, y: yOf(day) }] : []));
        const first = days[0]?.y ?? 0;
        const last = days.at(-1)?.y ?? 0;
        return [
          [x, first - extra],
          ...days.map(({ count, y }): Point => [x + count * scale + extra, y]),
          [x, last + extra],
          ...days.reverse().map(({ count, y }): Point => [x - count * scale - extra, y]),
        ];
      };
      const flat = { shadow: 0, seam: 0, scissors: 'asDrawn' } as const;
      const inside = half > 14;
      return [
        ...letter(
          head,
          { ...slotAt(x - column / 2, 4, column - 4, top - 18, 'middle'), stands: 'bottom' },
          { size: textPx - 1, bold: true },
        ),
        group(key, [
          patch(`summer/${key}/edge`, outline(1.4), key === 'openBolls' ? 'walnut' : 'ink', {
            ...flat,
            grain: null,
            shadow: 2.6,
          }),
          patch(`summer/${key}`, outline(0), inks[key], { ...flat, grain: 0 }),
        ]),
        ...letter(most, slotAt(inside ? x - 20 : x + half + 5, yOf(widest) - 9, 40, 19, inside ? 'middle' : 'start'), {
          size: textPx,
          bold: true,
          ink: key === 'greenBolls' && inside ? 'lint' : 'ink',
        }),
      ];
    }),
  ];
}

/** Room for a name over its date: a second line where the label before leaves it. */
function nameSlot(labelsY: readonly number[], i: number, width: number): Slot {
  const spare = i === 0 ? 0 : Math.max(0, Math.min(textPx + 3, labelsY[i]! - labelsY[i - 1]! - labelPx));
  return slotAt(pieceX + 22, labelsY[i]! - 18 - spare, width, 19 + spare, 'start', 'bottom');
}

/** Middles of the labels: beside their day, or higher where the next one leaves no room. */
function labelPlaces(days: readonly number[]): number[] {
  const places = [...days];
  for (let i = places.length - 2; i >= 0; i--) places[i] = Math.min(places[i]!, places[i + 1]! - labelPx);
  return places;
}

/** A chalk rule with a tick a week and the months written at their first days. */
function rule(months: PlantSummerScene['months'], end: number): Mark[] {
  const weeks = Array.from({ length: Math.floor(end / 7) + 1 }, (_, week): Stitch => {
    const y = yOf(week * 7);
    return [rulerX, y, rulerX + 5, y];
  });
  return [
    { kind: 'stitches', stitches: [[rulerX, yOf(0), rulerX, yOf(end)], ...weeks], ink: 'ink', width: 1.5, flat: true },
    ...months
      .filter(({ day }) => day <= end)
      .flatMap(({ day, name }): Mark[] => [
        { kind: 'stitches', stitches: [[rulerX - 9, yOf(day), rulerX, yOf(day)]], ink: 'ink', width: 2.4, flat: true },
        ...letter(name, slotAt(0, yOf(day) - 9, rulerX - 13, 18, 'end'), { size: textPx - 1 }),
      ]),
  ];
}

/** A basting line from an event to the shapes beside it. */
function thread(y: number, width: number): Mark {
  const stitches: Stitch[] = [];
  for (let x = rulerX + 4; x < width - 4; x += 9) stitches.push([x, y, x + 4, y]);
  return { kind: 'stitches', stitches, ink: 'quilting', width: 1.3, flat: true };
}

function pieceMarks(piece: SummerRow['piece'], y: number, kind: 'upland' | 'pima'): DisplayList {
  const name = `summer/${piece}`;
  const at = { x: pieceX, y, size: 15, wide: 1, turn: 0 };
  if (piece === 'seed')
    return [
      patch(name, place(seedShape, { ...at, size: 9, turn: 0.5 }), 'walnut', { shadow: 2.6, seam: 0, grain: null }),
    ];
  if (piece === 'square') return squareMarks(name, { ...at, y: y + 4, size: 15 });
  if (piece === 'flower') return flowerMarks(name, { ...at, size: 17, turn: -Math.PI / 2 }, kind, 0);
  if (piece === 'openBoll') return openBollMarks(name, { ...at, size: 15 }, 4);
  if (piece === 'seedling') {
    const leaf: Point[] = [
      [0, 0.2],
      [0.5, -0.5],
      [1.1, -0.45],
      [0.8, 0.1],
    ];
    const stalk: Point[] = [
      [-0.1, 0],
      [0.1, 0],
      [0.1, 1],
      [-0.1, 1],
    ];
    return [stalk, leaf, leaf.map(([x, up]): Point => [-x, up])].map((outline, i) =>
      patch(`${name}/${i}`, place(outline, { ...at, size: 11 }), i ? 'youngGreen' : 'leafGreen', {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: 0.4 },
      }),
    );
  }
  return sackMarks(name, at);
}

/** A full picking sack, tied at its neck. */
function sackMarks(name: string, at: { x: number; y: number }): DisplayList {
  const sack: Point[] = [
    [-0.35, -0.9],
    [0.35, -0.9],
    [0.2, -0.55],
    [0.85, 0.1],
    [0.8, 0.85],
    [-0.8, 0.85],
    [-0.85, 0.1],
    [-0.2, -0.55],
  ];
  return [
    patch(name, place(sack, { ...at, size: 16 }), 'walnutPale', {
      shadow: 2.6,
      seam: 3,
      grain: 0,
      scissors: { miss: 0.5 },
    }),
  ];
}
