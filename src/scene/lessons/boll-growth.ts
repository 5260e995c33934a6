import { cutBollMarks } from '../cloth/boll.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { type DisplayList, group, type Mark } from '../display-list.ts';
import { type FibreRule, fibreOnRule, fibreSection } from '../stations/boll/fibre-rule.ts';

export interface BollGrowth {
  readonly fibre: { readonly mm: number; readonly length: number; readonly wall: number };
  readonly rule: FibreRule;
  /** Seeds in the boll; every one is drawn. */
  readonly seeds: number;
  /** Under the boll and under the section. */
  readonly labels: { readonly boll: string; readonly section: string };
}

const letterPx = 15;
const rulePx = 108;

/** Height that goes with a width, px. */
export const bollGrowthHeight = (width: number): number => Math.round(width * 0.42) + rulePx + 54;

/** A boll cut across, one fiber cut across, and a seed combed out along a rule, all on one day. */
export function bollGrowth({ fibre, rule, seeds, labels }: BollGrowth, width: number): DisplayList {
  const tall = bollGrowthHeight(width);
  const reach = width * 0.19;
  const y = 24 + reach;
  const radius = reach * 0.72;
  const foot = 24 + 2 * reach + letterPx * 1.6;
  const words = (text: string, x: number): Mark => ({
    kind: 'text',
    text,
    x,
    y: foot,
    size: letterPx,
    ink: 'lint',
    anchor: 'middle',
  });
  const size = reach * (0.45 + 0.55 * Math.min(1, fibre.length));
  return [
    patch('growth/pad', rectangle(2, 2, width - 8, tall - 8), 'indigo', { shadow: 2.6, seam: 6 }),
    group(
      'boll',
      cutBollMarks('growth', { x: width * 0.28, y, size, turn: 0, wide: 1 }, 4, seeds, {
        length: fibre.length,
        wall: fibre.wall,
      }),
    ),
    group('section', fibreSection(width * 0.74, y, radius, fibre.wall)),
    words(labels.boll, width * 0.28),
    words(labels.section, width * 0.74),
    ...fibreOnRule({ rule, fibre }, 26, foot + 58, width - 60, letterPx),
  ];
}
