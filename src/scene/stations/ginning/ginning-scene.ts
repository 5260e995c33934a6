import { type Part, trashParts } from '../../../model/lot.ts';
import { bandMarks } from '../../cloth/band.ts';
import { partStitches } from '../../cloth/part-stitch.ts';
import { patch } from '../../cloth/patch.ts';
import { piecedGround } from '../../cloth/pieced-ground.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { leader, type Slot, slip, slotIn, tag } from '../../cloth/slot-words.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { SceneFrame } from '../../scene-frame.ts';
import { binAreaPx, binFill, binMarks } from '../flow/bin.ts';
import { captionHem } from '../flow/caption-hem.ts';
import { type FlowLegend, less, type Masses, massOf, stripsOf } from '../flow/flow-input.ts';
import { roundMass } from '../flow/piece-mass.ts';
import { frontCard, handGinCard } from './cards.ts';
import { ginPieces } from './gin-pieces.ts';
import type { GinningInput, NamedMass } from './ginning-input.ts';
import { type GinningLayout, layGinning, smallOf } from './ginning-layout.ts';
import { lintCleaner } from './lint-cleaners.ts';
import { rollerStand } from './roller-stand.ts';
import { sawStand } from './saw-stand.ts';

/** Every piece goes the whole of its path in this time, seconds. */
const LAP_SECONDS = 26;

export interface GinningFrame extends SceneFrame {
  readonly legend: FlowLegend;
  readonly pxPerKg: number;
}

/**
 * The gin stand with what comes in and where it goes, for one bale's worth.
 * @returns the frame for a share of the work done, 0 to 1; what stands still is the same in all of them
 */
export function ginningScene(input: GinningInput): (progress: number) => GinningFrame {
  const { width, height } = input.size;
  const legend = legendOfGin(input);
  const layout = layGinning(input, { long: input.labels.caption(legend), short: input.labels.captionShort(legend) });
  const art = (input.stand === 'saw' ? sawStand : rollerStand)(input, layout);
  const lintY = layout.lintPath[0]![1];
  const cleaners = input.cleaners.map((cleaner, i) => lintCleaner(input, cleaner, layout.cleaners[i]!, lintY));
  const still: Mark[] = [
    ...ground(input, layout),
    housing(layout),
    ...bands(input, layout, legend),
    ...art.under,
    patch('ginning/wheelShadow', art.shadowed, 'ink', { shadow: 6, seam: 0, grain: null, scissors: 'asDrawn' }),
    ...cleaners.map(({ under }) => under),
    ...binsStill(input, layout),
    ...(input.water ? moistureBox(layout) : []),
  ];
  const moving = ginPieces(input, layout, legend);
  const parts = [...art.parts, ...cleaners.flatMap((cleaner) => cleaner.parts)];
  const lastWords = [
    ...wordsStill(input, layout),
    ...captionHem('ginning', layout.caption, input.size, smallOf(layout.text)),
  ];
  return (progress) => ({
    width,
    height,
    still,
    parts,
    moving,
    over: [...art.over, ...fills(input, layout, progress), ...lastWords, ...amounts(input, layout, progress)],
    lapSeconds: LAP_SECONDS,
    legend,
    pxPerKg: layout.pxPerKg,
  });
}

/** About this many tufts and seeds, and bits of the commonest trash, can be told apart on the way to the stand. */
const MOST_TUFTS = 72;
const MOST_BITS = 11;
/** Quilting rows on the band that comes in. */
const MOST_ROWS = 14;

function legendOfGin({ seedCotton: { masses }, unitKg }: GinningInput): FlowLegend {
  const tufts = masses.dryKg.lint + masses.dryKg.seed + masses.waterKg;
  const bits = Math.max(...trashParts.map((part) => masses.dryKg[part]));
  const tuftKg = roundMass(tufts / MOST_TUFTS, unitKg);
  return {
    tuftKg,
    bitKg: Math.min(tuftKg, roundMass(bits / MOST_BITS, unitKg)),
    rowKg: roundMass(tufts / MOST_ROWS, unitKg),
  };
}

