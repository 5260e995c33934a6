import { chanceOf, spread } from '../../cloth/chance.ts';
import { lettered, linesHeight, linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { rectangle, ring } from '../../cloth/point.ts';
import { slipAt } from '../../cloth/slot-words.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import { slowed } from '../slowed.ts';
import { fibreFan, rollerBar, twistedYarn, yarnRuler } from './drafting.ts';
import { rotorPlaces, rotorUnit } from './rotor-unit.ts';
import type { SpinningScene } from './spinning-input.ts';
import type { SpinningLayout } from './spinning-layout.ts';
import { ringTube, windingPoint } from './yarn-package.ts';

export interface Zone {
  readonly ground: Mark;
  readonly still: Mark[];
  readonly parts: MovingPart[];
  /** What lies over the turning parts. */
  readonly over: Mark[];
}

/** The big piece: rollers or rotor, the counted fibres, the yarn they make with its turns on a ruler, and the words to them. */
export function draftingZone(scene: SpinningScene, layout: SpinningLayout): Zone {
  const { zone, axisY, backX, nipX, yarnX, packageX, fanPx, text } = layout;
  const thick = Math.max(10, Math.min(34, zone.height * 0.1));
  const ground = patch('spinning/zone', rectangle(zone.x, zone.y, zone.width, zone.height), 'ink', {
    shadow: 2.6,
    seam: 5,
    thread: 'mid',
    scissors: { miss: 1.2, snip: 90, bow: 0.002 },
  });
  const yarnRight = scene.system === 'rotor' ? rotorPlaces(layout).x : yarnX;
  const yarnMarks = scene.yarn
    ? yarnOnRuler(scene, layout, packageX + text * 0.6, yarnRight, thick)
    : brokenEnds(packageX + text * 0.6, yarnX, axisY, thick);
  const words = zoneWords(scene, layout, thick);
  if (scene.system === 'rotor') {
    const unit = rotorUnit(scene, layout);
    return { ground, still: unit.still, parts: unit.parts, over: [...yarnMarks, ...words] };
  }
  const rollerTall = fanPx * 1.06;
  const fan = fibreFan(
    scene.fibres,
    scene.fibreLengthsMm,
    { axisY, backX, nipX, yarnX, tall: fanPx * 0.94, yarnPx: thick },
    scene.yarn !== null,
  );
  const wide = Math.max(12, zone.width * 0.03);
  return {
    ground,
    still: [
      ...rollerBar('spinning/back', backX, axisY, wide, rollerTall * 0.8, false),
      fan,
      ...rollerBar('spinning/front', nipX + wide * 0.2, axisY, wide * 1.1, rollerTall, true),
      ...ringTube(layout.packageBox),
      ...yarnMarks,
      ...words,
    ],
    parts: scene.yarn ? [traveller(scene, layout)] : [],
    over: [],
  };
}

function yarnOnRuler(scene: SpinningScene, layout: SpinningLayout, fromX: number, toX: number, thick: number): Mark[] {
  const { axisY, text } = layout;
  const yarn = scene.yarn!;
  const pxPerMm = thick / yarn.diameterMm;
  const tickPx = scene.rulerTickMm * pxPerMm;
  const numberEach = [1, 2, 4, 8, 16].find((each) => each * tickPx >= text * 4.6) ?? 16;
  const length = layout.yarnX - fromX - 14;
  return [
    twistedYarn(fromX, toX, axisY, thick, pxPerMm / yarn.turnsPerMm),
    ...yarnRuler(
      'spinning/ruler',
      [fromX, axisY + thick * 0.5 + 7],
      length,
      tickPx,
      numberEach,
      (tick) => scene.labels.rulerMark(tick * scene.rulerTickMm),
      text,
    ),
  ];
}

/** Where a yarn cannot hold: two ends with their fibres apart, and nothing between. */
function brokenEnds(fromX: number, toX: number, y: number, thick: number): Mark[] {
  const chance = chanceOf('spinning/broken');
  const end = (from: number, to: number): Stitch[] =>
    Array.from({ length: 14 }, () => {
      const at = to + spread(chance, (to - from) * 0.28);
      return [from, y + spread(chance, thick * 0.2), at, y + spread(chance, thick * 1.5)];
    });
  const third = (toX - fromX) / 3;
  return [
    { kind: 'stitches', stitches: end(fromX, fromX + third * 0.8), ink: 'lint', width: 1.2, flat: true },
    {
      kind: 'stitches',
      stitches: [-1, 1].map(
        (lean) => [fromX + third * 1.5 - 11, y - 11 * lean, fromX + third * 1.5 + 11, y + 11 * lean] as const,
      ),
      ink: 'madder',
      width: 5,
    },
  ];
}

/** The traveller runs round the ring once for each turn of twist: seen from the side it swings from edge to edge. */
function traveller(scene: SpinningScene, { packageBox: { x, y, width, height } }: SpinningLayout): MovingPart {
  const { perSecond, times } = slowed(scene.speeds.spindle);
  const at: Point = [x + width * 0.04, y + height * 0.9];
  const size = Math.max(4.5, width * 0.07);
  return {
    name: 'traveller',
    marks: [
      patch('spinning/traveller', ring(at[0], at[1], size, 8), 'madder', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: 'asDrawn',
      }),
    ],
    middle: at,
    radius: size + 2,
    motion: { kind: 'stroke', by: [width * 0.92, 0], strokesPerSecond: perSecond },
    passes: 'abovePieces',
    shows: scene.labels.shows('spindle', scene.speeds.spindle, times),
  };
}

