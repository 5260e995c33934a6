import { type StationId, stationIds } from '../../model/station.ts';
import { patch } from '../cloth/patch.ts';
import { type Box, rectangle } from '../cloth/point.ts';
import { type DisplayList, group, type Mark, type Point } from '../display-list.ts';
import { type BlockState, blockMarks } from './block-marks.ts';

/** Three by four for a poster, four by three for a wide page, one row for a strip. */
export type QuiltLayout = 'portrait' | 'landscape' | 'row';

export interface QuiltOptions {
  readonly layout: QuiltLayout;
  /** The whole quilt, px. */
  readonly box: Box;
  readonly stateOf: (station: StationId) => BlockState;
  /** Station names sewn under the blocks; left out, the blocks stand alone. */
  readonly labels?: Readonly<Record<StationId, string>>;
}

const columnsOf: Readonly<Record<QuiltLayout, number>> = { portrait: 3, landscape: 4, row: 12 };
/** How far the seams between blocks wander, as a share of a column: every row has its own splits. */
const WANDER = [0.012, -0.016, 0.008, -0.01] as const;

/** Where each block lies, px: for hit areas and focus rings over the picture. */
export function quiltCells({ layout, box, labels }: Pick<QuiltOptions, 'layout' | 'box' | 'labels'>) {
  const columns = columnsOf[layout];
  const rows = Math.ceil(stationIds.length / columns);
  const sash = layout === 'row' ? box.height * 0.1 : Math.min(box.width, box.height) * 0.022;
  const border = layout === 'row' ? sash : sash * 1.9;
  const label = labels ? labelHeight(box, layout) : 0;
  const cellWidth = (box.width - 2 * border - (columns - 1) * sash) / columns;
  const cellHeight = (box.height - 2 * border - (rows - 1) * sash) / rows - label;
  return stationIds.map((station, i): { station: StationId; block: Box; label: Box } => {
    const column = i % columns;
    const row = Math.floor(i / columns);
    const shift = (edge: number) =>
      edge === 0 || edge === columns ? 0 : (WANDER[(edge + row * 2) % WANDER.length] ?? 0) * cellWidth;
    const x = box.x + border + column * (cellWidth + sash) + shift(column);
    const right = box.x + border + column * (cellWidth + sash) + cellWidth + shift(column + 1);
    const y = box.y + border + row * (cellHeight + label + sash);
    return {
      station,
      block: { x, y, width: right - x, height: cellHeight },
      label: { x, y: y + cellHeight, width: right - x, height: label },
    };
  });
}

const labelHeight = (box: Box, layout: QuiltLayout): number =>
  layout === 'row' ? 0 : Math.max(18, Math.min(26, box.height * 0.032));

/** The season's quilt. Each block is a group named after its station. */
export function quiltMarks(options: QuiltOptions): DisplayList {
  const { box, layout, stateOf, labels } = options;
  const backing = patch(`quilt/${layout}`, rectangle(box.x, box.y, box.width, box.height), 'ink', {
    shadow: layout === 'row' ? 2.6 : 4,
    seam: layout === 'row' ? 0 : Math.max(5, Math.min(box.width, box.height) * 0.014),
    scissors: { miss: layout === 'row' ? 1 : 2.4, snip: 90, bow: 0.004 },
    stitchery: { on: 10, off: 7 },
  });
  const cells = quiltCells(options).map(({ station, block, label }, i): Mark => {
    const state = stateOf(station);
    const marks: Mark[] = [...blockMarks(station, state, block)];
    if (labels && label.height > 0) marks.push(...labelMarks(station, labels[station], i + 1, state, label));
    return group(station, marks);
  });
  return [backing, ...cells];
}

function labelMarks(station: StationId, text: string, number: number, state: BlockState, box: Box): Mark[] {
  const here = state === 'pinned';
  const size = Math.min(16, box.height * 0.68);
  const baseline = box.y + box.height * 0.5 + size * 0.36;
  const slip: Point[] = rectangle(box.x, box.y + 2, box.width, box.height - 2);
  return [
    patch(`quilt/label/${station}`, slip, here ? 'madder' : 'muslin', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8 },
    }),
    {
      kind: 'text',
      text: String(number),
      x: box.x + 8,
      y: baseline,
      size,
      ink: here ? 'lint' : 'ink',
      anchor: 'start',
      bold: true,
    },
    { kind: 'text', text, x: box.x + 8 + size * 1.4, y: baseline, size, ink: here ? 'lint' : 'ink', anchor: 'start' },
  ];
}
