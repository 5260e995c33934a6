import type { ClothFinish } from '../../../model/cloth/facts.ts';
import type { WeaveId } from '../../../model/cloth/weaves.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import type { InkName } from '../../../style/inks.ts';
import { flatThreads } from '../../cloth/flat-threads.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { group, type Mark, type Stitch } from '../../display-list.ts';
import { jerseyLoops } from './jersey.ts';
import type { ShownCloth } from './weaving-input.ts';

/** CSS pixels to the inch: what a magnification is reckoned from. */
export const PX_PER_INCH = 96;

/** Dry threads on the loom, and after the finish: along the cloth, across it. */
const finishedInks: Readonly<Record<ClothFinish, readonly [InkName, InkName]>> = {
  grey: ['weldPale', 'calico'],
  scoured: ['muslin', 'calico'],
  bleached: ['lint', 'fadedThin'],
  mercerised: ['lint', 'fadedThin'],
  printed: ['lint', 'blush'],
};
/** The warp still has its size on. */
const loomInks = { woven: ['weldPale', 'calico'], knit: ['calico', 'calico'] } as const;

/** Whether the end lies over the pick: one over one; three over one, each pick a step on; four over one in steps of two. */
export function warpOver(weave: WeaveId, end: number, pick: number): boolean {
  switch (weave) {
    case 'plain':
      return (end + pick) % 2 === 0;
    case 'twill':
      return (end + pick) % 4 !== 0;
    case 'twill21':
      return (end + pick) % 3 !== 0;
    case 'twill22':
      return (end + pick) % 4 < 2;
    case 'sateen':
      return (end * 2 + pick) % 5 !== 0;
  }
}

/** How many times life size a cloth is drawn so that its threads can be told apart: a whole number. */
export function magnificationOf({ structure, onLoom }: ShownCloth, box: Box): number {
  const spacing = Math.max(7, Math.min(14, box.height / 20)) * (structure === 'jersey' ? 2.2 : 1);
  return Math.max(1, Math.round((spacing * Math.max(onLoom.across, onLoom.along)) / PX_PER_INCH));
}

/** Threads or loops that the picture has room for, across the cloth and along it. */
function countedIn(cloth: ShownCloth, box: Box): { readonly across: number; readonly along: number } {
  const pxPerIn = magnificationOf(cloth, box) * PX_PER_INCH;
  return {
    across: Math.max(1, Math.floor((box.height * cloth.onLoom.across) / pxPerIn)),
    along: Math.max(1, Math.floor((box.width * cloth.onLoom.along) / pxPerIn)),
  };
}

/**
 * The cloth seen from above at true spacing and thickness, ends running to the right.
 * @param made share of the picks that are in, 0 to 1
 * @param finished share of the finish that is done, 0 to 1: the cloth draws in as much as the model says
 */
export function swatch(cloth: ShownCloth, box: Box, made: number, finished: number): Mark[] {
  const pxPerIn = magnificationOf(cloth, box) * PX_PER_INCH;
  const { across, along } = countedIn(cloth, box);
  const keep = { x: 1 - (cloth.shrink.length / 100) * finished, y: 1 - (cloth.shrink.width / 100) * finished };
  const pitchX = (pxPerIn / cloth.onLoom.along) * keep.x;
  const pitchY = (pxPerIn / cloth.onLoom.across) * keep.y;
  const thick = (cloth.yarnMm / MM_PER_INCH) * pxPerIn;
  const knit = cloth.structure === 'jersey';
  const done = finished > 0.5;
  const [endInk, pickInk] = done ? finishedInks[cloth.finish] : knit ? loomInks.knit : loomInks.woven;
  const picks = Math.round(made * along);
  const grid = { x: box.x, y: box.y + (box.height - across * pitchY) / 2, pitchX, pitchY, across, along: picks };
  if (cloth.structure === 'jersey')
    return [group('loops', jerseyLoops(grid, thick, done ? endInk : 'calico'), across * picks)];
  const weave = cloth.structure;
  const right = box.x + along * pitchX;
  const ends = Array.from({ length: across }, (_, i): Stitch => {
    const y = grid.y + (i + 0.5) * pitchY;
    // Before the cloth is all there, the warp runs on to the end of the picture.
    return [box.x, y, Math.max(right, made < 1 ? box.x + box.width : right), y];
  });
  const foot = grid.y + across * pitchY;
  const wefts = Array.from({ length: picks }, (_, j): Stitch => {
    const x = box.x + (j + 0.5) * pitchX;
    return [x, grid.y, x, foot];
  });
  const over: Stitch[] = [];
  for (let j = 0; j < picks; j++)
    for (let i = 0; i < across; i++) {
      if (warpOver(weave, i, j)) continue;
      const x = box.x + (j + 0.5) * pitchX;
      const y = grid.y + (i + 0.5) * pitchY;
      const half = Math.min(pitchY * 0.5, thick * 0.5 + pitchY * 0.16);
      over.push([x, y - half, x, y + half]);
    }
  const edge = Math.max(1, thick * 0.22);
  return [
    group('picks', [flatThreads(wefts, pickInk, thick)], picks),
    group('ends', [flatThreads(ends, 'ink', thick + edge), flatThreads(ends, endInk, thick)], across),
    flatThreads(over, 'ink', thick + edge),
    flatThreads(over, pickInk, thick),
  ];
}

/** Where the cloth reached on the loom: chalked, so that its shrinking can be seen. */
export function loomOutline(cloth: ShownCloth, box: Box): Mark {
  const pxPerIn = magnificationOf(cloth, box) * PX_PER_INCH;
  const { across, along } = countedIn(cloth, box);
  const wide = (along * pxPerIn) / cloth.onLoom.along;
  const tall = (across * pxPerIn) / cloth.onLoom.across;
  return {
    kind: 'stitches',
    stitches: runningStitches(rectangle(box.x, box.y + (box.height - tall) / 2, wide, tall), 'weaving/outline', {
      on: 6,
      off: 5,
    }),
    ink: 'weld',
    width: 1.6,
    flat: true,
  };
}
