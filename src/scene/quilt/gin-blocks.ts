import type { InkName } from '../../style/inks.ts';
import { arc } from '../cloth/point.ts';
import { tuftOutline } from '../cloth/tuft.ts';
import { type BlockPiece, laidOn, pieced, strip } from './block-piece.ts';

/** Flocks of geese: white ones fly up off the grid bars, trash drops through. */
export function cleaningBlock(): BlockPiece[] {
  const pieces: BlockPiece[] = [strip('mid', 0, 0, 1, 0.52), strip('faded', 0, 0.62, 1, 0.38)];
  const column = 0.25;
  for (let row = 0; row < 2; row++)
    for (let i = 0; i < 4; i++) {
      const x = i * column;
      const y = row * 0.26;
      pieces.push(pieced('lint', [x, y + 0.25], [x + column / 2, y + 0.02], [x + column, y + 0.25]));
    }
  const bars: InkName[] = ['weld', 'ink', 'weld', 'ink', 'weld', 'ink', 'weld', 'ink'];
  bars.forEach((ink, i) => {
    pieces.push(strip(ink, i / 8, 0.52, 1 / 8, 0.1));
  });
  const trash: InkName[] = [
    'madder',
    'bollGreen',
    'weldOnIron',
    'bollGreen',
    'iron',
    'spentMadder',
    'madder',
    'bollGreen',
  ];
  trash.forEach((ink, i) => {
    const x = (i % 4) * column + (i < 4 ? 0 : 0.03);
    const y = i < 4 ? 0.64 : 0.82;
    const wide = i < 4 ? column : column - 0.06;
    pieces.push(pieced(ink, [x + 0.02, y], [x + wide - 0.02, y], [x + wide / 2, y + (i < 4 ? 0.17 : 0.15)]));
  });
  return pieces;
}

/** A quarter saw on the corner, all spikes: the teeth carry white lint out, and the seed stays behind the rib. */
export function ginningBlock(): BlockPiece[] {
  const pieces: BlockPiece[] = [strip('fadedPale', 0, 0, 1, 1)];
  const teeth = 8;
  const root = 0.68;
  const tip = 0.9;
  const quarter = Math.PI / 2;
  // Angles run from straight up to straight right, about the lower left corner.
  const at = (angle: number, radius: number): [number, number] => [
    radius * Math.sin(angle),
    1 - radius * Math.cos(angle),
  ];
  const saw: [number, number][] = [];
  for (let i = 0; i < teeth; i++) {
    saw.push(at((quarter * i) / teeth, root));
    saw.push(at((quarter * (i + 1.02)) / teeth, tip));
  }
  saw.push(at(quarter, root), [0, 1]);
  for (const [angle, radius] of [
    [0.2, 0.93],
    [0.62, 0.95],
    [1.02, 0.93],
    [1.4, 0.94],
  ] as const) {
    const [x, y] = at(angle, radius);
    pieces.push(laidOn('lint', tuftOutline(x, y, 0.1, `ginning-block/${angle}`)));
  }
  pieces.push(laidOn('indigo', saw));
  const band = (from: number, to: number, ink: InkName, parts: number, other: InkName) => {
    for (let i = 0; i < parts; i++) {
      const outer = arc(0, 1, from, -quarter + (quarter * i) / parts, -quarter + (quarter * (i + 1)) / parts, 3);
      const inner = arc(0, 1, to, -quarter + (quarter * (i + 1)) / parts, -quarter + (quarter * i) / parts, 3);
      pieces.push(pieced(i % 2 ? other : ink, ...outer, ...inner));
    }
  };
  band(0.62, 0.5, 'weld', 5, 'weld');
  band(0.5, 0.36, 'walnut', 4, 'walnutWarm');
  pieces.push(pieced('madder', [0, 1], ...arc(0, 1, 0.36, -quarter, 0, 5)));
  pieces.push(pieced('iron', [0, 1], ...arc(0, 1, 0.14, -quarter, 0, 3)));
  return pieces;
}

/** Courthouse steps: plate upon plate closes from above and below on one white bale and its ties. */
export function pressingBlock(): BlockPiece[] {
  const pieces: BlockPiece[] = [];
  const plates: readonly (readonly [number, InkName])[] = [
    [0.12, 'indigo'],
    [0.1, 'mid'],
    [0.08, 'faded'],
  ];
  let edge = 0;
  for (const [depth, ink] of plates) {
    pieces.push(strip(ink, edge * 0.62, edge, 1 - edge * 1.24, depth));
    pieces.push(strip(ink, edge * 0.62, 1 - edge - depth, 1 - edge * 1.24, depth));
    const side: InkName = ink === 'mid' ? 'weldPale' : 'weld';
    const below = edge + depth;
    pieces.push(strip(side, edge * 0.62, below, depth * 0.62, 1 - 2 * below));
    pieces.push(strip(side, 1 - (edge + depth) * 0.62, below, depth * 0.62, 1 - 2 * below));
    edge = below;
  }
  const left = edge * 0.62;
  const width = 1 - 2 * left;
  const ties = 6;
  const gap = width / (ties + 1);
  for (let i = 0; i <= ties; i++) pieces.push(strip('lint', left + i * gap, edge, gap, 1 - 2 * edge));
  for (let i = 1; i <= ties; i++) {
    const x = left + i * gap - 0.011;
    pieces.push(laidOn('madder', strip('madder', x, edge - 0.02, 0.022, 1.04 - 2 * edge).points));
  }
  return pieces;
}

/** Twenty-five patches, each two triangles, for a sample is cut from both sides of the bale. No two whites are the same. */
export function classingBlock(): BlockPiece[] {
  const shades: readonly InkName[] = ['lint', 'muslin', 'cotton', 'calico', 'weldPale', 'walnutPale'];
  const pieces: BlockPiece[] = [];
  const side = 0.2;
  for (let row = 0; row < 5; row++)
    for (let column = 0; column < 5; column++) {
      const x = column * side;
      const y = row * side;
      const grade = Math.min(4, Math.floor((row + column) * 0.58));
      const front = shades[grade]!;
      const back = row > 2 && column < 2 ? 'fadedThin' : shades[grade + 1]!;
      const flip = (row + column) % 2 === 0;
      pieces.push(
        flip
          ? pieced(front, [x, y], [x + side, y], [x, y + side])
          : pieced(front, [x, y], [x + side, y], [x + side, y + side]),
        flip
          ? pieced(back, [x + side, y], [x + side, y + side], [x, y + side])
          : pieced(back, [x, y], [x + side, y + side], [x, y + side]),
      );
    }
  // The sample in hand, and its tag.
  pieces.push(
    laidOn('lint', [
      [0.385, 0.215],
      [0.6, 0.19],
      [0.625, 0.41],
      [0.4, 0.43],
    ]),
  );
  pieces.push(
    laidOn('madder', [
      [0.55, 0.36],
      [0.77, 0.39],
      [0.755, 0.49],
      [0.535, 0.46],
    ]),
  );
  return pieces;
}
