import { chanceOf, spread } from '../cloth/chance.ts';
import { lettered, linesOf } from '../cloth/lettering.ts';
import { patch } from '../cloth/patch.ts';
import { leafShape } from '../cloth/piece-shapes.ts';
import { place, rectangle, signedArea } from '../cloth/point.ts';
import { type DisplayList, group, type Mark } from '../display-list.ts';
import type { ColourScale } from '../stations/classing/classing-input.ts';
import { colourChart } from '../stations/classing/colour-chart.ts';

export interface ColorAndLeaf {
  readonly chart: Pick<ColourScale, 'groups' | 'steps' | 'at' | 'others'>;
  /** Percent of the sample's surface under leaf. */
  readonly trashPercent: number;
  readonly labels: { readonly chart: string; readonly sample: string };
}

const letterPx = 15;
const bits = 14;

/** Height that goes with a width, px. */
export const colorAndLeafHeight = (width: number): number => Math.round(width * 0.5) + 44;

/** The chart with the sample's place on it, and beside it a face of the sample with its share of leaf, true in area. */
export function colorAndLeaf({ chart, trashPercent, labels }: ColorAndLeaf, width: number): DisplayList {
  const tall = colorAndLeafHeight(width);
  const top = 20;
  const side = Math.min(width * 0.34, tall - top - 56);
  const chartBox = { x: 20, y: top, width: width - side - 72, height: tall - top - 52 };
  const scale = colourChart(
    { kind: 'chart', name: '', value: '', ...chart },
    { ...chartBox, y: chartBox.y - letterPx },
    letterPx,
  );
  const x = width - side - 28;
  const y = top + 8;
  const chance = chanceOf('lesson/leaf');
  // Leaf bits differ in size; together they cover the stated share of the square.
  const sizes = Array.from({ length: bits }, () => 0.5 + chance());
  const unit = Math.abs(signedArea(leafShape));
  const sum = sizes.reduce((total, size) => total + size ** 2, 0);
  const px = Math.sqrt(((trashPercent / 100) * side ** 2) / (unit * sum));
  const leaves = sizes.map((size, i): Mark => {
    const at = {
      x: x + side * (0.16 + 0.68 * ((i % 4) / 3)) + spread(chance, side * 0.08),
      y: y + side * (0.14 + 0.72 * (Math.floor(i / 4) / 3)) + spread(chance, side * 0.07),
    };
    return patch(`lesson/leaf${i}`, place(leafShape, { ...at, size: size * px, turn: chance() * 6 }), 'bollGreen', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    });
  });
  const words = (text: string, at: number, room: number): Mark[] =>
    lettered(linesOf(text, letterPx, room), [at, tall - 38], { size: letterPx, ink: 'lint', anchor: 'middle' });
  return [
    patch('lesson/chartPad', rectangle(2, 2, width - 8, tall - 8), 'indigo', { shadow: 2.6, seam: 6 }),
    group('chart', [...scale.still, ...scale.read]),
    patch('lesson/sample', rectangle(x, y, side, side), 'lint', { shadow: 2.6, seam: 6 }),
    group('leaf', leaves, bits),
    ...words(labels.chart, chartBox.x + chartBox.width / 2, chartBox.width + 16),
    ...words(labels.sample, x + side / 2, side + 24),
  ];
}
