import { patch } from '../../cloth/patch.ts';
import { arc, type Box, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import type { CleanerInput, GinningInput } from './ginning-input.ts';
import { sawRim } from './saw-stand.ts';

interface CleanerArt {
  readonly under: Mark;
  readonly parts: readonly MovingPart[];
}

/** Below this half side no seam is sewn into a wheel. */
const ROOM_TO_SEW_PX = 20;

function housing(name: string, box: Box): Mark {
  const lean = box.width * 0.05;
  return patch(
    `${name}/slab`,
    [
      [box.x + lean, box.y],
      [box.x + box.width, box.y + lean * 0.5],
      [box.x + box.width - lean, box.y + box.height],
      [box.x, box.y + box.height - lean * 0.4],
    ],
    'muslin',
    { shadow: 4, seam: box.width > 44 ? 5 : 0, scissors: { miss: 1.2, snip: 60 } },
  );
}

/** Grid bars under a cylinder: lint slips past them on the teeth, what is heavier is knocked off. */
function gridBars(name: string, x: number, y: number, r: number): Mark[] {
  return arc(x, y, r * 1.2, Math.PI * 0.18, Math.PI * 0.82, 4).map(([bx, by], i) =>
    patch(
      `${name}/bar${i}`,
      ring(bx, by, Math.max(2.4, r * 0.15), 4, (Math.PI * (0.18 + 0.16 * i)) % Math.PI),
      'iron',
      {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: 0.4 },
      },
    ),
  );
}

function sawCylinder(name: string, x: number, y: number, r: number): Mark[] {
  return [
    patch(name, sawRim(x, y, r, Math.max(16, Math.round(r * 0.75)), 0.15), 'mid', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    ...(r > ROOM_TO_SEW_PX
      ? [
          {
            kind: 'stitches' as const,
            stitches: runningStitches(ring(x, y, r * 0.7, 26), `${name}/ring`, { on: 6, off: 5 }),
            ink: 'thread' as const,
            width: 1.5,
          },
        ]
      : []),
    patch(`${name}/drum`, ring(x, y, r * 0.5, 10, 0.2), 'ink', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8 },
    }),
    patch(`${name}/hub`, ring(x, y, r * 0.18, 6, 0.2), 'weld', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  ];
}

/** The gentle kind behind a roller stand: pins instead of teeth. */
function pinCylinder(name: string, x: number, y: number, r: number): Mark[] {
  const pins = Math.max(10, Math.round(r * 0.6));
  return [
    {
      kind: 'stitches',
      stitches: Array.from({ length: pins }, (_, i) => {
        const angle = (i / pins) * 2 * Math.PI;
        return [
          x + r * 0.6 * Math.cos(angle),
          y + r * 0.6 * Math.sin(angle),
          x + r * 0.97 * Math.cos(angle),
          y + r * 0.97 * Math.sin(angle),
        ] as const;
      }),
      ink: 'ink',
      width: Math.max(1.8, r * 0.1),
      flat: true,
    },
    patch(`${name}/drum`, ring(x, y, r * 0.72, 13, 0.2), 'mid', {
      shadow: 0,
      seam: r > ROOM_TO_SEW_PX ? 4 : 0,
      grain: null,
      scissors: { miss: 0.8, snip: 60 },
    }),
    patch(`${name}/hub`, ring(x, y, r * 0.2, 6, 0.2), 'weld', { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' }),
  ];
}

/** An air cleaner has no wheel: the stream turns a sharp corner, and what is heavier flies on through a slot. */
function airDuct(name: string, box: Box, lintY: number): Mark[] {
  const middle = box.x + box.width / 2;
  const low = Math.min(box.y + box.height * 0.82, lintY + box.height * 0.3);
  const duct: Point[] = [
    [box.x + 2, lintY],
    [box.x + box.width * 0.2, lintY],
    [middle, low],
    [box.x + box.width * 0.8, lintY],
    [box.x + box.width - 2, lintY],
  ];
  return [
    patch(`${name}/duct`, taperedStrip(duct, box.height * 0.24, box.height * 0.24), 'mid', {
      shadow: 2.6,
      seam: box.height > 60 ? 4 : 0,
      scissors: { miss: 0.8 },
      grain: null,
    }),
    patch(`${name}/slot`, ring(middle, low + box.height * 0.11, box.width * 0.1, 4, Math.PI / 4, 0.5), 'iron', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  ];
}

/** One lint cleaner: what stands still of it, and its cylinder. Those of a kind and size share one texture. */
export function lintCleaner(input: GinningInput, cleaner: CleanerInput, box: Box, lintY: number): CleanerArt {
  const name = `ginning/${cleaner.id}`;
  const { lintCleaner: kind, turning, labels } = input;
  const x = box.x + box.width / 2;
  const y = kind === 'air' ? lintY : box.y + box.height * 0.47;
  const r = Math.min(box.width * 0.38, box.height * 0.36);
  if (kind === 'air')
    return { under: group(`machine/${cleaner.id}`, [housing(name, box), ...airDuct(name, box, lintY)]), parts: [] };
  // Named by kind and size: marks of one name must be alike about their middle.
  const wheel = `lintCleaner/${kind}/${r.toFixed(1)}`;
  return {
    under: group(`machine/${cleaner.id}`, [housing(name, box), ...gridBars(name, x, y, r)]),
    parts: [
      {
        name: wheel,
        marks: kind === 'saw' ? sawCylinder(wheel, x, y, r) : pinCylinder(wheel, x, y, r),
        middle: [x, y],
        radius: r + 3,
        motion: { kind: 'turn', turnsPerSecond: turning.lintCleaner / 60 / turning.slowedBy },
        passes: 'belowPieces',
        shows: labels.shows.lintCleaner,
      },
    ],
  };
}
