import type { InkName } from '../../style/inks.ts';
import { seedShape } from '../cloth/piece-shapes.ts';
import { place, ring } from '../cloth/point.ts';
import type { Point } from '../display-list.ts';
import { type BlockPiece, laidOn, pieced, strip } from './block-piece.ts';

/** Strips, as in a strip quilt: ridges and furrows, a seed at every foot of the furrow, one already up. */
export function plantingBlock(): BlockPiece[] {
  const ridges: InkName[] = ['walnut', 'weldPale', 'iron', 'calico', 'walnutWarm', 'weldPale', 'walnut'];
  const widths = [0.17, 0.09, 0.18, 0.12, 0.18, 0.09, 0.17];
  const pieces: BlockPiece[] = [];
  let x = 0;
  ridges.forEach((ink, i) => {
    pieces.push(strip(ink, x, 0, widths[i]!, 1));
    x += widths[i]!;
  });
  const seed = (cx: number, cy: number, ink: InkName) =>
    laidOn(ink, place(seedShape, { x: cx, y: cy, size: 0.066, turn: Math.PI }));
  for (const y of [0.16, 0.39, 0.62, 0.85]) pieces.push(seed(0.35, y, 'lint'));
  for (const y of [0.27, 0.5, 0.73]) pieces.push(seed(0.085, y, 'thread'), seed(0.915, y, 'thread'));
  // The seedling: two seed leaves on the middle ridge, the way a leaf pair is pieced from triangles.
  pieces.push(
    laidOn('leafGreen', [
      [0.65, 0.52],
      [0.5, 0.44],
      [0.48, 0.24],
      [0.62, 0.32],
    ]),
    laidOn('bollGreen', [
      [0.65, 0.52],
      [0.68, 0.3],
      [0.83, 0.22],
      [0.82, 0.42],
    ]),
    laidOn('youngGreen', [
      [0.63, 0.5],
      [0.67, 0.5],
      [0.675, 0.98],
      [0.635, 0.98],
    ]),
  );
  return pieces;
}

/** A plate of five wedge petals, as on a fan plate: three open white today, two were white yesterday. */
export function bloomBlock(): BlockPiece[] {
  const pieces: BlockPiece[] = [strip('bollGreen', 0, 0, 1, 1)];
  const middle: Point = [0.5, 0.51];
  for (let i = 0; i < 3; i++) {
    const angle = -Math.PI / 2 + 0.62 + (i * 2 * Math.PI) / 3;
    const leaf: Point[] = [
      [0, -0.1],
      [0.16, -0.26],
      [0.1, -0.36],
      [0, -0.49],
      [-0.1, -0.36],
      [-0.16, -0.26],
    ];
    pieces.push(laidOn('youngGreen', place(leaf, { x: middle[0], y: middle[1], turn: angle + Math.PI / 2 })));
  }
  const petals: InkName[] = ['lint', 'lint', 'blush', 'spentMadder', 'lint'];
  const petal: Point[] = [
    [-0.045, -0.06],
    [-0.2, -0.29],
    [-0.17, -0.4],
    [-0.05, -0.45],
    [0.1, -0.44],
    [0.22, -0.36],
    [0.24, -0.26],
    [0.06, -0.06],
  ];
  petals.forEach((ink, i) => {
    pieces.push(laidOn(ink, place(petal, { x: middle[0], y: middle[1], turn: (i * 2 * Math.PI) / 5 })));
  });
  pieces.push(laidOn('weld', ring(middle[0], middle[1], 0.095, 5, -Math.PI / 2)));
  return pieces;
}

