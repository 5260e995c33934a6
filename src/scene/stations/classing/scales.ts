import { chanceOf, spread } from '../../cloth/chance.ts';
import { textWidth } from '../../cloth/letter-widths.ts';
import { patch } from '../../cloth/patch.ts';
import { leafShape } from '../../cloth/piece-shapes.ts';
import { type Box, place, rectangle } from '../../cloth/point.ts';
import { notchMarks } from '../../cloth/ruler.ts';
import { letter } from '../../cloth/slot-words.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import type { LeafScale, LengthScale, MicronaireScale, ScaleTick } from './classing-input.ts';
import { tickSize } from './classing-layout.ts';

/** A scale on the table: what stands, where its mark ends up, and the way its mark falls. */
export interface Scale {
  readonly still: Mark[];
  readonly at: Point;
  /** Drawn once the reading is there, beside the mark. */
  readonly read: Mark[];
}

interface HeadWords {
  readonly name: string;
  readonly value: string;
  readonly short?: string;
}
const LINE = 1.32;
const nameRoom = ({ name }: HeadWords, text: number): number => textWidth(name, text, { italic: true }) + 3;

/** Whether name and reading need a line each. */
const stacked = (words: HeadWords, { width }: Box, text: number): boolean =>
  nameRoom(words, text) + textWidth(words.short ?? words.value, text) + text * 0.4 > width;

/** Body of a scale under its words. */
export function bodyOf(words: HeadWords, box: Box, text: number): Box {
  const tall = text * LINE * (stacked(words, box, text) ? 1.9 : 1);
  return { x: box.x, y: box.y + tall, width: box.width, height: box.height - tall };
}

/** A scale's name, and its reading once it is there: in short, or on a line of its own, where there is little room. */
export function headMarks(words: HeadWords, box: Box, text: number, read: boolean): Mark[] {
  const { x, y, width } = box;
  const height = text * LINE;
  const two = stacked(words, box, text);
  const nameWide = two ? width : nameRoom(words, text);
  const room = two ? width : width - nameWide - text * 0.4;
  const said = textWidth(words.value, text) > room ? (words.short ?? words.value) : words.value;
  return [
    ...letter(
      words.name,
      { x, y, width: nameWide, height, anchor: 'start', stands: 'middle' },
      { size: text, italic: true, ink: 'lint' },
    ),
    ...(read
      ? letter(
          said,
          {
            x: x + width - room,
            y: two ? y + height * 0.9 : y,
            width: room,
            height,
            anchor: two ? 'start' : 'end',
            stands: 'middle',
          },
          { size: text, bold: true, ink: 'lint' },
        )
      : []),
  ];
}

/** The mark of the bale: a madder notch over a scale. */
export const baleNotch = (name: string, at: Point): Mark[] => notchMarks(name, at, 'down', 'madder');

function tickMarks(
  ticks: readonly ScaleTick[],
  xOf: (at: number) => number,
  y: number,
  size: number,
  box: Box,
): Mark[] {
  const stitches: Stitch[] = [];
  const words: Mark[] = [];
  let free = Number.NEGATIVE_INFINITY;
  for (const { at, text } of ticks) {
    const x = xOf(at);
    if (x < box.x || x > box.x + box.width) continue;
    stitches.push([x, y, x, y + (text === undefined ? 4 : 7)]);
    if (text === undefined) continue;
    const wide = text.length * size * 0.6;
    const middle = Math.max(box.x + wide / 2 + 2, Math.min(box.x + box.width - wide / 2 - 2, x));
    if (middle - wide / 2 < free) continue;
    free = middle + wide / 2 + 5;
    words.push({
      kind: 'text',
      text,
      x: middle,
      y: y + 7 + size * 0.86,
      size,
      ink: 'ink',
      anchor: 'middle',
      bold: true,
    });
  }
  return [{ kind: 'stitches', stitches, ink: 'ink', width: 1.4, flat: true }, ...words];
}

