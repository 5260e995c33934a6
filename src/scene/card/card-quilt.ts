import { type StationId, stationIds } from '../../model/station.ts';
import { patch } from '../cloth/patch.ts';
import { type Box, rectangle } from '../cloth/point.ts';
import { letter, slotIn } from '../cloth/slot-words.ts';
import { group, type Mark } from '../display-list.ts';
import { type BlockState, blockMarks } from '../quilt/block-marks.ts';

const columns = 6;
const rows = stationIds.length / columns;
const sash = 6;
const border = 10;
const labelHeight = 18;

/** The season's quilt, six blocks by two, each with its station's name under it. */
export function cardQuilt(
  { x, y, width, height }: Box,
  stateOf: (station: StationId) => BlockState,
  names: Readonly<Record<StationId, string>>,
): Mark[] {
  const cellWidth = (width - 2 * border - (columns - 1) * sash) / columns;
  const cellHeight = (height - 2 * border - (rows - 1) * sash) / rows;
  const backing = patch('card/quilt', rectangle(x, y, width, height), 'ink', {
    shadow: 2.6,
    seam: 5,
    grain: null,
    scissors: { miss: 1.6, snip: 90, bow: 0.003 },
  });
  const cells = stationIds.map((station, i): Mark => {
    const left = x + border + (i % columns) * (cellWidth + sash);
    const top = y + border + Math.floor(i / columns) * (cellHeight + sash);
    const label = { x: left, y: top + cellHeight - labelHeight, width: cellWidth, height: labelHeight };
    return group(station, [
      ...blockMarks(station, stateOf(station), {
        x: left,
        y: top,
        width: cellWidth,
        height: cellHeight - labelHeight,
      }),
      patch(`card/label/${station}`, rectangle(left, label.y, cellWidth, labelHeight), 'muslin', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: { miss: 0.6 },
      }),
      ...letter(
        `${i + 1}  ${names[station]}`,
        slotIn({ ...label, x: label.x + 5, width: label.width - 10 }, 'start', 'middle'),
        { size: 13 },
      ),
    ]);
  });
  return [backing, ...cells];
}
