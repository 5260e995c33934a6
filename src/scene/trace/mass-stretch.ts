import type { InkName } from '../../style/inks.ts';
import { patch } from '../cloth/patch.ts';
import { type Slot, slip, slotIn, tag } from '../cloth/slot-words.ts';
import { group, type Mark, type Point } from '../display-list.ts';
import { ruleHeight, scaleRule } from './scale-rule.ts';
import { type Stretch, type TraceDrawing, type Weighed, wordsPx } from './trace-drawing.ts';

const edge = 22;
const cut = { shadow: 2.6, scissors: { miss: 0.8, snip: 90, bow: 0.002 } } as const;

/** px for a kilogram: the seed cotton is the widest. */
export const massScale = ({ masses }: TraceDrawing, width: number): number =>
  (width * 0.52 - edge) / masses.seedCotton.kg;

/** A strip that goes down from one width to another, its left edges given. */
function strip(
  name: string,
  [x0, y0, w0]: readonly [number, number, number],
  [x1, y1, w1]: readonly [number, number, number],
  ink: InkName,
): Mark {
  const outline: Point[] = [
    [x0, y0],
    [x0 + w0, y0],
    [x1 + w1, y1],
    [x1, y1],
  ];
  const narrow = Math.min(w0, w1);
  return patch(name, outline, ink, { ...cut, seam: narrow > 18 ? 5 : 0, grain: narrow > 12 ? Math.PI / 2 : null });
}

interface Label {
  readonly of: Weighed;
  /** Where its band is touched by the leader. */
  readonly from: Point;
  readonly y: number;
}

/** The cotton by weight: a ribbon that widens from the cloth down to the seed cotton as what was lost comes back to it. */
export function massStretch(drawing: TraceDrawing, top: number, width: number): Stretch {
  const { masses, lost, massRule } = drawing;
  const { cloth, batting, yarn, lint, seed, seedParts, ginWaste, seedCotton } = masses;
  const size = wordsPx(width);
  const px = massScale(drawing, width);
  const x = edge;
  const step = Math.max(74, size * 5);
  const [clothY, yarnY, lintY, ginY, endY] = [0, 1, 2, 3.5, 4.3].map((at) => top + edge + at * step) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const battingGap = batting ? 12 : 0;
  const wide = (mass: Weighed | null) => (mass ? mass.kg * px : 0);
  const lintMid = (lintY + ginY) / 2;
  const spread = 14;
  const seedX = x + wide(lint) + spread;
  const wasteX = seedX + wide(seed) + spread;
  const seedTop = lintMid - step * 0.1;
  const joinX = x + wide(yarn);
  const lossPoints: Point[] = [
    [x + wide(cloth), clothY],
    [joinX, yarnY],
    [x + wide(cloth) * 0.98, yarnY],
  ];
  const parts: Mark[] = [];
  let partX = seedX;
  for (const [i, part] of seedParts.entries()) {
    const inks: readonly InkName[] = ['weld', 'walnutPale', 'walnutWarm', 'lint'];
    const w = wide(part);
    parts.push(
      patch(
        `trace/seed/${i}`,
        [
          [partX, seedTop - 34],
          [partX + w, seedTop - 34],
          [partX + w, seedTop],
          [partX, seedTop],
        ],
        inks[i % inks.length]!,
        { ...cut, shadow: 1.2, seam: 0, grain: null },
      ),
    );
    partX += w;
  }
  const right = width * 0.6;
  const room = width - right - edge * 0.6;
  const labels: Label[] = [
    { of: cloth, from: [x + wide(cloth), clothY + 10], y: clothY - 8 },
    ...(batting
      ? [
          {
            of: batting,
            from: [x + wide(cloth) + battingGap + wide(batting), clothY + 30] as Point,
            y: clothY + step * 0.5,
          },
        ]
      : []),
    { of: yarn, from: [joinX, yarnY + 6], y: batting ? clothY + step * 1.08 : yarnY - 10 },
    { of: lint, from: [x + wide(lint), lintY + 8], y: batting ? clothY + step * 1.68 : lintY - 10 },
    { of: seed, from: [seedX + wide(seed), seedTop + 14], y: lintMid - step * 0.12 },
    { of: ginWaste, from: [wasteX + wide(ginWaste), ginY - 16], y: ginY - step * 0.42 },
    { of: seedCotton, from: [x + wide(seedCotton), ginY + (endY - ginY) / 2], y: ginY + 14 },
  ];
  const slotAt = (y: number): Slot => slotIn({ x: right, y, width: room, height: size * 2.9 });
  const leader = ({ from, y }: Label): Mark => ({
    kind: 'stitches',
    stitches: [[from[0] + 2, from[1], right - 3, y + size * 1.2]],
    ink: 'ink',
    width: 1.1,
    flat: true,
  });
  const ruleWidth = massRule.kg * px;
  const ruleY = endY + 26;
  return {
    marks: [
      group('cloth-by-weight', [strip('trace/mass/cloth', [x, clothY, wide(cloth)], [x, yarnY, wide(cloth)], 'mid')]),
      group('lost-by-weight', [
        patch('trace/lost', lossPoints, 'madder', { ...cut, shadow: 1.2, seam: 0, grain: null }),
      ]),
      group('yarn-by-weight', [strip('trace/mass/yarn', [x, yarnY, wide(yarn)], [x, lintY, wide(yarn)], 'fadedPale')]),
      ...(batting
        ? [
            group('batting-by-weight', [
              strip(
                'trace/mass/batting',
                [x + wide(cloth) + battingGap, clothY, wide(batting)],
                [x + wide(yarn) + battingGap, lintY, wide(batting)],
                'lint',
              ),
            ]),
          ]
        : []),
      group('lint-by-weight', [strip('trace/mass/lint', [x, lintY, wide(lint)], [x, ginY, wide(lint)], 'lint')]),
      group('seed-by-weight', [
        strip('trace/mass/seed', [seedX, seedTop, wide(seed)], [x + wide(lint), ginY, wide(seed)], 'walnut'),
        ...parts,
      ]),
      group('gin-waste-by-weight', [
        strip(
          'trace/mass/waste',
          [wasteX, ginY - step * 0.5, wide(ginWaste)],
          [x + wide(lint) + wide(seed), ginY, wide(ginWaste)],
          'leafGreen',
        ),
      ]),
      group('seed-cotton-by-weight', [
        strip('trace/mass/seed-cotton', [x, ginY, wide(seedCotton)], [x, endY, wide(seedCotton)], 'muslin'),
      ]),
      ...labels.map(leader),
      ...labels.flatMap(({ of, y }, i) =>
        tag(`trace/mass/tag/${i}`, { text: of.name, amount: of.text }, slotAt(y), size * 0.95),
      ),
      ...slip(
        'trace/lost/slip',
        lost,
        slotIn({ x: x + 4, y: yarnY + step * 0.22, width: Math.max(wide(yarn), width * 0.3), height: size * 3.4 }),
        { size: size * 0.9, ink: 'madder', italic: true },
      ),
      ...scaleRule(
        massRule.text,
        ruleWidth,
        { x, y: ruleY, width: width - 2 * edge },
        { ink: 'ink', size: size * 0.95 },
      ),
    ],
    height: ruleY + ruleHeight(ruleWidth, width - 2 * edge, size) + 10 - top,
  };
}
