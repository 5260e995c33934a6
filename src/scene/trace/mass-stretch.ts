import type { InkName } from '../../style/inks.ts';
import { patch } from '../cloth/patch.ts';
import { letter, slip, slotIn, tag } from '../cloth/slot-words.ts';
import { group, type Mark, type Point } from '../display-list.ts';
import { ruleHeight, scaleRule } from './scale-rule.ts';
import { type Stretch, type TraceDrawing, type Weighed, wordsPx } from './trace-drawing.ts';

const edge = 22;
const cut = { shadow: 2.6, scissors: { miss: 0.8, snip: 90, bow: 0.002 } } as const;
const partInks: readonly InkName[] = ['weld', 'walnutPale', 'walnutWarm', 'lint'];

/** px for a kilogram: the seed cotton is the widest. */
export const massScale = ({ masses }: TraceDrawing, width: number): number =>
  (width * 0.54 - edge) / masses.seedCotton.kg;

/** A level of the ribbon: where its left edge is, how far down, how wide, px. */
type Level = readonly [x: number, y: number, wide: number];

/** A piece of the ribbon that goes down through its levels. */
function strip(name: string, levels: readonly Level[], ink: InkName): Mark {
  const left = levels.map(([x, y]): Point => [x, y]);
  const right = levels.map(([x, y, wide]): Point => [x + wide, y]).reverse();
  const narrow = Math.min(...levels.map(([, , wide]) => wide));
  return patch(name, [...right.reverse(), ...left.reverse()], ink, {
    ...cut,
    seam: narrow > 18 ? 5 : 0,
    grain: narrow > 12 ? Math.PI / 2 : null,
  });
}

/** Something named beside the ribbon, with the place that its thread leads to. */
interface Label extends Pick<Weighed, 'name' | 'text'> {
  readonly from: Point;
}

/** Names beside the ribbon, one below the other and as near their places as they fit. */
function labelled(labels: readonly Label[], right: number, room: number, size: number) {
  const tall = size * 2.75;
  let next = Number.NEGATIVE_INFINITY;
  const marks = labels.flatMap(({ name, text, from }, i): Mark[] => {
    const y = Math.max(next, from[1] - tall / 2);
    next = y + tall + 5;
    const slot = slotIn({ x: right, y, width: room, height: tall });
    return [
      {
        kind: 'stitches',
        stitches: [[from[0] - 3, from[1], right - 2, y + tall * 0.42]],
        ink: 'ink',
        width: 1.2,
        flat: true,
      },
      ...(text === ''
        ? letter(name, { ...slot, x: right + 4, width: room - 4 }, { size: size * 0.92, ink: 'madder', italic: true })
        : tag(`trace/mass/tag/${i}`, { text: name, amount: text }, slot, size * 0.95)),
    ];
  });
  return { marks, end: next };
}

/** The cotton by weight: a ribbon that widens from the cloth down to the seed cotton as what was lost comes back to it. */
export function massStretch(drawing: TraceDrawing, top: number, width: number): Stretch {
  const { masses, lost, massRule } = drawing;
  const { cloth, batting, yarn, lint, seed, seedParts, ginWaste, seedCotton } = masses;
  const size = wordsPx(drawing, width);
  const px = massScale(drawing, width);
  const step = size * 5.4;
  const x = edge;
  const y = (at: number) => top + edge + at * step;
  const [c, b, s, l] = [cloth.kg * px, (batting?.kg ?? 0) * px, yarn.kg * px, lint.kg * px];
  const [z, w, all] = [seed.kg * px, ginWaste.kg * px, seedCotton.kg * px];
  const fan = Math.min(18, width * 0.03);
  const [seedX, wasteX] = [x + l + fan, x + l + z + 2 * fan];
  const partEnds = seedParts.map((_, i) => seedParts.slice(0, i + 1).reduce((sum, { kg }) => sum + kg * px, 0));
  const thin = { ...cut, shadow: 1.2, seam: 0, grain: null } as const;
  const lostOnes: readonly (readonly Point[])[] = [
    [
      [x + c, y(0)],
      [x + s, y(1)],
      [x + c, y(1)],
    ],
    [
      [x + s + b, y(1)],
      [x + l, y(2)],
      [x + s + b, y(2)],
    ],
  ];
  const right = width * 0.62;
  const ruleWidth = massRule.kg * px;
  const labels: Label[] = [
    { ...cloth, from: [x + c, y(0.3)] },
    ...(batting ? [{ ...batting, from: [x + c + b, y(0.6)] as Point }] : []),
    { ...yarn, from: [x + s, y(1.3)] },
    { name: lost, text: '', from: [x + (s + b + l) / 2, y(1.86)] },
    { ...lint, from: [x + l, y(2.3)] },
    { ...seed, from: [seedX + z, y(3)] },
    { ...ginWaste, from: [wasteX + w, y(3.5)] },
    { ...seedCotton, from: [x + all, y(4.5)] },
  ];
  const beside = labelled(labels, right, width - right - edge * 0.7, size);
  const ruleY = Math.max(y(4.8), beside.end) + 22;
  return {
    marks: [
      group(
        'lost-by-weight',
        lostOnes.map((outline, i) => patch(`trace/lost/${i}`, outline, 'madder', thin)),
      ),
      group('cloth-by-weight', [
        strip(
          'trace/mass/cloth',
          [
            [x, y(0), c],
            [x, y(1), c],
          ],
          'mid',
        ),
      ]),
      group('yarn-by-weight', [
        strip(
          'trace/mass/yarn',
          [
            [x, y(1), s],
            [x, y(2), s],
          ],
          'fadedPale',
        ),
      ]),
      ...(b > 0
        ? [
            group('batting-by-weight', [
              strip(
                'trace/mass/batting',
                [
                  [x + c, y(0), b],
                  [x + s, y(1), b],
                  [x + s, y(2), b],
                ],
                'lint',
              ),
            ]),
          ]
        : []),
      group('lint-by-weight', [
        strip(
          'trace/mass/lint',
          [
            [x, y(2), l],
            [x, y(4), l],
          ],
          'lint',
        ),
      ]),
      group('seed-by-weight', [
        strip(
          'trace/mass/seed',
          [
            [seedX, y(2.75), z],
            [seedX, y(3.3), z],
            [x + l, y(4), z],
          ],
          'walnut',
        ),
        ...seedParts.map(({ kg }, i) =>
          patch(
            `trace/seed/${i}`,
            [
              [seedX + partEnds[i]! - kg * px, y(2.4)],
              [seedX + partEnds[i]!, y(2.4)],
              [seedX + partEnds[i]!, y(2.75)],
              [seedX + partEnds[i]! - kg * px, y(2.75)],
            ],
            partInks[i % partInks.length]!,
            thin,
          ),
        ),
      ]),
      group('gin-waste-by-weight', [
        strip(
          'trace/mass/waste',
          [
            [wasteX, y(3), w],
            [wasteX, y(3.3), w],
            [x + l + z, y(4), w],
          ],
          'leafGreen',
        ),
      ]),
      group('seed-cotton-by-weight', [
        strip(
          'trace/mass/seed-cotton',
          [
            [x, y(4), all],
            [x, y(4.8), all],
          ],
          'muslin',
        ),
      ]),
      ...beside.marks,
      ...slip(
        'trace/seed/parts',
        seedParts.map(({ name }) => name).join(', '),
        slotIn({ x: seedX - 6, y: y(2.4) - size * 1.7, width: right - seedX, height: size * 1.6 }, 'start', 'bottom'),
        { size: size * 0.92, italic: true },
        { cloth: 'weldPale', shadow: 0 },
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
