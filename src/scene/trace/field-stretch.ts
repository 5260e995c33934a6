import { leafMarks } from '../cloth/leaf.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { letter, slip, slotIn } from '../cloth/slot-words.ts';
import { group, type Mark, type Stitch } from '../display-list.ts';
import { ruleHeight, scaleRule } from './scale-rule.ts';
import { type Stretch, type TraceDrawing, wordsPx } from './trace-drawing.ts';

const edge = 22;
/** A field has no shape of its own here: it is drawn so much wider than deep. */
const wideness = 1.7;
/** Rows closer than this run together, px. */
const leastRowPx = 6;

/** Edges that are measured are cut along a rule. */
const straight = { miss: 0.8, snip: 120, bow: 0.001 } as const;

/** How the field lies in a stretch so wide: px for a foot, and its own width and depth, feet. */
export function fieldScale({ field }: TraceDrawing, width: number) {
  const wideFeet = Math.sqrt(field.squareFeet * wideness);
  const deepFeet = field.squareFeet / wideFeet;
  const [short, long] = field.familiar.feet;
  const px = Math.min((width - 2 * edge) / Math.max(wideFeet, long), (width * 0.72) / Math.max(deepFeet, short));
  return { px, wideFeet, deepFeet };
}

function rowMarks(
  drawing: TraceDrawing,
  box: { x: number; y: number; wide: number; deep: number },
  px: number,
): Mark[] {
  const { plants, rowFeet } = drawing.field;
  const gap = rowFeet * px;
  if (gap < leastRowPx) return [];
  const rows = Math.max(1, Math.round(box.deep / gap));
  const ys = Array.from({ length: rows }, (_, i) => box.y + ((i + 0.5) * box.deep) / rows);
  const furrows: Stitch[] = ys.flatMap((y) => {
    const count = Math.max(2, Math.floor(box.wide / 14));
    return Array.from({ length: count }, (_, i): Stitch => {
      const from = box.x + (i * box.wide) / count + 3;
      return [from, y + gap * 0.32, from + 7, y + gap * 0.32];
    });
  });
  const drawn = Math.max(1, Math.round(plants.count / plants.each));
  const size = Math.max(3.5, Math.min(gap * 0.36, (box.wide * rows) / drawn / 2.1, 15));
  const tufts = Array.from({ length: drawn }, (_, i) => {
    const row = Math.floor((i * rows) / drawn);
    const first = Math.ceil((row * drawn) / rows);
    const inRow = Math.ceil(((row + 1) * drawn) / rows) - first;
    const x = box.x + size + ((i - first + 0.5) * (box.wide - 2 * size)) / inRow;
    return leafMarks(
      `trace/plant/${i % 6}`,
      { x, y: ys[row]! - size * 0.4, size, turn: ((i % 6) - 2.5) * 0.5, wide: 1 },
      i % 2 ? ['leafGreen', 'youngGreen'] : ['bollGreen', 'leafGreen'],
    );
  });
  return [
    { kind: 'stitches', stitches: furrows, ink: 'walnutPale', width: 1.4, flat: true },
    group('plants', tufts.flat(), drawn),
  ];
}

/** The field from above with its rows and plants, and something familiar chalked on it at the same scale. */
export function fieldStretch(drawing: TraceDrawing, top: number, width: number): Stretch {
  const { field } = drawing;
  const size = wordsPx(drawing, width);
  const { px, wideFeet, deepFeet } = fieldScale(drawing, width);
  const [wide, deep] = [wideFeet * px, deepFeet * px];
  const [short, long] = [field.familiar.feet[0] * px, field.familiar.feet[1] * px];
  const x = edge;
  const head = size * 5.9;
  const y = top + edge * 0.7 + head;
  const chalk = rectangle(x + 4, y + Math.max(deep, short) - short - 4, long, short);
  const inner = width - 2 * edge;
  const ruleWidth = field.ruleFeet * px;
  const ruleY = y + Math.max(deep, short) + 22;
  const line = (text: string, at: number, style: Parameters<typeof letter>[2], height = style.size * 1.5) =>
    letter(text, slotIn({ x: edge, y: at, width: inner, height }), style);
  return {
    marks: [
      ...line(field.text, top + edge * 0.7, { size: size * 1.9, bold: true, ink: 'ink' }, size * 2.3),
      ...line(field.plants.text, top + edge * 0.7 + size * 2.4, { size: size * 1.1, bold: true }),
      ...line(field.plants.scale, top + edge * 0.7 + size * 4, { size, italic: true }),
      group('field', [
        patch('trace/field', rectangle(x, y, wide, deep), 'walnutWarm', { shadow: 2.6, seam: 4, scissors: straight }),
      ]),
      ...rowMarks(drawing, { x, y, wide, deep }, px),
      group('familiar', [
        {
          kind: 'stitches',
          stitches: chalk.map((from, i): Stitch => [...from, ...chalk[(i + 1) % 4]!]),
          ink: 'ink',
          width: 5,
          flat: true,
        },
        {
          kind: 'stitches',
          stitches: chalk.map((from, i): Stitch => [...from, ...chalk[(i + 1) % 4]!]),
          ink: 'weldPale',
          width: 2.4,
          flat: true,
        },
        ...slip(
          'trace/familiar',
          field.familiar.text,
          slotIn(
            {
              x: chalk[3]![0] + 6,
              y: chalk[3]![1] - size * 3.3,
              width: Math.max(long, inner * 0.6) - 12,
              height: size * 3,
            },
            'start',
            'bottom',
          ),
          { size },
        ),
      ]),
      ...scaleRule(field.scale, ruleWidth, { x, y: ruleY, width: inner }, { ink: 'ink', size: size * 0.95 }),
    ],
    height: ruleY + ruleHeight(ruleWidth, inner, size) + 8 - top,
  };
}

/** The same field from the side, at the same scale, as deep as its rain and its irrigation. */
export function waterStretch(drawing: TraceDrawing, top: number, width: number): Stretch {
  const { water } = drawing;
  const size = wordsPx(drawing, width);
  const { px, wideFeet } = fieldScale(drawing, width);
  const wide = wideFeet * px;
  const [rain, irrigation] = [water.rain.feet * px, water.irrigation.feet * px];
  const [x, y] = [edge, top + edge * 0.6 + size * 2];
  const inner = width - 2 * edge;
  const bands = [
    { name: 'rain', depth: rain, y, ink: 'faded' },
    { name: 'irrigation', depth: irrigation, y: y + rain, ink: 'mid' },
  ] as const;
  const end = y + rain + irrigation;
  return {
    marks: [
      ...letter(water.scale, slotIn({ x, y: top + edge * 0.6, width: inner, height: size * 1.6 }), {
        size,
        italic: true,
        ink: 'lint',
      }),
      ...bands.flatMap(({ name, depth, y: from, ink }) =>
        depth > 0
          ? [
              group(name, [
                patch(`trace/${name}`, rectangle(x, from, wide, depth), ink, {
                  shadow: 1.2,
                  seam: depth > 16 ? 5 : 0,
                  grain: 0,
                  scissors: straight,
                }),
              ]),
            ]
          : [],
      ),
      ...letter(
        `${water.rain.text}. ${water.irrigation.text}.`,
        slotIn({ x, y: end + 8, width: inner, height: size * 3 }),
        {
          size: size * 1.1,
          bold: true,
          ink: 'lint',
        },
      ),
    ],
    height: end + 8 + size * 3.2 - top,
  };
}
