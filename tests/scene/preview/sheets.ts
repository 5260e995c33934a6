import { parts } from '../../../src/model/lot.ts';
import { type StationId, stationIds } from '../../../src/model/station.ts';
import { partCloth } from '../../../src/scene/cloth/part-cloth.ts';
import { partStitches, partThreadWidth } from '../../../src/scene/cloth/part-stitch.ts';
import { patch } from '../../../src/scene/cloth/patch.ts';
import { pieceMarks } from '../../../src/scene/cloth/piece.ts';
import { rectangle } from '../../../src/scene/cloth/point.ts';
import type { DisplayList, Mark } from '../../../src/scene/display-list.ts';
import { paintSvg } from '../../../src/scene/paint-svg.ts';
import { blockMarks } from '../../../src/scene/quilt/block-marks.ts';
import { quiltMarks } from '../../../src/scene/quilt/quilt.ts';
import { furrowFeet, furrowScene } from '../../../src/scene/stations/plant/furrow.ts';
import { inksOf, type Theme } from '../../../src/style/inks.ts';

interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly svg: string;
  readonly background: string;
  readonly density?: number;
}
const sheet = (list: DisplayList, width: number, height: number, theme: Theme = 'day'): Sheet => ({
  width,
  height,
  svg: paintSvg(list, { width, height, theme }),
  background: inksOf[theme].cotton,
});

function tile(theme: Theme): Sheet {
  const list: Mark[] = [];
  [...parts, 'water' as const].forEach((part, i) => {
    const y = 50 + i * 62;
    list.push(...pieceMarks(part, `big-${part}`, { x: 50, y, size: 24 }));
    [12, 9, 7].forEach((size, k) => {
      list.push(...pieceMarks(part, `s-${part}${k}`, { x: 100 + k * 26, y, size, turn: k }));
    });
    list.push({ kind: 'text', text: part, x: 180, y: y + 5, size: 17, ink: 'ink', anchor: 'start' });
    const cloth = partCloth[part];
    list.push(patch(`strip-${part}`, rectangle(250, y - 20, 260, 40), cloth.fill, { seam: 0 }));
    const row = partStitches(
      part,
      [
        [262, y],
        [498, y],
      ],
      `row-${part}`,
    );
    list.push({ kind: 'stitches', stitches: row, ink: cloth.thread, width: partThreadWidth(part) });
    [14, 10].forEach((size, k) => {
      for (let n = 0; n < 4; n++)
        list.push(...pieceMarks(part, `on-${part}${k}${n}`, { x: 540 + n * 34 + k * 150, y, size, turn: n }));
    });
  });
  return sheet(list, 860, 680, theme);
}

const names = Object.fromEntries(stationIds.map((id) => [id, id[0]!.toUpperCase() + id.slice(1)])) as Record<
  StationId,
  string
>;
function blocks(): Sheet {
  const list = stationIds.flatMap((id, i) =>
    (['sewn', 'pinned', 'chalked'] as const).flatMap((state, k) =>
      blockMarks(id, state, {
        x: 20 + (i % 4) * 400 + [0, 210, 210][k]!,
        y: 20 + Math.floor(i / 4) * 230 + [0, 0, 105][k]!,
        width: k ? 95 : 200,
        height: k ? 95 : 200,
      }),
    ),
  );
  return sheet(list, 1600, 720);
}
function quilt(layout: 'portrait' | 'landscape' | 'row', width: number, height: number, theme: Theme = 'day'): Sheet {
  const stateOf = (id: StationId) =>
    (['sewn', 'pinned', 'chalked'] as const)[Math.sign(stationIds.indexOf(id) - 6) + 1]!;
  const list = quiltMarks({
    layout,
    box: { x: 16, y: 16, width: width - 32, height: height - 32 },
    stateOf: layout === 'landscape' ? () => 'sewn' : stateOf,
    ...(layout === 'row' ? {} : { labels: names }),
  });
  return sheet(list, width, height, theme);
}

function furrow(width: number, height: number): Sheet {
  const feet = furrowFeet(width);
  const rowTicks = Array.from({ length: feet * 4 + 1 }, (_, i) =>
    i % 4 || i === 0 || i === feet * 4 ? { feet: i / 4 } : { feet: i / 4, text: `${i / 4} ft` },
  );
  return sheet(
    furrowScene({
      seedsPerFoot: 3.5,
      size: { width, height },
      labels: { rowTicks },
    }),
    width,
    height,
  );
}

export const sheets: Record<string, () => Sheet> = {
  tile: () => tile('day'),
  blocks,
  'quilt-portrait': () => quilt('portrait', 660, 880),
  'quilt-landscape': () => quilt('landscape', 1000, 800),
  'quilt-row': () => ({ ...quilt('row', 390, 62), density: 2 }),
  'quilt-projector': () => quilt('landscape', 1000, 800, 'projector'),
  furrow: () => furrow(860, 560),
  'furrow-home': () => furrow(1366, 196),
  'tile-projector': () => tile('projector'),
};
