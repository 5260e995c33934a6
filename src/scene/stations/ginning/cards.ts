import { linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { type Box, rectangle, ring } from '../../cloth/point.ts';
import { letter, slotIn } from '../../cloth/slot-words.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { GinningInput } from './ginning-input.ts';
import { smallOf } from './ginning-layout.ts';

/** A card of muslin pinned to the ground: a closer look. */
function card(name: string, { x, y, width, height }: Box): Mark[] {
  return [
    patch(name, rectangle(x, y, width, height), 'muslin', {
      shadow: 4,
      seam: 4.5,
      thread: 'mid',
      threadWidth: 1.3,
      stitchery: { on: 6, off: 5 },
      scissors: { miss: 1.6, snip: 80 },
    }),
    ...(height < 90
      ? []
      : [
          patch(`${name}/pin`, ring(x + width / 2, y + 5, 3.4, 8), 'madder', {
            shadow: 1.2,
            seam: 0,
            grain: null,
            scissors: 'asDrawn' as const,
          }),
        ]),
  ];
}

const wordsAt = (text: string, box: Box, size: number, bold = false): Mark[] =>
  letter(text, slotIn(box, 'middle', 'middle'), { size, italic: !bold, bold });

/** Saws and ribs from the front: the gap lets teeth and fibre through, and is narrower than a seed. */
export function frontCard(input: GinningInput, box: Box, text: number): Mark {
  const name = 'ginning/front';
  const size = smallOf(text);
  const lines = linesOf(input.labels.front, size, box.width - 16, { italic: true }).length;
  const textTall = Math.min(box.height * 0.58, lines * size * 1.2 + 2);
  const art: Box = { x: box.x + 10, y: box.y + 12, width: box.width - 20, height: box.height - textTall - 25 };
  const pitch = art.width / 4;
  const marks: Mark[] = [...card(name, box)];
  if (input.stand === 'saw') {
    for (let i = 0; i < 4; i++) {
      const x = art.x + pitch * (i + 0.5);
      const teeth = 9;
      const step = art.height / teeth;
      const edge = Array.from({ length: teeth }, (_, k): Point[] => {
        const top = art.y + step * k;
        return [
          [x + 2.2, top],
          [x + 2.2, top + step * 0.35],
          [x + 4.4, top + step],
        ];
      }).flat();
      marks.push(
        patch(`${name}/saw${i}`, [[x - 2.2, art.y], ...edge, [x - 2.2, art.y + art.height]], 'indigo', {
          shadow: 1.2,
          seam: 0,
          grain: null,
          scissors: 'asDrawn',
        }),
      );
    }
    for (let i = 0; i < 5; i++) {
      const x = art.x + pitch * i;
      const wide = pitch * 0.52;
      const left = Math.max(art.x, x - wide / 2);
      const right = Math.min(art.x + art.width, x + wide / 2);
      marks.push(
        patch(`${name}/rib${i}`, rectangle(left, art.y - 2, right - left, art.height + 4), 'weld', {
          shadow: 2.6,
          seam: 0,
          grain: null,
          scissors: { miss: 0.8 },
        }),
      );
    }
    [
      [0.5, 0.3],
      [2.5, 0.56],
      [1.5, 0.78],
    ].forEach(([at, down], i) => {
      const x = art.x + pitch * at!;
      const y = art.y + art.height * down!;
      marks.push(
        {
          kind: 'stitches',
          stitches: [-5, -2, 1, 4].map((dx, k) => [x + dx, y - 4, x + dx * 0.3, y - pitch * (0.5 + 0.1 * k)] as const),
          ink: 'lint',
          width: 1.8,
        },
        ...pieceMarks('seed', `${name}/seed${i}`, { x, y, size: pitch * 0.44, turn: 0.25 * (i - 1) }),
      );
    });
  } else {
    marks.push(...nipMarks(name, art));
  }
  return group('card/front', [
    ...marks,
    ...wordsAt(
      input.labels.front,
      { x: box.x + 8, y: box.y + box.height - textTall - 5, width: box.width - 16, height: textTall },
      size,
    ),
  ]);
}

/** Where roller and fixed knife meet: fibre lies on the roller and goes under the edge, the seed stays in front of it. */
function nipMarks(name: string, art: Box): Mark[] {
  const r = art.width * 0.62;
  const cx = art.x + art.width * 0.5;
  const cy = art.y + art.height * 0.5 + r;
  const on = (angle: number, out = 1): Point => [cx + r * out * Math.cos(angle), cy + r * out * Math.sin(angle)];
  const floor = art.y + art.height;
  const rim = Array.from({ length: 15 }, (_, i) => on(Math.PI * (1.18 + 0.64 * (i / 14)))).filter(([, y]) => y < floor);
  const nip = -Math.PI * 0.53;
  const fibres = [0, 1, 2, 3].map((strand) =>
    [0, 1, 2, 3, 4, 5].map((step) => on(nip - 0.34 + step * 0.2, 1.012 + strand * 0.016)),
  );
  return [
    patch(`${name}/roller`, [...rim, [art.x + art.width, floor], [art.x, floor]], 'walnutWarm', {
      shadow: 1.2,
      seam: 0,
      scissors: 'asDrawn',
      grain: 0.4,
    }),
    {
      kind: 'stitches',
      stitches: fibres.flatMap((strand) => strand.slice(1).map((to, i) => [...strand[i]!, ...to] as const)),
      ink: 'lint',
      width: 2,
      flat: true,
    },
    patch(
      `${name}/knife`,
      [on(nip, 1.03), [cx + art.width * 0.2, art.y - 2], [cx + art.width * 0.44, art.y - 2], on(nip + 0.22, 1.1)],
      'iron',
      { shadow: 2.6, seam: 0, grain: null, scissors: 'asDrawn' },
    ),
    ...pieceMarks('seed', `${name}/seed`, {
      x: on(nip - 0.26, 1.2)[0],
      y: on(nip - 0.26, 1.2)[1],
      size: art.height * 0.19,
      turn: 1.9,
    }),
  ];
}

/** The hand-cranked ancestor: a wooden frame, a cylinder with teeth, a crank, and what it cleaned in a day. */
export function handGinCard(says: string, box: Box, text: number): Mark {
  const name = 'ginning/handGin';
  const wide = Math.min(box.height - 14, box.width * (box.width < 170 ? 0.27 : 0.44));
  const art: Box = { x: box.x + 9, y: box.y + 10, width: wide, height: box.height - 18 };
  const s = Math.min(art.width * 0.72, art.height * 0.9);
  const cx = art.x + art.width * 0.48;
  const cy = art.y + art.height * 0.52;
  const at = (dx: number, dy: number): Point => [cx + dx * s, cy + dy * s];
  const wood = { shadow: 1.2, seam: 0, grain: 0, scissors: { miss: 0.8 } } as const;
  const crank = taperedStrip([at(0.02, 0), at(0.42, -0.3), at(0.62, -0.3)], s * 0.075, s * 0.06);
  const marks: Mark[] = [
    ...card(name, box),
    patch(`${name}/legLeft`, [at(-0.56, -0.1), at(-0.44, -0.1), at(-0.5, 0.5), at(-0.62, 0.5)], 'walnut', wood),
    patch(`${name}/legRight`, [at(0.42, -0.1), at(0.54, -0.1), at(0.6, 0.5), at(0.48, 0.5)], 'walnut', wood),
    patch(`${name}/box`, [at(-0.66, -0.16), at(0.64, -0.2), at(0.58, 0.2), at(-0.6, 0.22)], 'walnutWarm', {
      ...wood,
      seam: s > 60 ? 4 : 0,
    }),
    patch(`${name}/hopper`, [at(-0.5, -0.5), at(0.12, -0.5), at(0.0, -0.16), at(-0.4, -0.16)], 'walnut', wood),
    ...[-0.36, -0.18, 0].flatMap((dx, i) =>
      pieceMarks('lint', `${name}/tuft${i}`, { x: cx + dx * s, y: cy - 0.5 * s, size: s * 0.13 }),
    ),
    ...Array.from({ length: 9 }, (_, i): Mark => {
      const x = -0.46 + i * 0.115;
      return patch(`${name}/tooth${i}`, [at(x, 0.1), at(x + 0.05, -0.07), at(x + 0.07, 0.1)], 'indigo', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: 'asDrawn',
      });
    }),
    patch(`${name}/crank`, crank, 'iron', { shadow: 2.6, seam: 0, grain: null, scissors: 'asDrawn' }),
    patch(`${name}/grip`, ring(...at(0.66, -0.3), s * 0.075, 8), 'madder', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  ];
  const beside: Box = {
    x: art.x + art.width + 4,
    y: box.y + 4,
    width: box.x + box.width - art.x - art.width - Math.max(8, box.width * 0.1),
    height: box.height - 8,
  };
  return group('card/handGin', [...marks, ...wordsAt(says, beside, smallOf(text), true)]);
}