function zoneWords(scene: SpinningScene, layout: SpinningLayout, thick: number): Mark[] {
  const { zone, axisY, packageX, yarnX, text, roomy, fanPx, nipX } = layout;
  const { labels } = scene;
  const x = packageX + text * 0.6;
  const width = yarnX - x - text * 0.4;
  const above = axisY - thick * 0.5 - 9;
  const belowY = axisY + thick * 0.5 + 7 + text * 2.1;
  const twist = linesOf(labels.twist, text, width, { bold: true });
  const twistFits = belowY + linesHeight(twist.length, text) <= layout.yarnPocket.y;
  // Turns that have no room below the ruler join the count above the yarn, or are left to the ruler.
  const joined = `${labels.counted}, ${labels.twist}`;
  const roomAbove = above - zone.y - 6;
  const joins = linesHeight(linesOf(`${labels.count} ${joined}`, text, width).length, text) <= roomAbove;
  const counted = scene.yarn && !twistFits && joins ? joined : labels.counted;
  const countedLines = linesOf(counted, text, width);
  const countY = above - linesHeight(countedLines.length, text);
  const big = Math.min(width * 0.34, zone.height * 0.2, (countY - zone.y - 8) / 1.2);
  const numberY = countY - Math.max(text * 0.3, big * 0.2 - text * 0.2);
  // Where a big number has no room, it leads the sentence.
  const leading = linesOf(`${labels.count} ${counted}`, text, width, { bold: true });
  const marks: Mark[] =
    big < text * 1.5
      ? lettered(leading, [x, above - linesHeight(leading.length - 1, text) - text * 0.15], {
          size: text,
          ink: 'lint',
          bold: true,
        })
      : [
          ...lettered([labels.count], [x, numberY], { size: big, ink: 'lint', display: true }),
          ...lettered(countedLines, [x, countY + text], { size: text, ink: 'lint' }),
        ];
  if (!scene.yarn)
    marks.push(
      ...slipAt('spinning/broken', labels.broken, [x, axisY + thick + 8], {
        size: text,
        bold: true,
        ink: 'madder',
        width: width + (roomy ? 40 : 20),
      }),
    );
  else if (twistFits)
    marks.push(...lettered(twist, [x, belowY + text * 0.85], { size: text, ink: 'lint', bold: true }));
  if (zone.width > 700 && scene.system === 'ring')
    marks.push(
      ...slipAt('spinning/drafting', labels.machines.drafting, [nipX - zone.width * 0.03, axisY + fanPx * 0.42], {
        size: text,
        italic: true,
        anchor: 'end',
      }),
    );
  return marks;
}

/** Yarn from the drafting zone to where it is wound on the package at the moment. */
export function runningYarn(scene: SpinningScene, layout: SpinningLayout, progress: number): Mark[] {
  if (!scene.yarn) return [];
  const to = windingPoint(layout.packageBox, scene.system, progress);
  const from: Point = [layout.packageX + layout.text * 0.6, layout.axisY];
  return [{ kind: 'stitches', stitches: [[...from, ...to]], ink: 'lint', width: 2.2 }];
}
