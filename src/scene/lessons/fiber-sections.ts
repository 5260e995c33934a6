import { patch } from '../cloth/patch.ts';
import { rectangle, ring } from '../cloth/point.ts';
import { type DisplayList, group, type Mark } from '../display-list.ts';

/** A fiber cut across: radii on one scale, and the words below it. */
export interface DrawnSection {
  readonly radius: number;
  readonly hollow: number;
  readonly name: string;
  readonly lines: readonly string[];
}

const letterPx = 16;
const lineTall = 1.25;
const edgePx = 22;

/** Height that goes with a width and the most lines under a section, px. */
export const fiberSectionsHeight = (width: number, lines: number): number =>
  Math.round(width * 0.42) + edgePx + Math.round((lines + 1) * letterPx * lineTall) + 26;

/** Fibers cut across, side by side on one scale: the wall pale, the hollow dark. */
export function fiberSections(sections: readonly DrawnSection[], width: number): DisplayList {
  const slot = width / sections.length;
  const most = Math.max(...sections.map(({ radius }) => radius));
  const px = Math.min(slot * 0.42, width * 0.2) / most;
  const floor = edgePx + width * 0.42;
  const tall = fiberSectionsHeight(width, Math.max(...sections.map(({ lines }) => lines.length)));
  const pad = patch('sections/pad', rectangle(2, 2, width - 8, tall - 8), 'indigo', { shadow: 2.6, seam: 6 });
  const drawn = sections.map(({ radius, hollow, name, lines }, i) => {
    const x = slot * (i + 0.5);
    const y = floor - most * px;
    const snips = (of: number) => ({ miss: of * px * 0.02, snip: of * px * 0.7, bow: 0.01 });
    const marks: Mark[] = [
      patch(`section${i}/wall`, ring(x, y, radius * px, 26, 0.1), 'lint', {
        shadow: 4,
        seam: 0,
        grain: null,
        scissors: snips(radius),
      }),
      ...(hollow > 0
        ? [
            patch(`section${i}/hollow`, ring(x, y, hollow * px, 20, 0.4), 'mid', {
              shadow: 0,
              seam: 0,
              grain: null,
              scissors: snips(hollow),
            }),
          ]
        : []),
    ];
    const words = [name, ...lines].map(
      (text, line): Mark => ({
        kind: 'text',
        text,
        x,
        y: floor + letterPx * (1 + line * lineTall) + 6,
        size: letterPx,
        ink: 'lint',
        anchor: 'middle',
        ...(line === 0 ? { bold: true } : {}),
      }),
    );
    return group(name, [...marks, ...words]);
  });
  return [pad, ...drawn];
}
