import { hangingStrip } from '../../model/cloth/overhang.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { group, type Mark, type Point, type Stitch } from '../display-list.ts';
import { type BenchPicture, benchRuler, rulerTall, type Scale } from './true-scale.ts';

/** Length of the strip beyond the table's edge, mm. */
export const overhangMm = 60;
const tableMm = 22;
/** Slope at which the cantilever test reads its strips, degrees. */
const testAngle = 41.5;

/** A strip that hangs over the edge of a table by its own weight, seen from the side; the slope of the cantilever test is dashed. */
export function hangingClothPicture(
  bendingLengthMm: number,
  thicknessMm: number,
  width: number,
  scale: Scale,
): BenchPicture {
  const { pxPerMm } = scale;
  const left = 14;
  const edgeX = left + tableMm * pxPerMm;
  const tableY = 26;
  const height = tableY + overhangMm * pxPerMm + 18;
  const places: Point[] = hangingStrip(overhangMm, bendingLengthMm).map(({ outMm, downMm }) => [
    edgeX + outMm * pxPerMm,
    tableY - 2 + downMm * pxPerMm,
  ]);
  const thick = Math.max(2.4, thicknessMm * pxPerMm);
  const path: Point[] = [[left, tableY - 2], ...places];
  const strip: Stitch[] = path.slice(1).map((to, i) => [...path[i]!, ...to] as const);
  const slope = (testAngle * Math.PI) / 180;
  const dashes: Stitch[] = [];
  for (let d = 6; d < overhangMm * pxPerMm * 1.15; d += 11) {
    const at = (s: number): Point => [edgeX + Math.cos(slope) * s, tableY + Math.sin(slope) * s];
    const [to] = [at(d + 5)];
    if (to[1] < height - 8 && to[0] < width - 10) dashes.push([...at(d), ...to] as const);
  }
  const table: Mark = patch('bench/table', rectangle(3, tableY, edgeX - 3, height - tableY - 4), 'walnutWarm', {
    shadow: 4,
    seam: 0,
    grain: 0,
  });
  return {
    width,
    height: height + rulerTall + 6,
    marks: [
      patch('bench/hang/pad', rectangle(1, 1, width - 4, height), 'muslin', { shadow: 2.6, seam: 5, grain: null }),
      table,
      { kind: 'stitches', stitches: dashes, ink: 'chalk', width: 1.3, flat: true },
      group('strip', [{ kind: 'stitches', stitches: strip, ink: 'madder', width: thick, flat: true }]),
      ...benchRuler('bench/hang/ruler', [left, height + 4], width - 2 * left, scale),
    ],
  };
}