/** The fibres of the sample, longest first, on a ruler; the mark stands at the upper half mean length. */
export function lengthScale(scale: LengthScale, box: Box, text: number): Scale {
  const body = bodyOf(scale, box, text);
  const rulerTall = text * 1.55;
  const rulerY = body.y + body.height - rulerTall;
  const fromX = body.x + (scale.byHand ? Math.min(body.height * 0.34, body.width * 0.13) : 4);
  const pxPerIn = (body.x + body.width - 8 - fromX) / scale.longestIn;
  const xOf = (inches: number) => fromX + inches * pxPerIn;
  const top = body.y + 12;
  const tall = rulerY - 5 - top;
  const lines = Math.max(8, Math.min(scale.fibresIn.length, Math.floor(tall / 2.2)));
  const chance = chanceOf('classing/fibres');
  const stitches = Array.from({ length: lines }, (_, i): Stitch => {
    const fibre = scale.fibresIn[Math.floor(((i + 0.5) / lines) * scale.fibresIn.length)] ?? 0;
    const y = top + ((i + 0.5) / lines) * tall;
    return [fromX, y, xOf(Math.min(fibre, scale.longestIn)), y + spread(chance, 0.8)];
  });
  const x = xOf(scale.atIn);
  // Fibres that would lie on one another are left to the ruler.
  const drawn = tall > 14;
  return {
    still: [
      ...(drawn
        ? [
            group(
              'fibres',
              [{ kind: 'stitches', stitches, ink: 'lint', width: Math.min(1.5, (tall / lines) * 0.62), flat: true }],
              lines,
            ),
            ...(scale.byHand ? thumb([fromX, top + tall / 2], tall) : [clampMark(fromX, top, tall)]),
          ]
        : []),
      patch('classing/ruler', rectangle(fromX - 5, rulerY, body.x + body.width - fromX + 3, rulerTall), 'weld', {
        shadow: 2.6,
        seam: 0,
        grain: null,
        scissors: { miss: 0.8 },
      }),
      ...tickMarks(scale.ticks, xOf, rulerY, tickSize(text), { ...body, x: fromX - 5 }),
    ],
    at: [x, Math.max(body.y + 11, Math.min(top, rulerY))],
    read: [
      {
        kind: 'stitches',
        stitches: [[x, Math.min(top, rulerY), x, rulerY + rulerTall * 0.4]],
        ink: 'madder',
        width: 2.4,
        flat: true,
      },
    ],
  };
}

/** The clamp that holds the beard. */
const clampMark = (x: number, y: number, tall: number): Mark =>
  patch('classing/clamp', rectangle(x - 4, y - 2, 7, tall + 4), 'walnutPale', {
    shadow: 1.2,
    seam: 0,
    grain: null,
    scissors: { miss: 0.6 },
  });

/** Thumb and forefinger that hold the pull at its square end. */
function thumb([x, y]: Point, tall: number): Mark[] {
  const size = Math.min(tall * 0.5, 46);
  const finger = (shift: number, lean: number): Point[] =>
    place(
      [
        [-1.1, -0.34],
        [-0.1, -0.36],
        [0.3, -0.26],
        [0.46, 0],
        [0.3, 0.26],
        [-0.1, 0.36],
        [-1.1, 0.34],
      ],
      { x: x - size * 0.1, y: y + shift * size, size, turn: lean },
    );
  const cut = { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 0.6, snip: 14 } } as const;
  return [
    patch('classing/finger', finger(0.34, -0.32), 'walnutWarm', cut),
    patch('classing/thumb', finger(-0.22, 0.3), 'walnut', cut),
    patch(
      'classing/nail',
      place(ringNail, { x: x + size * 0.14, y: y - size * 0.14, size: size * 0.2, turn: 0.3 }),
      'blush',
      {
        ...cut,
        shadow: 0,
      },
    ),
  ];
}

const ringNail: readonly Point[] = [
  [-0.9, -0.7],
  [0.6, -0.8],
  [1, 0],
  [0.6, 0.8],
  [-0.9, 0.7],
];

