import type { StationId } from '../../model/station.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import type { DisplayList } from '../display-list.ts';
import { blockMarks } from '../quilt/block-marks.ts';

/** A block of the quilt on its own, bound in a border, as large as its place holds. */
export function framedBlock(station: StationId, width: number, height: number): DisplayList {
  const side = Math.min(width, height) - 24;
  const border = side * 0.06;
  const [x, y] = [(width - side) / 2, (height - side) / 2];
  return [
    patch('kiosk/border', rectangle(x, y, side, side), 'indigo', { shadow: 6, seam: border * 0.4, grain: 0 }),
    ...blockMarks(station, 'sewn', {
      x: x + border,
      y: y + border,
      width: side - 2 * border,
      height: side - 2 * border,
    }),
  ];
}
