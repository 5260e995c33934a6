import { dimension } from '../cloth/dimension.ts';
import { flatThreads } from '../cloth/flat-threads.ts';
import { textWidth } from '../cloth/letter-widths.ts';
import { patch } from '../cloth/patch.ts';
import { type Box, rectangle, ring } from '../cloth/point.ts';
import { runningStitches } from '../cloth/running-stitch.ts';
import { letter, slip, slotAt } from '../cloth/slot-words.ts';
import { type DisplayList, group, type Mark, type Point, type Stitch } from '../display-list.ts';

export interface BaleAndTagScene {
  readonly width: number;
  readonly longIn: number;
  readonly thickIn: number;
  readonly ties: number;
  /** The two parts of the tag's number, and what each is. */
  readonly tag: { readonly gin: string; readonly ginIs: string; readonly bale: string; readonly baleIs: string };
  /** Share of the wrapping in the weight on the scale. */
  readonly tareShare: number;
  /** Where the number leads, nearest first. */
  readonly back: readonly { readonly name: string; readonly amount: string }[];
  readonly labels: {
    readonly long: string;
    readonly thick: string;
    readonly sample: string;
    readonly gross: string;
    readonly net: string;
    readonly tare: string;
    readonly back: string;
  };
}

const textPx = 15;
const numberPx = 22;
const narrowBelow = 470;
const headPx = 32;
const tagPx = { wide: 216, tall: 88 };
const cell = { tall: 50, gap: 26 };

const shapeOf = ({ width, longIn, thickIn }: BaleAndTagScene) => {
  const narrow = width < narrowBelow;
  const wide = narrow ? Math.min(230, width - 76) : width - tagPx.wide - 92;
  const bale: Box = { x: 6, y: headPx, width: wide, height: (wide * thickIn) / longIn };
  const tag: Box = narrow
    ? { x: 34, y: bale.y + bale.height + 22, width: tagPx.wide, height: tagPx.tall }
    : { x: width - tagPx.wide - 6, y: bale.y + 26, width: tagPx.wide, height: tagPx.tall };
  const weights = Math.max(bale.y + bale.height, tag.y + tag.height) + 22;
  const back = weights + 82;
  const columns = narrow ? 2 : 4;
  return { bale, tag, weights, back, columns, height: back + 24 + (4 / columns) * (cell.tall + 12) };
};

/** Height that goes with a scene, px. */
export const baleAndTagHeight = (scene: BaleAndTagScene): number => Math.ceil(shapeOf(scene).height);

/** A tied bale with its tag, its weight parted into cotton and wrapping, and what the number leads back to. */
export function baleAndTag(scene: BaleAndTagScene): DisplayList {
  const { bale, tag } = shapeOf(scene);
  const hole: Point = [tag.x + 14, tag.y + tag.height / 2];
  // Beside the bale the string comes from its last strap, under it from its first.
  const strap = 0.5 / scene.ties;
  const under = tag.y > bale.y + bale.height;
  const tie: Point = [bale.x + bale.width * (under ? strap : 1 - strap), bale.y + bale.height * 0.88];
  return [
    ...baleMarks(scene, bale),
    ...tagMarks(scene, tag, hole),
    { kind: 'stitches', stitches: [[...tie, ...hole]], ink: 'walnut', width: 1.7, flat: true },
    ...weightMarks(scene),
    ...backMarks(scene),
  ];
}

