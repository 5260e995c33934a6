import { bandMarks } from '../../cloth/band.ts';
import { patch } from '../../cloth/patch.ts';
import { piecedGround } from '../../cloth/pieced-ground.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { SceneFrame } from '../../scene-frame.ts';
import { binAreaPx, binFill, binMarks } from '../flow/bin.ts';
import { captionHem } from '../flow/caption-hem.ts';
import { type FlowLegend, type Masses, massOf, stripsOf } from '../flow/flow-input.ts';
import { legendOf } from '../flow/piece-mass.ts';
import { pocketMarks } from '../flow/pocket.ts';
import type { CleaningInput } from './cleaning-input.ts';
import { type CleaningLayout, layCleaning } from './cleaning-layout.ts';
import { type LineArt, linePieces, takersOf, trashPieces } from './cleaning-pieces.ts';
import { cleaningWords } from './cleaning-words.ts';
import { lineMachine } from './line-machines.ts';
import { distributorMarks, feederArt } from './works-art.ts';

/** Every piece goes the whole of its path in this time, seconds. */
const LAP_SECONDS = 30;

export interface CleaningFrame extends SceneFrame {
  readonly legend: FlowLegend;
}

/** Below this width a picture has fewer and weightier bits, px. */
const PHONE_BELOW_PX = 520;
/** From this height on there is room for many tufts; in a lower picture they would hide the machines, px. */
const MANY_FROM_PX = 700;

/** What pieces stand for: fewer bits in a small picture. */
export const cleaningLegend = ({ seedCotton, trash, cleaned, unitKg, size }: CleaningInput): FlowLegend =>
  legendOf(
    {
      inflow: [seedCotton.masses],
      outflow: [trash.masses, cleaned.masses],
      unitKg,
    },
    { mostTufts: size.height < MANY_FROM_PX ? 30 : 64, mostBits: size.width < PHONE_BELOW_PX ? 18 : 31 },
  );

/**
 * The cleaning line, cut open: what each machine takes lies under it, and what the feeder cannot take runs round.
 * @returns the frame for a share of the work done, 0 to 1; what stands still is the same in all of them
 */
export function cleaningScene(input: CleaningInput): (progress: number) => CleaningFrame {
  const { width, height } = input.size;
  const legend = cleaningLegend(input);
  const layout = layCleaning(input, {
    long: input.labels.caption(legend),
    short: input.labels.captionShort(legend),
  });
  const line: LineArt[] = layout.rows.flatMap(({ machines }) =>
    machines.map((placed) => ({ placed, art: lineMachine(input, placed) })),
  );
  const feeder = feederArt(input, layout);
  const takers = takersOf(input, layout);
  const vapour = vapourPaths(layout);
  const still: Mark[] = [
    ...ground(input, layout),
    ...vapourMarks(input, layout, vapour),
    ...bands(input, layout, legend),
    ...troughs(layout),
    ...line.map(({ placed, art }) => group(`machine/${placed.machine.id}`, art.still)),
    ...distributorMarks(input, layout),
    group('machine/extractorFeeder', feeder.still),
    ...pocketMarks('cleaning/pocket', layout.works.pocket, 'calico', 'walnut'),
    ...binMarks('cleaning/bin', layout.works.bin, 'mid'),
  ];
  const moving = linePieces(input, layout, line, feeder, takers, vapour, legend);
  const trash = trashPieces(input, takers, legend);
  const parts = [...line.flatMap(({ art }) => art.parts), ...feeder.parts];
  const words = cleaningWords(input, layout);
  const hem = captionHem('cleaning', layout.caption, input.size, layout.small);
  return (progress) => ({
    width,
    height,
    still,
    parts,
    moving: [...moving, ...trash(progress)],
    over: [...fill(input, layout, progress), ...hem, ...words(progress)],
    lapSeconds: LAP_SECONDS,
    legend,
  });
}

function ground({ size }: CleaningInput, { floorY }: CleaningLayout): Mark[] {
  const box: Box = { x: 3, y: 3, width: size.width - 7, height: size.height - 8 };
  return [
    patch('cleaning/ground', rectangle(box.x, box.y, box.width, box.height), 'calico', {
      shadow: 4,
      seam: 0,
      grain: null,
    }),
    ...piecedGround(
      'cleaning/wall',
      { ...box, height: floorY - box.y },
      { inks: ['calico', 'calico'], strips: 3, thread: 'walnutPale' },
    ),
    ...piecedGround(
      'cleaning/floor',
      { ...box, y: floorY, height: box.height + box.y - floorY },
      { inks: ['muslin', 'cotton'], strips: 2, thread: 'walnutPale' },
    ),
  ];
}

