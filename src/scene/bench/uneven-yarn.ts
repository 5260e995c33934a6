import { benchFacts } from '../../model/mill/bench-limit-facts.ts';
import { openStream } from '../../model/random.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { group, type Mark, type Point } from '../display-list.ts';
import { type BenchPicture, benchRuler, rulerTall, type Scale } from './true-scale.ts';

const cutLengthMm = benchFacts.evennessCutMm.value;
/** Yarn drawn, mm, and the rows it is folded into. */
const drawnMm = 1000;
const rows = 10;
const seed = 8;

/**
 * Mass of each 8 mm of a meter of yarn over the mean: fibres of one length laid down at random, so that neighbors are alike as
 * far as a fibre reaches; their spread is then drawn out to the yarn's own.
 * @param fibres in the section @param fibreMm their mean length @param cvPercent of 8 mm pieces
 * @returns 125 values with mean 1 and just that coefficient of variation
 */
export function pieceMasses(fibres: number, fibreMm: number, cvPercent: number): readonly number[] {
  const random = openStream(seed, 'scene');
  const pieces = drawnMm / cutLengthMm;
  const masses = new Float64Array(pieces);
  const many = Math.round((fibres * (drawnMm + fibreMm)) / fibreMm);
  for (let i = 0; i < many; i++) {
    const from = random.uniform() * (drawnMm + fibreMm) - fibreMm;
    const to = from + fibreMm;
    for (let piece = Math.max(0, Math.floor(from / cutLengthMm)); piece * cutLengthMm < Math.min(drawnMm, to); piece++)
      masses[piece] = masses[piece]! + Math.min(to, (piece + 1) * cutLengthMm) - Math.max(from, piece * cutLengthMm);
  }
  const mean = masses.reduce((sum, mass) => sum + mass, 0) / pieces;
  const spread = Math.sqrt(masses.reduce((sum, mass) => sum + (mass - mean) ** 2, 0) / pieces) / mean;
  return Array.from(masses, (mass) => 1 + ((mass / mean - 1) / spread) * (cvPercent / 100));
}

/** How many times as thick as it is long to scale the yarn is drawn: at true thickness nobody could see it vary. */
const thicker = 10;

/** One meter of yarn in ten rows of true length, with its thick and thin places; thickness goes with the root of the mass. */
export function unevenYarnPicture(
  masses: readonly number[],
  diameterMm: number,
  width: number,
  scale: Scale,
): BenchPicture {
  const pitch = Math.max(18, diameterMm * thicker * scale.pxPerMm * 1.55);
  const top = 14;
  const height = top * 2 + rows * pitch;
  const left = 16;
  const perRow = drawnMm / rows / cutLengthMm;
  const rowPx = Math.min(width - 2 * left, (drawnMm / rows) * scale.pxPerMm);
  const half = (mass: number) => (Math.sqrt(Math.max(0.05, mass)) * diameterMm * thicker * scale.pxPerMm) / 2;
  const yarns: Mark[] = Array.from({ length: rows }, (_, row) => {
    const y = top + (row + 0.5) * pitch;
    const spots = Array.from({ length: Math.ceil(perRow) + 1 }, (_, k) => {
      const place = row * perRow + k;
      return {
        x: left + k * cutLengthMm * scale.pxPerMm,
        half: half(masses[Math.min(masses.length - 1, Math.floor(place))] ?? 1),
      };
    }).filter(({ x }) => x <= left + rowPx + 1);
    const last = spots.at(-1)!;
    const ends = [...spots, { x: left + rowPx, half: last.half }];
    const points: Point[] = [
      ...ends.map(({ x, half: r }): Point => [x, y - r]),
      ...[...ends].reverse().map(({ x, half: r }): Point => [x, y + r]),
    ];
    return { kind: 'patch', points, ink: 'lint', shadow: 1.2 };
  });
  return {
    width,
    height: height + rulerTall + 6,
    marks: [
      patch('bench/yarn/pad', rectangle(1, 1, width - 4, height), 'indigo', { shadow: 2.6, seam: 5, grain: null }),
      group('yarn', yarns),
      ...benchRuler('bench/yarn/ruler', [left, height + 4], width - 2 * left, scale),
    ],
  };
}