/** Micronaire with the market's classes: each marked by what it pays, the season's bales as threads over it. */
export function micronaireScale(scale: MicronaireScale, box: Box, text: number): Scale {
  const body = bodyOf(scale, box, text);
  const { from, to } = scale;
  const xOf = (reading: number) => body.x + ((reading - from) / (to - from)) * body.width;
  const words = tickSize(text);
  const tickTall = words + 8;
  const barTall = Math.max(text, Math.min(body.height * 0.24, text * 2));
  const barY = body.y + body.height - tickTall - barTall;
  const pays = {
    1: { ink: 'weld', sign: '+' },
    0: { ink: 'calico', sign: '0' },
    [-1]: { ink: 'blush', sign: '\u2212' },
  } as const;
  /** The sign of a zone stands in its middle, or beside the mark of this bale; null where it has no room. */
  const signX = (left: number, right: number): number | null => {
    const middle = (left + right) / 2;
    const at = xOf(scale.at);
    const fits = (x: number) => x > left + text * 0.35 && x < right - text * 0.35;
    if (!fits(middle)) return null;
    if (Math.abs(middle - at) > text * 0.75) return middle;
    return [at - text * 1.1, at + text * 1.1].find(fits) ?? null;
  };
  const classes = scale.classes.flatMap(({ from: start, pays: worth }, i): Mark[] => {
    const left = Math.max(body.x, xOf(start));
    const right = Math.min(body.x + body.width, xOf(scale.classes[i + 1]?.from ?? to));
    if (right - left < 2) return [];
    const { ink, sign } = pays[worth];
    const signAt = signX(left, right);
    const signed: Mark[] =
      signAt !== null
        ? [
            {
              kind: 'text',
              text: sign,
              x: signAt,
              y: barY + barTall / 2 + text * 0.34,
              size: text,
              ink: 'ink',
              anchor: 'middle',
              bold: true,
            },
          ]
        : [];
    return [
      patch(`classing/mic${i}`, rectangle(left, barY, right - left, barTall), ink, {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: 0.7 },
      }),
      ...signed,
    ];
  });
  const counts = new Map<number, number>();
  for (const reading of scale.others)
    counts.set(Math.round(reading * 10), (counts.get(Math.round(reading * 10)) ?? 0) + 1);
  const room = Math.max(0, barY - body.y - 14);
  return {
    still: [
      ...classes,
      columns(
        'micronaire',
        [...counts].map(([tenths, count]) => [xOf(tenths / 10), count]),
        barY - 2,
        room,
        text * 0.26,
      ),
      patch('classing/micTicks', rectangle(body.x, barY + barTall, body.width, tickTall), 'muslin', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: { miss: 0.5 },
      }),
      ...tickMarks(scale.ticks, xOf, barY + barTall, words, body),
    ],
    at: [xOf(scale.at), Math.max(body.y + 11, barY)],
    read: [
      {
        kind: 'stitches',
        stitches: [[xOf(scale.at), barY, xOf(scale.at), barY + barTall]],
        ink: 'madder',
        width: 2.4,
        flat: true,
      },
    ],
  };
}

/** How many bales of the season read so: a thread for each place, as long as there are bales. */
function columns(
  name: string,
  counts: readonly (readonly [x: number, count: number])[],
  foot: number,
  room: number,
  width: number,
): Mark {
  const most = Math.max(1, ...counts.map(([, count]) => count));
  return group(`bales/${name}`, [
    {
      kind: 'stitches',
      stitches: counts.map(
        ([x, count]) => [x, foot, x, foot - Math.max(room > 4 ? 2 : 0, (room * count) / most)] as const,
      ),
      ink: 'faded',
      width,
      flat: true,
    },
  ]);
}

/** Leaf grades: as many bits of leaf as the grade's number, the season's bales as threads over them. */
export function leafScale(scale: LeafScale, box: Box, text: number): Scale {
  const body = bodyOf(scale, box, text);
  const pitch = body.width / scale.grades;
  const words = tickSize(text);
  const side = Math.min(pitch - 3, body.height * 0.5);
  const y = body.y + body.height - words * 1.15 - side;
  const xOf = (grade: number) => body.x + (grade - 0.5) * pitch;
  const squares = Array.from({ length: scale.grades }, (_, i): Mark[] => {
    const grade = i + 1;
    const x = xOf(grade);
    const chance = chanceOf(`classing/leaf${grade}`);
    const bits = Array.from({ length: grade }, (_bit, k): Mark => {
      const across = (k % 3) - 1;
      const down = Math.floor(k / 3) - 1;
      return patch(
        `classing/leaf${grade}/${k}`,
        place(leafShape, {
          x: x + (across * 0.28 + spread(chance, 0.07)) * side,
          y: y + (0.5 + down * 0.28 + spread(chance, 0.07)) * side,
          size: side * 0.12,
          turn: chance() * 6,
        }),
        'bollGreen',
        { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' },
      );
    });
    return [
      patch(`classing/leafSquare${grade}`, rectangle(x - side / 2, y, side, side), 'lint', {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: 0.7 },
      }),
      ...bits,
      {
        kind: 'text',
        text: String(grade),
        x,
        y: y + side + words * 0.98,
        size: words,
        ink: 'lint',
        anchor: 'middle',
        bold: grade === scale.at,
      },
    ];
  }).flat();
  const x = xOf(scale.at);
  const frame: Stitch[] = [
    [x - side / 2, y, x + side / 2, y],
    [x + side / 2, y, x + side / 2, y + side],
    [x + side / 2, y + side, x - side / 2, y + side],
    [x - side / 2, y + side, x - side / 2, y],
  ];
  return {
    still: [
      ...squares,
      columns(
        'leaf',
        scale.bales.flatMap((count, i) => (count > 0 ? [[xOf(i + 1), count] as const] : [])),
        y - 2,
        Math.max(0, y - body.y - 12),
        text * 0.26,
      ),
    ],
    at: [x, Math.max(body.y + 11, y)],
    read: [{ kind: 'stitches', stitches: frame, ink: 'madder', width: 2.6, flat: true }],
  };
}
