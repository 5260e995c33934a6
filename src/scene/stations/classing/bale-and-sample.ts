import { chanceOf, spread } from '../../cloth/chance.ts';
import { linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { letter } from '../../cloth/slot-words.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import type { ClassingScene } from './classing-input.ts';
import type { ClassingLayout } from './classing-layout.ts';

/** Ties round a bale: six straps or wires today, six iron bands then. */
const TIES = 6;

/** The slits in the two sides of the bale, where the sample was cut. */
const slitsOf = ({ bale }: ClassingLayout): readonly [Point, Point] => [
  [bale.x + 1, bale.y + bale.height * 0.33],
  [bale.x + bale.width - 1, bale.y + bale.height * 0.33],
];

/** The bale on end: wrapped, tied, cut open at both sides. */
export function baleMarks({ wrap, labels }: ClassingScene, layout: ClassingLayout): Mark[] {
  const { bale, text } = layout;
  const { x, y, width, height } = bale;
  const jute = wrap === 'jute';
  const bulge = width * 0.035;
  const pitch = height / TIES;
  /** The bale swells between its ties. @param out how far beyond its edge, px */
  const outline = (out: number): Point[] => {
    const steps = TIES * 2;
    const along = Array.from({ length: steps + 1 }, (_, i) => ({
      at: y - out + (i * (height + 2 * out)) / steps,
      swell: out + (i % 2 ? 0 : bulge),
    }));
    return [
      ...along.map(({ at, swell }): Point => [x + width + swell, at]),
      ...along.reverse().map(({ at, swell }): Point => [x - swell, at]),
    ];
  };
  const ties: Mark[] = Array.from({ length: TIES }, (_, i) =>
    patch(`classing/tie${i}`, rectangle(x, y + (i + 0.5) * pitch - 1.6, width, 3.2), 'iron', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  );
  return [
    group('bale', [
      patch('classing/baleEdge', outline(2), jute ? 'walnut' : 'mid', {
        shadow: 4,
        seam: 0,
        grain: null,
        scissors: 'asDrawn',
      }),
      patch('classing/bale', outline(0), jute ? 'walnutPale' : 'lint', {
        shadow: 0,
        seam: 0,
        grain: Math.PI / 2,
        scissors: 'asDrawn',
      }),
      ...(jute ? [weave('classing/jute', bale)] : []),
      ...ties,
      ...slitsOf(layout).flatMap((at, i) => slitMarks(`classing/slit${i}`, at, height * 0.2, i === 0 ? 1 : -1)),
    ]),
    ...stencil(labels.inflow, bale, text),
  ];
}

/** Jute bagging: open and coarse. */
function weave(name: string, { x, y, width, height }: Box): Mark {
  const chance = chanceOf(name);
  const stitches: Stitch[] = [];
  for (let across = x + 6; across < x + width - 4; across += 8)
    stitches.push([across + spread(chance, 1), y + 3, across + spread(chance, 1), y + height - 3]);
  return { kind: 'stitches', stitches, ink: 'walnut', width: 0.9, flat: true };
}

/** A cut in the wrap with the lint swelling out of it. */
function slitMarks(name: string, [x, y]: Point, tall: number, inward: 1 | -1): Mark[] {
  const wide = tall * 0.42;
  const cut: Point[] = [
    [x - inward * wide * 0.35, y - tall / 2],
    [x + inward * wide, y - tall * 0.32],
    [x + inward * wide * 0.8, y + tall * 0.3],
    [x - inward * wide * 0.35, y + tall / 2],
  ];
  return [
    patch(name, cut, 'indigo', { shadow: 0, seam: 0, grain: null, scissors: { miss: 0.8, snip: 18 } }),
    patch(
      `${name}/lint`,
      cut.map(([px, py]): Point => [x + (px - x) * 0.72, y + (py - y) * 0.76]),
      'lint',
      { shadow: 0, seam: 0, grain: null, scissors: { miss: 1.6, snip: 7 } },
    ),
  ];
}

/** What the bale weighs, on a slip sewn to its front between two ties. */
function stencil(words: string, { x, y, width, height }: Box, text: number): Mark[] {
  const tall = Math.min(height * 0.47, text * 3.2);
  const box: Box = { x: x + width * 0.06, y: y + height * 0.51, width: width * 0.88, height: tall };
  return [
    patch('classing/stencil', rectangle(box.x, box.y, box.width, box.height), 'muslin', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8, snip: 70 },
    }),
    ...letter(
      words,
      { x: box.x + 4, y: box.y + 3, width: box.width - 8, height: box.height - 6, anchor: 'middle', stands: 'middle' },
      { size: text, bold: true },
    ),
  ];
}

/** Where the two halves of the sample lie, and the coupon between them. */
function placesOf({ labels }: ClassingScene, { sample, text, roomy }: ClassingLayout) {
  const { x, y, width, height } = sample;
  const noteText = Math.max(roomy ? 14 : 13, text * 0.92);
  const sampleLines = linesOf(labels.sample(1), text, width - 8).length;
  const noteLines = linesOf(labels.couponNote, noteText, width - 8, { italic: true }).length;
  const sampleTall = sampleLines * text * 1.2;
  const wordsTall = sampleTall + noteLines * noteText * 1.2 + 6;
  const tall = height - wordsTall;
  const couponWide = Math.max(width * 0.52, text * 4.7 + 16);
  return {
    halfWide: width * 0.34,
    halfTall: tall * 0.84,
    left: [x + width * 0.17, y + tall * 0.52] as Point,
    right: [x + width * 0.83, y + tall * 0.52] as Point,
    coupon: { x: x + (width - couponWide) / 2, y: y + tall * 0.06, width: couponWide, height: tall * 0.92 },
    words: { x, y: y + tall + 2, width, height: wordsTall },
    sampleTall,
    noteText,
  };
}

