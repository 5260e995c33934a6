import { dimension } from '../cloth/dimension.ts';
import { patch } from '../cloth/patch.ts';
import { place, rectangle, ring } from '../cloth/point.ts';
import { letter, slotAt } from '../cloth/slot-words.ts';
import { type DisplayList, group, type Mark, type Point, type Stitch } from '../display-list.ts';

export interface SteelyardScene {
  readonly width: number;
  /** Arms from the point of hanging, in, to one scale. */
  readonly hookIn: number;
  readonly poiseIn: number;
  readonly beamIn: number;
  /** Share of the fullest sack, 0 to 1. */
  readonly full: number;
  readonly labels: {
    readonly sack: string;
    readonly poise: string;
    readonly hookArm: string;
    readonly poiseArm: string;
  };
}

export const steelyardHeight = 272;
const beamY = 82;
const textPx = 15;

const sackShape: readonly Point[] = [
  [-0.3, -1],
  [0.3, -1],
  [0.16, -0.78],
  [0.66, -0.3],
  [0.8, 0.5],
  [0.6, 1],
  [-0.6, 1],
  [-0.8, 0.5],
  [-0.66, -0.3],
  [-0.16, -0.78],
];

/** A sack on the short arm, a small weight far out on the long one, and the beam level between them. */
export function steelyardMarks({ width, hookIn, poiseIn, beamIn, full, labels }: SteelyardScene): DisplayList {
  const pivotX = Math.max(74, width * 0.2);
  const scale = (width - pivotX - 16) / beamIn;
  const hookX = pivotX - hookIn * scale;
  const poiseX = pivotX + poiseIn * scale;
  const size = 64 * Math.cbrt(full);
  const sackY = beamY + 26 + size;
  const cut = { seam: 0, grain: null } as const;
  const line = (stitches: Stitch[], width = 2.4): Mark => ({
    kind: 'stitches',
    stitches,
    ink: 'iron',
    width,
    flat: true,
  });
  const ticks = Array.from({ length: Math.floor(beamIn / hookIn) }, (_, i): Stitch => {
    const x = pivotX + (i + 1) * hookIn * scale;
    return [x, beamY - 4, x, beamY + 4];
  });
  return [
    line([[pivotX, 6, pivotX, beamY]], 3),
    ...dimension([pivotX, 40], [poiseX, 40], labels.poiseArm, { ink: 'ink', size: textPx }),
    ...dimension([hookX, 40], [pivotX, 40], '', { ink: 'ink', size: textPx }),
    ...letter(labels.hookArm, slotAt(0, 16, pivotX - 7, 20, 'end'), { size: textPx, bold: true }),
    group('beam', [
      patch('steelyard/beam', rectangle(hookX - 8, beamY - 5, width - hookX, 10), 'walnut', {
        ...cut,
        shadow: 4,
        scissors: { miss: 0.5 },
      }),
      { kind: 'stitches', stitches: ticks, ink: 'lint', width: 1.6, flat: true },
      patch('steelyard/pivot', ring(pivotX, beamY, 8, 9), 'weld', { ...cut, shadow: 2.6 }),
    ]),
    line([[hookX, beamY + 5, hookX, sackY - size + 2]]),
    group('sack', [
      patch('steelyard/sack', place(sackShape, { x: hookX, y: sackY, size }), 'muslin', {
        shadow: 4,
        seam: Math.min(7, size * 0.14),
        scissors: { miss: 0.8 },
      }),
    ]),
    ...letter(labels.sack, slotAt(0, sackY + size + 8, hookX * 2, 22, 'middle'), { size: textPx, bold: true }),
    group('poise', [
      line([[poiseX, beamY - 8, poiseX, beamY + 24]]),
      patch('steelyard/poise', ring(poiseX, beamY + 38, 17, 8, 0.3), 'iron', { ...cut, shadow: 4 }),
    ]),
    ...letter(labels.poise, slotAt(Math.min(poiseX - 60, width - 122), beamY + 64, 120, 22, 'middle'), {
      size: textPx,
      bold: true,
    }),
  ];
}
