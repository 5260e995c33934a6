import { patch } from '../../cloth/patch.ts';
import { piecedGround } from '../../cloth/pieced-ground.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark } from '../../display-list.ts';

/** One piece under everything, so that the picture has one edge and one shadow. */
export const backingMark = (box: Box): Mark =>
  patch('field/backing', rectangle(box.x, box.y, box.width, box.height), 'fadedPale', {
    shadow: 4,
    seam: 0,
    grain: null,
    scissors: 'asDrawn',
  });

/** The sky: a few broad strips of faded indigo. */
export const skyMarks = (box: Box, soilY: number): Mark[] =>
  piecedGround(
    'sky',
    { ...box, height: soilY - box.y },
    {
      inks: ['fadedPale', 'fadedThin', 'fadedPale', 'fadedThin'],
      strips: box.width > 500 ? 5 : 4,
      thread: 'muslin',
    },
  );

/** The bare soil: what the roots reach, and below it one dark piece for the words and the tape. */
export function soilMarks(box: Box, soilY: number, rootFloorY: number): Mark[] {
  return [
    ...piecedGround(
      'soil',
      { x: box.x, y: soilY, width: box.width, height: rootFloorY - soilY },
      { inks: ['walnutWarm', 'walnut'], strips: 2 },
    ),
    patch('soil/deep', rectangle(box.x - 1, rootFloorY, box.width + 2, box.y + box.height - rootFloorY), 'walnut', {
      shadow: 0,
      seam: 0,
      scissors: { miss: 0.8, snip: 160, bow: 0.0006 },
    }),
    {
      kind: 'stitches',
      stitches: runningStitches(
        [
          [box.x + 8, soilY + 6],
          [box.x + box.width - 8, soilY + 5],
        ],
        'soil/edge',
        { on: 9, off: 7, closed: false },
      ),
      ink: 'thread',
      width: 1.7,
    },
  ];
}