/** A thread from each slit to its half of the sample: the whole sample is too little for a band. */
export function sampleThreads(scene: ClassingScene, layout: ClassingLayout): Mark {
  const [leftSlit, rightSlit] = slitsOf(layout);
  const { left, right } = placesOf(scene, layout);
  const up = (from: Point, toX: number, toY: number): Stitch[] => [
    [...from, toX, from[1]],
    [toX, from[1], toX, toY],
  ];
  const beside = layout.bale.width * 0.12;
  return group('band/out/classingSample', [
    {
      kind: 'stitches',
      stitches: [...up(leftSlit, leftSlit[0] - beside, left[1]), ...up(rightSlit, rightSlit[0] + beside, right[1])],
      ink: 'mid',
      width: 1.7,
    },
  ]);
}

/** The two halves on their way from the bale, the coupon they are rolled up with, and the words to them. */
export function sampleMarks(scene: ClassingScene, layout: ClassingLayout, out: number, progress: number): Mark[] {
  const { labels } = scene;
  const places = placesOf(scene, layout);
  const { coupon, halfWide, halfTall, words, sampleTall, noteText } = places;
  const [leftSlit, rightSlit] = slitsOf(layout);
  const half = (name: string, from: Point, to: Point): Mark[] => {
    const at: Point = [from[0] + (to[0] - from[0]) * out, from[1] + (to[1] - from[1]) * out];
    return wad(name, at, halfWide * (0.45 + 0.55 * out), halfTall * (0.45 + 0.55 * out));
  };
  const barred = (coupon.height - 8) / (labels.coupon.length + 1) > layout.text * 1.2;
  const line = (coupon.height - 8) / (labels.coupon.length + (barred ? 1 : 0));
  return [
    group('sample', [
      ...half('classing/half0', leftSlit, places.left),
      ...half('classing/half1', rightSlit, places.right),
    ]),
    patch('classing/coupon', rectangle(coupon.x, coupon.y, coupon.width, coupon.height), 'weld', {
      shadow: 2.6,
      seam: layout.roomy ? 4 : 0,
      thread: 'ink',
      scissors: { miss: 1, snip: 90 },
    }),
    ...(barred ? [bars(coupon, line * 0.8)] : []),
    ...labels.coupon.flatMap((part, i) =>
      letter(
        part,
        {
          x: coupon.x + 7,
          y: coupon.y + 4 + line * (i + (barred ? 1 : 0)),
          width: coupon.width - 14,
          height: line,
          anchor: 'middle',
          stands: 'middle',
        },
        { size: layout.text * 1.3, bold: true },
      ),
    ),
    patch('classing/sampleWords', rectangle(words.x, words.y, words.width, words.height), 'muslin', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.9, snip: 80 },
    }),
    ...letter(
      labels.sample(progress),
      {
        x: words.x + 4,
        y: words.y + 2,
        width: words.width - 8,
        height: sampleTall,
        anchor: 'middle',
        stands: 'middle',
      },
      { size: layout.text, bold: true },
    ),
    ...letter(
      labels.couponNote,
      {
        x: words.x + 4,
        y: words.y + 2 + sampleTall,
        width: words.width - 8,
        height: words.height - sampleTall - 3,
        anchor: 'middle',
        stands: 'middle',
      },
      { size: noteText, italic: true, ink: 'walnut' },
    ),
  ];
}

/** The coupon's bars: decoration of the number, the same for all. */
function bars({ x, y, width }: Box, tall: number): Mark {
  const chance = chanceOf('classing/bars');
  const stitches: Stitch[] = [];
  for (let at = x + width * 0.14; at < x + width * 0.86; at += 2.4 + chance() * 3.6)
    stitches.push([at, y + 7, at, y + 7 + tall]);
  return { kind: 'stitches', stitches, ink: 'ink', width: 1.5, flat: true };
}

/** Half a sample: a wad of lint in layers, as it is cut out of the bale. */
function wad(name: string, [x, y]: Point, wide: number, tall: number): Mark[] {
  const chance = chanceOf(name);
  const layers = 5;
  const stitches: Stitch[] = Array.from({ length: layers - 1 }, (_, i) => {
    const at = y - tall / 2 + ((i + 1) / layers) * tall;
    return [x - wide * 0.4, at + spread(chance, 2), x + wide * 0.4, at + spread(chance, 2)];
  });
  const box = rectangle(x - wide / 2, y - tall / 2, wide, tall);
  return [
    patch(`${name}/edge`, box, 'mid', { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 2, snip: 9 } }),
    patch(name, rectangle(x - wide / 2 + 1.3, y - tall / 2 + 1.3, wide - 2.6, tall - 2.6), 'lint', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: 2, snip: 9 },
    }),
    { kind: 'stitches', stitches, ink: 'faded', width: 1.3, flat: true },
  ];
}
