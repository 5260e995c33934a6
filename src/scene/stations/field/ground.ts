import { partStitches } from '../../cloth/part-stitch.ts';
import { patch } from '../../cloth/patch.ts';
import { piecedGround } from '../../cloth/pieced-ground.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { group, type Mark } from '../../display-list.ts';

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

/**
 * Water within reach of the roots: a band across the soil, full to the surface when the soil holds all it can.
 * @param fraction of what it can hold, 0 to 1
 */
export function soilWaterMarks(box: Box, soilY: number, floorY: number, fraction: number): Mark {
  const held = Math.min(1, Math.max(0, fraction));
  const room = floorY - soilY - 9;
  const top = floorY - room * held;
  const marks: Mark[] = [];
  if (held > 0.01)
    marks.push(
      patch('soil/water', rectangle(box.x, top, box.width, floorY - top), 'indigo', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: { miss: 0.8, snip: 120, bow: 0.001 },
      }),
    );
  if (floorY - top > 9)
    marks.push({
      kind: 'stitches',
      stitches: partStitches(
        'water',
        [
          [box.x + 8, top + 5],
          [box.x + box.width - 8, top + 5],
        ],
        'soil/wave',
        1,
      ),
      ink: 'faded',
      width: 1.6,
    });
  return group('soilWater', marks, Math.round(held * 100));
}
