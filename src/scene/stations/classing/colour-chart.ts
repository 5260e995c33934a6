import type { InkName } from '../../../style/inks.ts';
import { chanceOf, spread } from '../../cloth/chance.ts';
import { textWidth } from '../../cloth/letter-widths.ts';
import { patch } from '../../cloth/patch.ts';
import { leafShape } from '../../cloth/piece-shapes.ts';
import { type Box, place, rectangle, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { letter, slip } from '../../cloth/slot-words.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import type { ColourScale, GroupEdge, StandardBoxes } from './classing-input.ts';
import { tickSize } from './classing-layout.ts';
import { bodyOf, type Scale } from './scales.ts';

/** White, light spotted, spotted, tinged, yellow stained. */
const groupInks: readonly InkName[] = ['lint', 'muslin', 'calico', 'weldPale', 'weld'];
/** What of the chart is shown at least: the cotton that is sold, Rd and +b. */
const leastShown = { rd: [62, 82], b: [7, 12.4] } as const;

const edgeAt = ({ b, perRd, fromRd }: GroupEdge, rd: number): number => b + perRd * (rd - fromRd);

/** The chart as cloth: groups as leaning pieces, grades as stitched lines, every bale of the season a knot. */
export function colourChart(scale: ColourScale, box: Box, text: number): Scale {
  const body = bodyOf(scale, box, text);
  const all = [...scale.others, scale.at];
  const span = (values: readonly number[], [least, most]: readonly [number, number], spare: number) =>
    [Math.min(least, ...values.map((v) => v - spare)), Math.max(most, ...values.map((v) => v + spare))] as const;
  const rd = span(
    all.map((each) => each.rd),
    leastShown.rd,
    1.5,
  );
  const b = span(
    all.map((each) => each.b),
    leastShown.b,
    0.4,
  );
  const xOf = (value: number) => body.x + ((Math.max(b[0], Math.min(b[1], value)) - b[0]) / (b[1] - b[0])) * body.width;
  const yOf = (value: number) =>
    body.y + ((rd[1] - Math.max(rd[0], Math.min(rd[1], value))) / (rd[1] - rd[0])) * body.height;
  const at = (bv: number, rv: number): Point => [xOf(bv), yOf(rv)];
  const edges = scale.groups;
  const patches = Array.from({ length: edges.length + 1 }, (_, i): Mark[] => {
    const left = edges[i - 1];
    const right = edges[i];
    const outline: Point[] = [
      at(left ? edgeAt(left, rd[1]) : b[0], rd[1]),
      at(right ? edgeAt(right, rd[1]) : b[1], rd[1]),
      at(right ? edgeAt(right, rd[0]) : b[1], rd[0]),
      at(left ? edgeAt(left, rd[0]) : b[0], rd[0]),
    ];
    if (Math.abs(outline[1]![0] - outline[0]![0]) < 2 && Math.abs(outline[2]![0] - outline[3]![0]) < 2) return [];
    return [
      patch(`classing/colour${i}`, outline, groupInks[i] ?? 'weld', {
        shadow: i === 0 ? 2.6 : 0,
        seam: 0,
        scissors: 'asDrawn',
      }),
    ];
  }).flat();
  const gradeLines = scale.steps.rd.flatMap((step, i) => {
    const path = gradeLine(step, scale.steps, b, rd).map(([bv, rv]) => at(bv, rv));
    return path.length < 2 ? [] : runningStitches(path, `classing/grade${i}`, { on: 6, off: 4, closed: false });
  });
  const groupLines = edges.flatMap((edge, i) =>
    edgeAt(edge, rd[0]) < b[1] && edgeAt(edge, rd[1]) > b[0]
      ? runningStitches([at(edgeAt(edge, rd[1]), rd[1]), at(edgeAt(edge, rd[0]), rd[0])], `classing/group${i}`, {
          on: 6,
          off: 4,
          closed: false,
        })
      : [],
  );
  const [x, y] = at(scale.at.b, scale.at.rd);
  return {
    still: [
      ...patches,
      { kind: 'stitches', stitches: [...gradeLines, ...groupLines], ink: 'mid', width: 1.5, flat: true },
      ...codeMarks(scale, body.x + 5, yOf, body, tickSize(text)),
      ...(body.height > 80 && body.width > 130
        ? slip(
            'classing/axes',
            'Rd \u2191  +b \u2192',
            {
              x: body.x + body.width - 96,
              y: body.y + body.height - text * 2.2,
              width: 92,
              height: text * 2,
              anchor: 'end',
              stands: 'bottom',
            },
            { size: tickSize(text) },
          )
        : []),
      group(
        'bales/colour',
        [
          {
            kind: 'stitches',
            stitches: scale.others.map((bale): Stitch => {
              const [px, py] = at(bale.b, bale.rd);
              return [px, py, px, py];
            }),
            ink: 'mid',
            width: 3.4,
            flat: true,
          },
        ],
        scale.others.length,
      ),
    ],
    at: [x, Math.max(body.y + 6, y - 7)],
    read: [
      patch('classing/colourMark', ring(x, y, 5.2, 4), 'madder', {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: 'asDrawn',
      }),
    ],
  };
}

/** The lower edge of a grade across what is shown: level, then sloping from where yellowness begins to count. */
function gradeLine(
  step: number,
  { weight, fromB }: ColourScale['steps'],
  [b0, b1]: readonly [number, number],
  [rd0, rd1]: readonly [number, number],
): Point[] {
  const lineAt = (bv: number) => step - weight * Math.max(0, bv - fromB);
  if (lineAt(b0) <= rd0 || lineAt(b0) >= rd1) return [];
  const last = lineAt(b1);
  // A sloping line may leave at the foot or the top before it comes to the right edge.
  const leaves = last < rd0 ? fromB + (step - rd0) / weight : last > rd1 ? fromB + (step - rd1) / weight : b1;
  const bend = Math.max(b0, Math.min(fromB, leaves));
  return [[b0, lineAt(b0)] as Point, [bend, lineAt(bend)] as Point, [leaves, lineAt(leaves)] as Point].filter(
    ([bv], i, all) => i === 0 || bv > all[i - 1]![0],
  );
}

/** Codes of the first group at the left edge, each in its own band where there is room. */
function codeMarks({ steps }: ColourScale, x: number, yOf: (rd: number) => number, body: Box, size: number): Mark[] {
  return steps.codes.flatMap((code, i): Mark[] => {
    const top = i === 0 ? body.y : yOf(steps.rd[i - 1]!);
    const foot = i < steps.rd.length ? yOf(steps.rd[i]!) : body.y + body.height;
    if (foot - top < size * 0.96) return [];
    return [
      { kind: 'text', text: code, x, y: (top + foot) / 2 + size * 0.34, size, ink: 'mid', anchor: 'start', bold: true },
    ];
  });
}

/** From the whitest to the dullest box. */
const boxInks: readonly InkName[] = ['lint', 'muslin', 'thread', 'cotton', 'calico', 'quilting', 'walnutPale'];

/** The boxes of the white standards, each with the leaf that goes with its grade; the sample lies under the one it is like. */
export function standardBoxes(scale: StandardBoxes, box: Box, text: number): Scale {
  const body = bodyOf(scale, box, text);
  const named =
    textWidth(scale.best, text, { italic: true }) + textWidth(scale.worst, text, { italic: true }) + text < body.width;
  const wordsTall = named ? text * 1.35 : 0;
  const pitch = body.width / scale.boxes;
  const wadTall = Math.min(body.height * 0.3, pitch * 0.6);
  const tall = body.height - wordsTall - wadTall - 10;
  const boxes = Array.from({ length: scale.boxes }, (_, i): Mark[] => {
    const x = body.x + i * pitch;
    const chance = chanceOf(`classing/standard${i}`);
    const bits = Array.from(
      { length: (i + 1) * 2 },
      (_bit, k): Mark =>
        patch(
          `classing/standard${i}/${k}`,
          place(leafShape, {
            x: x + pitch * (0.5 + spread(chance, 0.3)),
            y: body.y + tall * (0.5 + spread(chance, 0.32)),
            size: Math.min(4.5, pitch * 0.07),
            turn: chance() * 6,
          }),
          'bollGreen',
          { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' },
        ),
    );
    return [
      patch(`classing/box${i}`, rectangle(x + 2, body.y, pitch - 4, tall), 'walnut', {
        shadow: 2.6,
        seam: 0,
        grain: null,
        scissors: { miss: 0.8 },
      }),
      patch(
        `classing/boxLint${i}`,
        rectangle(x + 5.5, body.y + 3.5, pitch - 11, tall - 7),
        boxInks[i] ?? 'walnutPale',
        {
          shadow: 0,
          seam: 0,
          scissors: { miss: 1, snip: 12 },
        },
      ),
      ...bits,
    ];
  }).flat();
  const x = body.x + (Math.min(scale.at, scale.boxes) - 0.5) * pitch;
  const wadY = body.y + tall + 7 + wadTall / 2;
  const half = Math.min(pitch * 0.46, 40);
  const wordsY = body.y + body.height - wordsTall;
  return {
    still: [...boxes, ...(named ? endWords(scale, { ...body, y: wordsY, height: wordsTall }, text) : [])],
    at: [x, wadY - wadTall / 2],
    read: [
      patch('classing/matched', rectangle(x - half, wadY - wadTall / 2, half * 2, wadTall), 'madder', {
        shadow: 2.6,
        seam: 0,
        grain: null,
        scissors: { miss: 1.4, snip: 9 },
      }),
      patch(
        'classing/matchedLint',
        rectangle(x - half + 3, wadY - wadTall / 2 + 3, half * 2 - 6, wadTall - 6),
        'lint',
        {
          shadow: 0,
          seam: 0,
          grain: null,
          scissors: { miss: 1.6, snip: 8 },
        },
      ),
    ],
  };
}

/** Names of the best and the worst box, at the two ends. */
const endWords = ({ best, worst }: StandardBoxes, box: Box, text: number): Mark[] => [
  ...letter(best, { ...box, anchor: 'start', stands: 'middle' }, { size: text, italic: true, ink: 'lint' }),
  ...letter(worst, { ...box, anchor: 'end', stands: 'middle' }, { size: text, italic: true, ink: 'lint' }),
];
