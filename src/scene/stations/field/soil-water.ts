import { partStitches } from '../../cloth/part-stitch.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { group, type Mark } from '../../display-list.ts';

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
