import type { InkName } from '../../style/inks.ts';
import { dimension } from '../cloth/dimension.ts';
import { lettered } from '../cloth/lettering.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import type { DisplayList, Mark } from '../display-list.ts';

/** Size of the drawing, px. */
export const reachSize = { width: 470, height: 330 } as const;

/** A group of visitors and the heights it reaches, inches from the floor. */
export interface ReachBar {
  readonly who: string;
  readonly lowInches: number;
  readonly highInches: number;
}

export interface ReachScene {
  readonly bars: readonly ReachBar[];
  readonly labels: { readonly keys: string; readonly floor: string };
}

/** Drawn to scale: so many px an inch. */
const perInch = 5.6;
const floorY = 306;
const letterPx = 15;
const y = (inches: number): number => floorY - inches * perInch;

/** A screen of 21.5 in, upright, hung so that its keys lie within the reach of all: its edges and the top of its keys, inches. */
const screen = { left: 70, wide: 10.5 * perInch, low: 26, high: 44.7, keysHigh: 32 };
const bar = { left: 208, wide: 40, gap: 22 };
const cloths: readonly InkName[] = ['indigo', 'mid', 'bollGreen', 'walnut'];

const piece = (name: string, left: number, low: number, wide: number, high: number, ink: InkName, seam = 5): Mark =>
  patch(`reach/${name}`, rectangle(left, y(high), wide, (high - low) * perInch), ink, { seam, scissors: { miss: 1 } });
const word = (text: string, x: number, at: number, size = letterPx): Mark[] =>
  lettered([text], [x, at], { size, ink: 'ink', bold: true, anchor: 'middle' });
const chalk = (from: number, to: number, inches: number): Mark => ({
  kind: 'stitches',
  stitches: Array.from(
    { length: Math.floor((to - from) / 10) },
    (_, i) => [from + i * 10, y(inches), from + i * 10 + 6, y(inches)] as const,
  ),
  ink: 'chalk',
  width: 1.4,
  flat: true,
});

/** The kiosk from the front and to scale, and beside it a strip of cloth for each group of visitors, from its lowest reach to its highest. */
export function reachScene({ bars, labels }: ReachScene): DisplayList {
  const middle = screen.left + screen.wide / 2;
  return [
    chalk(20, reachSize.width - 12, screen.low),
    chalk(20, reachSize.width - 12, screen.keysHigh),
    piece('post', middle - 10, 1.5, 20, screen.low, 'walnutPale', 0),
    piece('foot', screen.left - 12, 0, screen.wide + 24, 2, 'walnut', 0),
    piece('frame', screen.left - 7, screen.low - 1.3, screen.wide + 14, screen.high + 1.3, 'iron', 0),
    piece('screen', screen.left, screen.keysHigh, screen.wide, screen.high, 'fadedPale'),
    piece('keys', screen.left, screen.low, screen.wide, screen.keysHigh, 'weld'),
    ...word(labels.keys, middle, y(29) + 5),
    ...dimension([34, y(screen.low)], [34, floorY], '', { ink: 'ink', size: letterPx }),
    ...word(String(screen.low), 16, y(screen.low / 2) + 5),
    ...bars.flatMap(({ who, lowInches, highInches }, i) => {
      const left = bar.left + i * (bar.wide + bar.gap);
      const center = left + bar.wide / 2;
      return [
        piece(who, left, lowInches, bar.wide, highInches, cloths[i % cloths.length] ?? 'indigo'),
        ...word(String(highInches), center, y(highInches) - 6),
        ...word(String(lowInches), center, y(lowInches) + 19),
        ...word(who, center, floorY - 14, 14),
      ];
    }),
    { kind: 'stitches', stitches: [[8, floorY, reachSize.width - 8, floorY]], ink: 'ink', width: 2, flat: true },
    ...word(labels.floor, reachSize.width - 40, floorY + 17, 14),
    ...word('in', 16, floorY + 17, 14),
  ];
}