function ground(input: GinningInput, layout: GinningLayout): Mark[] {
  const { width, height } = input.size;
  const box: Box = { x: 3, y: 3, width: width - 7, height: height - 8 };
  const floor = layout.tall ? 0.64 : 0.74;
  return [
    patch('ginning/ground', rectangle(box.x, box.y, box.width, box.height), 'faded', {
      shadow: 4,
      seam: 0,
      grain: null,
    }),
    ...piecedGround(
      'ginning/wall',
      { ...box, height: box.height * floor },
      { inks: ['fadedPale', 'faded'], strips: 3, thread: 'mid' },
    ),
    ...piecedGround(
      'ginning/floor',
      { ...box, y: box.y + box.height * floor, height: box.height * (1 - floor) },
      { inks: ['calico', 'muslin'], strips: 2, thread: 'walnutPale' },
    ),
  ];
}

/** Where damp air puts water back into the seed cotton: a box across the band, sewn with waves. */
function moistureBox({ waterPath, inPath, tall }: GinningLayout): Mark[] {
  const [x, y] = waterPath.at(-1)!;
  const half = inPath[0]![tall ? 0 : 1] + 4;
  const box = tall ? rectangle(4, y - 15, half * 1.86, 30) : rectangle(x - 15, 4, 30, half * 1.9);
  const wave: readonly [Point, Point] = tall
    ? [
        [9, y],
        [half * 1.8, y],
      ]
    : [
        [x, 9],
        [x, half * 1.84],
      ];
  return [
    patch('ginning/moistureBox', box, 'mid', { shadow: 2.6, seam: 4, scissors: { miss: 1 } }),
    {
      kind: 'stitches',
      stitches: partStitches('water', wave, 'ginning/moistureBox', 1),
      ink: 'thread',
      width: 1.8,
    },
  ];
}

/** The cloth that the stand is built on. */
function housing({ wheel: { x, y, r }, brush, tall }: GinningLayout): Mark {
  const right = brush.x + brush.r * 0.7;
  return patch(
    'ginning/housing',
    [
      [x - r * 0.66, y - r * (tall ? 1.1 : 1.14)],
      [right - r * 0.2, y - r * 1.06],
      [right, y + r * 1.06],
      [x - r * 0.8, y + r * 1.1],
    ],
    'calico',
    { shadow: 4, seam: 7, thread: 'indigo', scissors: { miss: 2, snip: 80 } },
  );
}

function bands(input: GinningInput, layout: GinningLayout, legend: FlowLegend): Mark[] {
  const { pxPerKg } = layout;
  const rowPx = legend.rowKg * pxPerKg;
  const band = (name: string, path: readonly Point[], masses: Masses): Mark =>
    group(`band/${name}`, bandMarks(`ginning/${name}`, path, stripsOf(masses, pxPerKg), { rowPx }));
  const marks: Mark[] = [
    ...(input.water ? [band('in/moistureAdded', layout.waterPath, input.water.masses)] : []),
    band('in/lot', layout.inPath, input.seedCotton.masses),
    band('out/seedHouse', layout.seedPath, input.seed.masses),
    band('out/ginTrash', layout.trashPath, input.trash.masses),
  ];
  // The lint band is as wide as what is left of it: it narrows at each lint cleaner.
  const centre = (box: Box): Point =>
    layout.tall ? [layout.lintPath[1]![0], box.y + box.height / 2] : [box.x + box.width / 2, layout.lintPath[0]![1]];
  let path: readonly Point[] = layout.lintPath;
  let masses: Masses = input.lintAtStand;
  input.cleaners.forEach((cleaner, i) => {
    const stop = centre(layout.cleaners[i]!);
    const corner = layout.tall && i === 0 ? [path[0]!, path[1]!, stop] : [path[0]!, stop];
    marks.push(band(`between/${i}`, corner, masses));
    masses = less(masses, cleaner.thrownOut);
    path = [stop, path.at(-1)!];
  });
  marks.push(band('out/lot', path, input.lint.masses));
  input.cleaners.forEach((cleaner, i) => {
    marks.push(band(`out/lintCleanerWaste/${cleaner.id}`, layout.motePaths[i]!, cleaner.thrownOut));
  });
  return marks;
}