/** A reel: four burs drawn in to the middle, four locks between them, two seeds to each lock. */
export function bollBlock(): BlockPiece[] {
  const pieces: BlockPiece[] = [strip('indigo', 0, 0, 1, 1)];
  for (let i = 0; i < 4; i++) {
    const bur: Point[] = [
      [0, 0.02],
      [-0.1, -0.2],
      [-0.13, -0.34],
      [0, -0.48],
      [0.13, -0.34],
      [0.1, -0.2],
    ];
    pieces.push(laidOn('walnutWarm', place(bur, { x: 0.5, y: 0.5, turn: (i * Math.PI) / 2 })));
  }
  for (let i = 0; i < 4; i++) {
    const lock: Point[] = [
      [0, -0.05],
      [-0.13, -0.16],
      [-0.22, -0.3],
      [-0.21, -0.44],
      [-0.11, -0.53],
      [0, -0.5],
      [0.11, -0.53],
      [0.21, -0.44],
      [0.22, -0.3],
      [0.13, -0.16],
    ];
    const turn = Math.PI / 4 + (i * Math.PI) / 2;
    pieces.push(laidOn('lint', place(lock, { x: 0.5, y: 0.5, turn })));
    for (const side of [-1, 1]) {
      const [at] = place([[0.085 * side, -0.36 - 0.03 * side]], { x: 0.5, y: 0.5, turn });
      pieces.push(laidOn('walnut', place(seedShape, { x: at![0], y: at![1], size: 0.052, turn })));
    }
  }
  return pieces;
}

/** A cake-stand basket set on its corner, heaped with white triangles. */
export function harvestBlock(): BlockPiece[] {
  const pieces: BlockPiece[] = [strip('weld', 0, 0, 1, 1)];
  const step = 0.2;
  // The heap: half-square triangles stepping up the diagonal.
  const heap: readonly (readonly [number, number])[] = [
    [0, 0],
    [1, 0],
    [2, 0],
    [3, 0],
    [0, 1],
    [0, 2],
    [0, 3],
    [1, 1],
    [2, 1],
    [1, 2],
  ];
  for (const [column, row] of heap) {
    const x = 0.08 + column * step;
    const y = 0.08 + row * step;
    const inner = column > 0 && row > 0;
    pieces.push(
      pieced(inner ? 'lint' : 'weldPale', [x, y], [x + step, y], [x, y + step]),
      pieced('lint', [x + step, y], [x + step, y + step], [x, y + step]),
    );
  }
  pieces.push(
    pieced('madder', [0.88, 0.34], [0.88, 0.88], [0.34, 0.88]),
    pieced('walnut', [0.88, 0.24], [0.88, 0.36], [0.36, 0.88], [0.24, 0.88]),
    pieced('weldPale', [0.88, 0.5], [0.88, 0.6], [0.6, 0.88], [0.5, 0.88]),
    pieced('walnut', [0.97, 0.72], [0.97, 0.97], [0.72, 0.97]),
  );
  return pieces;
}

/** An octagon cut from one strip wound about a core, then the wrap. A round module seen end on. */
export function moduleBlock(): BlockPiece[] {
  const pieces: BlockPiece[] = [strip('fadedPale', 0, 0, 1, 1)];
  const start = Math.PI / 8;
  const corner = (step: number, radius: number): Point => {
    const angle = start + (step * Math.PI) / 4;
    return [0.5 + radius * Math.cos(angle), 0.5 + radius * Math.sin(angle)];
  };
  for (let i = 0; i < 8; i++)
    pieces.push(pieced('weld', corner(i, 0.5), corner(i + 1, 0.5), corner(i + 1, 0.41), corner(i, 0.41)));
  const inks: InkName[] = ['lint', 'faded', 'lint', 'calico'];
  const width = 0.085;
  for (let step = 0; step < 32; step++) {
    const outer = (at: number) => 0.41 - (at / 8) * width;
    const inner = (at: number) => Math.max(0.05, outer(at) - width);
    const ink = inks[Math.floor(step / 8)]!;
    pieces.push(
      pieced(
        ink,
        corner(step, outer(step)),
        corner(step + 1, outer(step + 1)),
        corner(step + 1, inner(step + 1)),
        corner(step, inner(step)),
      ),
    );
  }
  pieces.push(laidOn('madder', ring(0.5, 0.5, 0.085, 8, start)));
  return pieces;
}
