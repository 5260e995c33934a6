import { bandMarks, plainBand } from '../../cloth/band.ts';
import { patch } from '../../cloth/patch.ts';
import { arc, pathLength, rectangle, spotAt } from '../../cloth/point.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import { stripsOf } from '../flow/flow-input.ts';
import type { CleaningInput } from './cleaning-input.ts';
import type { CleaningLayout, Way } from './cleaning-layout.ts';
import { gridBars, housing, type MachineArt } from './line-machines.ts';
import { wheel } from './wheels.ts';

/** The screw conveyor over the feeder, and the loud loop: what the feeder cannot take runs past it and comes round again. */
export function distributorMarks(input: CleaningInput, { works, pxPerKg }: CleaningLayout): Mark[] {
  const { auger, hopper, pipe, pipeWide, way } = works;
  const name = 'cleaning/distributor';
  const flights = Math.max(7, Math.round(auger.width / (auger.height * 0.9)));
  const step = auger.width / flights;
  const middle = auger.y + auger.height / 2;
  return [
    group('overflow', [
      ...plainBand(`${name}/pipe`, pipe, pipeWide, 'madder'),
      ...bandMarks(`${name}/round`, pipe, stripsOf(input.overflow.masses, pxPerKg), { rowPx: 1e3 }),
      chevrons(pipe, pipeWide),
      patch(
        `${name}/hopper`,
        [
          [hopper.x - 5, hopper.y],
          [hopper.x + hopper.width + 5, hopper.y],
          [hopper.x + hopper.width - 3, hopper.y + hopper.height],
          [hopper.x + 3, hopper.y + hopper.height],
        ],
        'madder',
        { shadow: 4, seam: hopper.width > 24 ? 4 : 0, scissors: { miss: 1.2 } },
      ),
    ]),
    patch(name, rectangle(auger.x, auger.y, auger.width, auger.height), 'fadedPale', {
      shadow: 4,
      seam: 0,
      scissors: { miss: 1.2, snip: 90 },
    }),
    ...Array.from({ length: flights }, (_, i): Mark => {
      const from = auger.x + step * (i + 0.12);
      const lean = step * 0.5 * -way;
      const wide = step * 0.3;
      const x = lean > 0 ? from : from - lean;
      return patch(
        `${name}/flight${i}`,
        [
          [x, auger.y + 3],
          [x + wide, auger.y + 3],
          [x + wide + lean, auger.y + auger.height - 3],
          [x + lean, auger.y + auger.height - 3],
        ],
        i % 2 ? 'mid' : 'indigo',
        { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' },
      );
    }),
    patch(`${name}/shaft`, rectangle(auger.x - 4, middle - 2.5, auger.width + 8, 5), 'weld', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.5, snip: 120, bow: 0 },
    }),
  ];
}

/** Which way the pipe runs, in thread. */
function chevrons(path: readonly Point[], wide: number): Mark {
  const length = pathLength(path);
  const count = Math.max(3, Math.floor(length / 46));
  const reach = wide * 0.3;
  const stitches = Array.from({ length: count }, (_, i): Stitch[] => {
    const { at, along } = spotAt(path, (length * (i + 0.6)) / count);
    const [ax, ay] = along;
    const tip: Point = [at[0] + ax * reach * 0.6, at[1] + ay * reach * 0.6];
    return [-1, 1].map(
      (side): Stitch => [
        tip[0] - ax * reach - ay * side * reach,
        tip[1] - ay * reach + ax * side * reach,
        tip[0],
        tip[1],
      ],
    );
  }).flat();
  return { kind: 'stitches', stitches, ink: 'weldPale', width: Math.max(1.8, wide * 0.08), flat: true };
}

/** The extractor-feeder, cut open: a spiked roll evens the feed, a saw carries it past grid bars, a brush takes it off. */
export function feederArt(input: CleaningInput, { works }: CleaningLayout): MachineArt {
  const { feeder: box, way } = works;
  const name = 'cleaning/feeder';
  const middle = box.x + box.width / 2;
  const r = Math.min(box.height * 0.32, box.width * 0.25);
  const [x, y] = [middle - way * box.width * 0.08, box.y + box.height * (box.height > box.width ? 0.6 : 0.61)];
  const roll = { x: x + way * r * 0.5, y: y - r * 1.42, r: r * 0.46 };
  const brush = { x: x + way * r * 1.42, y: y + r * 0.12, r: r * 0.4 };
  const down = way === 1 ? ([0.4, 0.98] as const) : ([0.02, 0.6] as const);
  return {
    still: [
      housing(
        name,
        [
          [box.x + box.width * 0.16, box.y - 2],
          [box.x + box.width * 0.84, box.y - 2],
          [box.x + box.width, box.y + box.height * 0.34],
          [box.x + box.width - 2, box.y + box.height],
          [box.x + 2, box.y + box.height],
          [box.x, box.y + box.height * 0.34],
        ],
        'faded',
        box.width,
      ),
      ...gridBars(`${name}/bars`, x, y, r * 1.17, Math.PI * down[0], Math.PI * down[1], 7),
    ],
    parts: [
      wheel(input, 'cylinder', roll, -way as Way),
      wheel(input, 'extractorSaw', { x, y, r }, -way as Way),
      wheel(input, 'brush', brush, way),
    ],
    track: [
      [roll.x, box.y],
      [roll.x - way * roll.r, roll.y],
      ...arc(x, y, r * 0.98, way === 1 ? Math.PI : 0, way === 1 ? 0.2 : Math.PI - 0.2, 6),
      [brush.x, brush.y],
    ],
    dropX: x - way * r * 1.2,
  };
}