const binNames = ['lint', 'seed', 'motes', 'trash'] as const;
type BinName = (typeof binNames)[number];

const massIn = (input: GinningInput, bin: BinName): NamedMass | null => input[bin];

/** One scale of area for all bins: none runs over. */
function areaPxPerKg(input: GinningInput, layout: GinningLayout): number {
  return Math.min(
    ...binNames.flatMap((bin) => {
      const held = massIn(input, bin);
      const kg = held ? massOf(held.masses) : 0;
      return kg > 0 ? [(binAreaPx(layout.bins[bin]) * 0.96) / kg] : [];
    }),
  );
}

function binsStill(input: GinningInput, { bins }: GinningLayout): Mark[] {
  const { seed } = bins;
  const roof = Math.max(12, seed.height * 0.24);
  return [
    patch(
      'ginning/roof',
      [
        [seed.x - 7, seed.y + 3],
        [seed.x + seed.width * 0.5, seed.y - roof],
        [seed.x + seed.width + 5, seed.y + 3],
      ],
      'madder',
      { shadow: 2.6, seam: roof > 16 ? 5 : 0, scissors: { miss: 1.2 } },
    ),
    ...binMarks('ginning/bin/seed', seed, 'walnutPale'),
    ...binMarks('ginning/bin/lint', bins.lint, 'mid'),
    ...(input.motes ? binMarks('ginning/bin/motes', bins.motes, 'muslin') : []),
    ...binMarks('ginning/bin/trash', bins.trash, 'muslin'),
  ];
}

/** The part of trash that there is most of. */
const mostOf = ({ dryKg }: Masses): Part =>
  trashParts.reduce((most, part) => (dryKg[part] > dryKg[most] ? part : most));

function fills(input: GinningInput, layout: GinningLayout, progress: number): Mark[] {
  const scale = areaPxPerKg(input, layout);
  return binNames.flatMap((bin) => {
    const held = massIn(input, bin);
    if (!held) return [];
    const area = massOf(held.masses) * scale * progress;
    return [
      group(
        `fill/${bin}`,
        binFill(`ginning/fill/${bin}`, layout.bins[bin], bin === 'trash' ? mostOf(held.masses) : bin, area),
      ),
    ];
  });
}

/** Words that stay as they are. */
function wordsStill(input: GinningInput, layout: GinningLayout): Mark[] {
  const { labels } = input;
  const { text, slots, cards, tall, names } = layout;
  const small = smallOf(text);
  return [
    ...(cards.front ? [frontCard(input, cards.front, text)] : []),
    handGinCard(names === 'short' ? labels.handGinShort : labels.handGin, cards.handGin, text),
    ...slip('ginning/cleanersName', labels.cleaners, slotIn(slots.cleaners, tall ? 'end' : 'start', 'bottom'), {
      size: small,
      italic: true,
    }),
    ...machineNames(input, layout, small),
  ];
}