function baleMarks({ ties, labels }: BaleAndTagScene, { x, y, width, height }: Box): Mark[] {
  const bulge = height * 0.03;
  /** Which end of the bale a point of its outline is at: -1 left, 1 right, 0 between. */
  const endOf = (i: number) => (i === 0 ? -1 : i === ties * 2 ? 1 : 0);
  const outline = (out: number): Point[] => {
    const along = Array.from({ length: ties * 2 + 1 }, (_, i): readonly [number, number] => [
      x + (i * width) / (ties * 2),
      i % 2 ? 0 : bulge,
    ]);
    return [
      ...along.map(([at, swell], i): Point => [at + endOf(i) * out, y - out - swell]),
      ...along.map(([at, swell], i): Point => [at + endOf(i) * out, y + height + out + swell]).reverse(),
    ];
  };
  const straps = Array.from({ length: ties }, (_, i): Stitch => {
    const at = x + ((i + 0.5) * width) / ties;
    return [at, y + 1, at, y + height - 1];
  });
  const pitch = width / ties;
  const cut = rectangle(x + pitch * 0.6, y + height * 0.42, pitch * 0.8, height * 0.34);
  const flat = { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' } as const;
  return [
    group('bale', [
      patch('bale/edge', outline(2), 'mid', { ...flat, shadow: 4 }),
      patch('bale/lint', outline(0), 'lint', { ...flat, grain: 0 }),
      group('ties', [{ kind: 'stitches', stitches: straps, ink: 'iron', width: 3.2, flat: true }], ties),
      flatThreads(runningStitches(cut, 'bale/sample', { on: 6, off: 4 }), 'madder', 2),
    ]),
    ...slip('bale/cutHere', labels.sample, slotAt(x + 8, y + height * 0.08, width * 0.62, height * 0.26), {
      size: textPx,
    }),
    ...dimension([x, y - 13], [x + width, y - 13], labels.long, { ink: 'ink', size: textPx }),
    ...dimension([x + width + 13, y], [x + width + 13, y + height], labels.thick, {
      ink: 'ink',
      size: textPx,
      words: 'after',
    }),
  ];
}

/** The tag: its number in two parts, and under each what it is. */
function tagMarks({ tag }: BaleAndTagScene, box: Box, hole: Point): Mark[] {
  const style = { size: numberPx, bold: true };
  const from = box.x + 28;
  const [ginWide, baleWide] = [textWidth(tag.gin, numberPx, style), textWidth(tag.bale, numberPx, style)];
  const second = from + ginWide + 12;
  const y = box.y + 12;
  const rule = y + numberPx + 7;
  return [
    patch('bale/tag', rectangle(box.x, box.y, box.width, box.height), 'weldPale', {
      shadow: 4,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8, snip: 80 },
    }),
    patch('bale/hole', ring(hole[0], hole[1], 6, 12), 'muslin', { shadow: 0, seam: 0, grain: null }),
    group('number', [
      ...letter(tag.gin, slotAt(from, y, ginWide + 2, numberPx * 1.3), style),
      ...letter(tag.bale, slotAt(second, y, baleWide + 2, numberPx * 1.3), style),
    ]),
    {
      kind: 'stitches',
      stitches: [
        [from, rule, from + ginWide, rule],
        [second, rule, second + baleWide, rule],
      ],
      ink: 'madder',
      width: 2.2,
      flat: true,
    },
    ...letter(tag.ginIs, slotAt(from, rule + 5, ginWide + 4, 38), { size: textPx }),
    ...letter(tag.baleIs, slotAt(second, rule + 5, box.x + box.width - second - 6, 38), { size: textPx }),
  ];
}

/** The weight on the scale as one strip; the wrapping is cut off it, to scale. */
function weightMarks(scene: BaleAndTagScene): Mark[] {
  const { width, tareShare, labels } = scene;
  const y = shapeOf(scene).weights;
  const long = width - 12;
  const tare = long * tareShare;
  const flat = { seam: 0, grain: null, scissors: 'asDrawn' } as const;
  return [
    ...letter(labels.gross, slotAt(2, y, width - 4, 20), { size: textPx, bold: true }),
    patch('bale/weightEdge', rectangle(4, y + 22, long + 4, 26), 'ink', { ...flat, shadow: 2.6 }),
    patch('bale/net', rectangle(5.5, y + 23.5, long + 1 - tare, 23), 'lint', { ...flat, shadow: 0 }),
    patch('bale/tare', rectangle(6.5 + long - tare, y + 23.5, tare, 23), 'madder', { ...flat, shadow: 0 }),
    ...letter(labels.net, slotAt(2, y + 53, width * 0.5, 22), { size: textPx }),
    ...letter(labels.tare, slotAt(width * 0.5, y + 53, width * 0.5 - 4, 22, 'end'), { size: textPx }),
  ];
}

/** From the bale back to the bolls: a patch for each, with a goose that points on. */
function backMarks(scene: BaleAndTagScene): Mark[] {
  const { width, back, labels } = scene;
  const { back: top, columns } = shapeOf(scene);
  const wide = (width - 8 - (columns - 1) * cell.gap) / columns;
  return [
    ...letter(labels.back, slotAt(2, top, width - 4, 20), { size: textPx, bold: true }),
    ...back.flatMap(({ name, amount }, i): Mark[] => {
      const x = 4 + (i % columns) * (wide + cell.gap);
      const y = top + 24 + Math.floor(i / columns) * (cell.tall + 12);
      const last = i === back.length - 1;
      const endOfRow = i % columns === columns - 1;
      const tip: Point[] = [
        [x + wide + 5, y + cell.tall / 2 - 12],
        [x + wide + cell.gap - 4, y + cell.tall / 2],
        [x + wide + 5, y + cell.tall / 2 + 12],
      ];
      return [
        patch(`bale/back${i}`, rectangle(x, y, wide, cell.tall), 'muslin', {
          shadow: 2.6,
          seam: 0,
          grain: null,
          scissors: { miss: 0.9, snip: 70 },
        }),
        ...letter(name, slotAt(x + 4, y + 5, wide - 8, 19, 'middle'), { size: textPx }),
        ...letter(amount, slotAt(x + 4, y + 24, wide - 8, 22, 'middle'), { size: textPx + 2, bold: true }),
        ...(last || endOfRow
          ? []
          : [patch(`bale/goose${i}`, tip, 'indigo', { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' })]),
      ];
    }),
  ];
}
