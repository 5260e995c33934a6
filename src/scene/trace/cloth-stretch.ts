import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { slip, slotIn, tag } from '../cloth/slot-words.ts';
import { group, type Mark } from '../display-list.ts';
import { patchwork } from './patchwork.ts';
import { pieceOutline } from './piece-shapes.ts';
import { ruleHeight, scaleRule } from './scale-rule.ts';
import { type DrawnCloth, type Stretch, type TraceDrawing, wordsPx } from './trace-drawing.ts';

const edge = 22;

/** The largest of what is laid out, inches. */
function extent(cloth: DrawnCloth): readonly [number, number] {
  const all = cloth.kind === 'quilt' ? [cloth.top, cloth.batting, cloth.backing] : [cloth.finished, cloth.cloth];
  return [Math.max(...all.map(([width]) => width)), Math.max(...all.map(([, length]) => length))];
}

/** px for an inch of the cloth in a stretch so wide. */
export function clothScale(cloth: DrawnCloth, width: number): number {
  const [wide, long] = extent(cloth);
  const room = width < 460 ? 0.58 : 0.66;
  return Math.min((width * room - edge) / wide, (width * 0.8) / long);
}

function quiltMarks(cloth: Extract<DrawnCloth, { kind: 'quilt' }>, x: number, y: number, scale: number): Mark[] {
  const [wide, long] = extent(cloth);
  const layer = ([width, length]: readonly [number, number]) => ({
    x: x + ((wide - width) / 2) * scale,
    y: y + ((long - length) / 2) * scale,
    width: width * scale,
    height: length * scale,
  });
  const [backing, batting, top] = [layer(cloth.backing), layer(cloth.batting), layer(cloth.top)];
  const outline = (box: typeof top) => rectangle(box.x, box.y, box.width, box.height);
  return [
    group('layer/backing', [patch('trace/backing', outline(backing), 'fadedPale', { shadow: 4, seam: 4 })]),
    group('layer/batting', [
      patch('trace/batting', outline(batting), 'lint', { shadow: 1.2, seam: 3, thread: 'faded' }),
    ]),
    group('layer/top', [
      patch('trace/top', outline(top), 'muslin', { shadow: 1.2, seam: 0, grain: null }),
      ...patchwork('trace/top', top, scale),
    ]),
  ];
}

function pieceMarks(cloth: Extract<DrawnCloth, { kind: 'piece' }>, x: number, y: number, scale: number): Mark[] {
  const [width, length] = cloth.cloth.map((inches) => inches * scale) as [number, number];
  const [wide, long] = cloth.finished.map((inches) => inches * scale) as [number, number];
  const outline = pieceOutline(cloth.shape, x + (width - wide) / 2, y + Math.max(0, (length - long) / 2), wide, long);
  return [
    group('cloth', [patch('trace/cloth', rectangle(x, y, width, length), 'fadedPale', { shadow: 4, seam: 5 })]),
    ...(cloth.shape === 'bolt'
      ? []
      : [group('piece', [patch('trace/piece', outline, 'indigo', { shadow: 2.6, seam: Math.max(3, scale * 0.6) })])]),
  ];
}

/** The cloth laid out to scale: a quilt in its layers, or a piece on the cloth it is cut from. */
export function clothStretch(drawing: TraceDrawing, top: number, width: number): Stretch {
  const { cloth, clothTags, clothRule, layers, many } = drawing;
  const size = wordsPx(drawing, width);
  const scale = clothScale(cloth, width);
  const [wide, long] = extent(cloth).map((inches) => inches * scale) as [number, number];
  const [x, y] = [edge, top + edge + size * 0.4];
  const right = x + wide + 16;
  const room = width - right - edge;
  const ruleWidth = clothRule.inches * scale;
  const ruleY = y + long + 26;
  const names: Mark[] =
    cloth.kind === 'quilt'
      ? [layers.top, layers.batting, layers.backing].flatMap((name, i) => {
          const inset = [cloth.top, cloth.batting, cloth.backing][i]!;
          const edgeX = x + (wide + inset[0] * scale) / 2;
          const at = y + long - (3 - i) * size * 1.9;
          return [
            {
              kind: 'stitches',
              stitches: [[edgeX - (i === 0 ? 14 : 3), at + size * 0.9, right, at + size * 0.9]],
              ink: 'ink',
              width: 1.4,
              flat: true,
            } as const,
            ...slip(`trace/layer/${i}`, name, slotIn({ x: right, y: at, width: room, height: size * 1.8 }), { size }),
          ];
        })
      : [];
  // As many tags as there is room for above the names of the layers.
  const taken = (cloth.kind === 'quilt' ? 3 * 1.9 : 0) + (many === '' ? 0 : 2.6);
  const fitting = Math.max(1, Math.floor((long + 10 - taken * size) / (3.2 * size)));
  return {
    marks: [
      group('cloth-to-scale', cloth.kind === 'quilt' ? quiltMarks(cloth, x, y, scale) : pieceMarks(cloth, x, y, scale)),
      ...names,
      ...(many === ''
        ? []
        : slip('trace/many', many, slotIn({ x: right, y, width: room, height: size * 2 }), { size, bold: true })),
      ...clothTags.slice(0, fitting).flatMap(({ name, text }, i) =>
        tag(
          `trace/cloth/${i}`,
          { text: name, amount: text },
          slotIn({
            x: right,
            y: y + (many === '' ? 0 : size * 2.6) + i * size * 3.2,
            width: room,
            height: size * 3.1,
          }),
          size,
        ),
      ),
      ...scaleRule(
        clothRule.text,
        ruleWidth,
        { x, y: ruleY, width: width - 2 * edge },
        { ink: 'ink', size: size * 0.95 },
      ),
    ],
    height: ruleY + ruleHeight(ruleWidth, width - 2 * edge, size) + 8 - top,
  };
}