/** Names of the parts of the stand, each on a slip beside it with a line to it. */
function machineNames(
  { stand, labels, size: { width } }: GinningInput,
  { wheel, roll, brush, tall, names }: GinningLayout,
  size: number,
): Mark[] {
  const saw = stand === 'saw';
  const name = (
    id: string,
    text: string,
    from: Point,
    to: Point,
    anchor: Slot['anchor'],
    stands: Slot['stands'],
    wide = 170,
  ): Mark[] => {
    const high = size * 2.8;
    const x = anchor === 'start' ? from[0] : anchor === 'end' ? from[0] - wide : from[0] - wide / 2;
    const y = stands === 'top' ? from[1] : stands === 'bottom' ? from[1] - high : from[1] - high / 2;
    const place = slotIn({ x, y, width: wide, height: high }, anchor, stands);
    return [leader(from, to), ...slip(`ginning/${id}`, text, place, { size, italic: true })];
  };
  const { x, y, r } = wheel;
  const wheelText = saw ? labels.saw : labels.roller;
  // A phone has no room above the stand: the names lie on the roll, below the wheel and behind the brush.
  if (names === 'short')
    return [
      ...name('wheelName', wheelText, [x - r * 0.14, y + r * 1.06], [x - r * 0.25, y + r * 0.85], 'end', 'top'),
      ...(saw
        ? [
            ...name(
              'ribName',
              labels.ribs,
              [x - r * 1.06, y + r * 0.36],
              [x - r * 0.88, y + r * 0.3],
              'end',
              'middle',
              x - r * 1.06 - 5,
            ),
            ...name(
              'brushName',
              labels.brush,
              [brush.x + brush.r * 0.9, brush.y],
              [brush.x + brush.r * 0.5, brush.y],
              'start',
              'middle',
              width - 5 - brush.x - brush.r * 0.9,
            ),
          ]
        : []),
    ];
  return [
    ...name(
      'ribName',
      saw ? labels.ribs : labels.fixedKnife,
      [x - r * 0.62, y - r * (tall ? 1.2 : 1.24)],
      saw ? [x - r * 0.66, y - r * 0.86] : [x - r * 0.8, y - r * 1.04],
      tall ? 'start' : 'end',
      'bottom',
    ),
    ...name(
      'wheelName',
      wheelText,
      [x + r * (names === 'all' ? 0.5 : 0), y + r * 1.16],
      [x + r * (names === 'all' ? 0.42 : 0.1), y + r * 0.82],
      'middle',
      'top',
    ),
    ...(saw
      ? name(
          'brushName',
          labels.brush,
          [brush.x, brush.y - brush.r * 1.5],
          [brush.x, brush.y - brush.r * 0.8],
          'middle',
          'bottom',
        )
      : []),
    ...(names === 'all'
      ? name(
          'rollName',
          saw ? labels.seedRoll : labels.rotaryKnife,
          saw ? [roll.x - roll.r * 0.4, roll.y + roll.r * 0.86] : [roll.x - roll.r * 0.9, y + r * 0.42],
          saw ? [roll.x - roll.r * 0.3, roll.y + roll.r * 0.7] : [x - r * 1.26, y - r * 0.2],
          saw ? 'middle' : 'start',
          'top',
        )
      : []),
  ];
}

/** Amounts that count as the work goes on, and the whole of what comes in. */
function amounts(input: GinningInput, { slots, text, tall, names }: GinningLayout, progress: number): Mark[] {
  const said = (id: string, held: NamedMass | null, share: number, place: Slot, size = text): Mark[] =>
    held ? tag(`ginning/${id}`, { text: held.name, amount: held.amount(share) }, place, size) : [];
  const lint = names !== 'all' ? { ...input.lint, name: input.labels.lintShort } : input.lint;
  const small = tall ? text : smallOf(text);
  return [
    ...said('in', input.seedCotton, 1, slotIn(slots.in)),
    ...said('water', input.water, 1, slotIn(slots.water)),
    ...said('lint', lint, progress, slotIn(slots.lint, tall ? 'middle' : 'end', tall ? 'middle' : 'bottom')),
    ...said('seed', input.seed, progress, slotIn(slots.seed, 'middle', 'top')),
    ...said(
      'motes',
      input.motes,
      progress,
      slotIn(slots.motes, tall || names === 'most' ? 'end' : 'start', tall ? 'middle' : 'top'),
      small,
    ),
    ...said('trash', input.trash, progress, slotIn(slots.trash, 'start', tall ? 'middle' : 'top')),
  ];
}