/** Where the vapour of each dryer goes: up, and along to where it is named. */
function vapourPaths({ rows, slots, tall }: CleaningLayout): Point[][] {
  return rows.flatMap(({ machines }, row) =>
    machines.flatMap(({ machine, box }): Point[][] => {
      if (!machine.driedOff) return [];
      const x = box.x + box.width / 2;
      if (!tall)
        return [
          [
            [x, box.y + 10],
            [x, 5],
            [slots.evaporated.x + 4, 5],
          ],
        ];
      const y = slots.evaporated.y + slots.evaporated.height / 2;
      return row === 0
        ? [
            [
              [x, box.y + 10],
              [x, 1],
            ],
          ]
        : [
            [
              [x, box.y + 10],
              [x, y],
              [slots.evaporated.x + slots.evaporated.width * 0.5, y],
            ],
          ];
    }),
  );
}

function vapourMarks(
  { line }: CleaningInput,
  { pxPerKg }: CleaningLayout,
  paths: readonly (readonly Point[])[],
): Mark[] {
  return line
    .flatMap(({ driedOff }) => driedOff ?? [])
    .map((masses, i) =>
      group(
        `band/out/evaporated/${i}`,
        bandMarks(`cleaning/vapour${i}`, paths[i]!, stripsOf(masses, pxPerKg), { rowPx: 1e3 }),
      ),
    );
}

/** The band of cotton from machine to machine, as wide as what is left of it, and on to the bin. */
function bands(input: CleaningInput, { rows, works, pxPerKg }: CleaningLayout, legend: FlowLegend): Mark[] {
  const rowPx = legend.rowKg * pxPerKg;
  const band = (name: string, path: readonly Point[], masses: Masses): Mark =>
    group(`band/${name}`, bandMarks(`cleaning/${name}`, path, stripsOf(masses, pxPerKg), { rowPx }));
  const marks: Mark[] = [];
  let masses: Masses = input.seedCotton.masses;
  let path: Point[] = [[-4, rows[0]!.bandY]];
  let name = 'in/lot';
  rows.forEach(({ machines, bandY, turnX }, r) => {
    for (const { machine, box } of machines) {
      const middle: Point = [box.x + box.width / 2, bandY];
      marks.push(band(name, [...path, middle], masses));
      masses = machine.wentOn;
      name = `between/${machine.id}`;
      path = [middle];
    }
    const next = rows[r + 1];
    path.push([turnX, bandY], next ? [turnX, next.bandY] : [turnX, works.auger.y + works.auger.height / 2]);
  });
  const headX = works.way === 1 ? works.auger.x + 8 : works.auger.x + works.auger.width - 8;
  marks.push(band(name, [...path, [headX, works.auger.y + works.auger.height / 2]], masses));
  marks.push(band('out/lot', works.outPath, input.cleaned.masses));
  return marks;
}

/** The long trough under a row, parted by seams, with a strip for amounts along its foot. */
function troughs({ rows, lipTall }: CleaningLayout): Mark[] {
  return rows.flatMap(({ machines }, r) => {
    const boxes = machines.flatMap(({ compartment }) => compartment ?? []);
    if (boxes.length === 0) return [];
    const left = Math.min(...boxes.map(({ x }) => x));
    const right = Math.max(...boxes.map(({ x, width }) => x + width));
    const { y, height } = boxes[0]!;
    const name = `cleaning/trough${r}`;
    return [
      patch(
        name,
        [
          [left - 3, y],
          [right + 3, y],
          [right, y + height],
          [left, y + height],
        ],
        'muslin',
        { shadow: 2.6, seam: 0, scissors: { miss: 1.2, snip: 90 } },
      ),
      patch(
        `${name}/lip`,
        rectangle(left - 2, y + height - Math.max(5, lipTall), right - left + 4, Math.max(5, lipTall)),
        'walnut',
        {
          shadow: 2.6,
          seam: 0,
          scissors: { miss: 1, snip: 90 },
        },
      ),
      ...boxes
        .filter(({ x }) => x > left + 1)
        .map(
          ({ x }): Mark => ({
            kind: 'stitches',
            stitches: [[x, y + 3, x, y + height - Math.max(5, lipTall)]],
            ink: 'walnut',
            width: 2,
          }),
        ),
    ];
  });
}

/** Cleaned cotton in its bin: its area is its mass. */
function fill({ cleaned }: CleaningInput, { works }: CleaningLayout, progress: number): Mark[] {
  const area = binAreaPx(works.bin) * 0.92 * progress;
  return massOf(cleaned.masses) > 0 ? [group('fill/lot', binFill('cleaning/fill', works.bin, 'lint', area))] : [];
}
