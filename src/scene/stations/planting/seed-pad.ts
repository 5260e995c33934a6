import { dimension } from '../../cloth/dimension.ts';
import type { CottonKind } from '../../cloth/flower.ts';
import { lettered, linesHeight, linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import { layPlant } from '../plant/plant-layout.ts';
import { plantMarks } from '../plant/plant-marks.ts';
import type { DrawnPlant } from '../plant/plant-sample.ts';
import { countBandHeight, countBandMarks, type SeedCounts } from './count-band.ts';
import { risenMarks, seedlingMarks } from './seedling.ts';

/** One seed of the row shown large on a day, with its words. */
export interface LargeSeed {
  readonly dayOfYear: number;
  /** From planting (0) to breaking the soil (1). */
  readonly risenShare: number;
  readonly plant: DrawnPlant;
  readonly kind: CottonKind;
  readonly heightInches: number;
  readonly labels: { readonly title: string; readonly place: string; readonly height: string };
}

/** Fewest inches of plant that fill the window, so that a young one stays small. */
const LEAST_VIEW_INCHES = 3.4;

/** What lies on the pad: words, one seed or seedling in a window, the count of the whole field. */
export function seedPadMarks(pad: Box, seed: LargeSeed, counts: SeedCounts, textPx: number): Mark[] {
  if (pad.height < textPx * 6) return seedStripMarks(pad, seed, counts, textPx);
  const margin = textPx * 1.1;
  const titlePx = textPx * 1.3;
  const beside = pad.width > pad.height * 1.35;
  const inner = {
    x: pad.x + margin,
    y: pad.y + margin,
    width: pad.width - margin * 2,
    height: pad.height - margin * 2,
  };
  const windowWidth = inner.width * 0.46;
  const words = beside
    ? { x: inner.x + windowWidth + margin, width: inner.width - windowWidth - margin }
    : { x: inner.x, width: inner.width };
  const title = linesOf(seed.labels.title, titlePx, words.width, { bold: true });
  const countsHeight = countBandHeight(textPx);
  const countsY = inner.y + inner.height - countsHeight;
  const placeY = inner.y + linesHeight(title.length, titlePx);
  const placeLines = linesOf(seed.labels.place, textPx, words.width, { italic: true });
  // What does not fit whole is left to the table.
  const place = placeY + linesHeight(placeLines.length, textPx) < countsY ? placeLines : [];
  const wordsFoot = placeY + linesHeight(place.length, textPx);
  const window: Box = beside
    ? { x: inner.x, y: inner.y, width: windowWidth, height: inner.height }
    : { x: inner.x, y: wordsFoot, width: inner.width, height: countsY - wordsFoot - textPx * 0.8 };
  return [
    ...lettered(title, [words.x, inner.y + titlePx * 0.78], { size: titlePx, ink: 'lint', bold: true }),
    ...lettered(place, [words.x, placeY + textPx * 0.72], { size: textPx, ink: 'lint', italic: true }),
    ...(window.height > textPx * 3 ? [group('large', windowMarks(window, seed, textPx))] : []),
    ...countBandMarks(counts, { x: words.x, y: countsY, width: words.width, height: countsHeight }, textPx, 'lint'),
  ];
}

/** On a low strip: one seed in a window, the words, and the count of the whole field, side by side. */
function seedStripMarks(pad: Box, seed: LargeSeed, counts: SeedCounts, textPx: number): Mark[] {
  const margin = textPx * 0.65;
  const inner = {
    x: pad.x + margin,
    y: pad.y + margin,
    width: pad.width - margin * 2,
    height: pad.height - margin * 2,
  };
  const window: Box = { ...inner, width: inner.width * 0.2 };
  const titleX = window.x + window.width + margin;
  const titleWide = inner.width * 0.3;
  const titlePx = textPx * 1.3;
  const title = linesOf(seed.labels.title, titlePx, titleWide, { bold: true });
  const titleY = inner.y + (inner.height - linesHeight(title.length, titlePx)) / 2 + titlePx * 0.84;
  const countsX = titleX + titleWide + margin;
  const row = { x: countsX, width: inner.x + inner.width - countsX };
  return [
    group('large', windowMarks(window, seed, textPx)),
    ...lettered(title, [titleX, titleY], { size: titlePx, ink: 'lint', bold: true }),
    ...countBandMarks(counts, { ...row, y: inner.y + 1, height: inner.height }, textPx, 'lint'),
  ];
}

/** A window into the row: soil with the seed in it, then the plant above it with its height. */
function windowMarks(box: Box, seed: LargeSeed, textPx: number): Mark[] {
  const up = seed.risenShare >= 1;
  const soilY = box.y + box.height * (up ? 0.76 : 0.2);
  const depth = box.y + box.height - soilY;
  const x = box.x + box.width * 0.46;
  const cloth = { shadow: 0, seam: 0, grain: null, scissors: { miss: 0.8, snip: 120 } } as const;
  const ground: Mark[] = [
    patch('window/sky', rectangle(box.x, box.y, box.width, soilY - box.y + 2), 'fadedThin', cloth),
    patch('window/soil', rectangle(box.x, soilY, box.width, depth), 'walnutWarm', cloth),
    {
      kind: 'stitches',
      stitches: runningStitches(
        [
          [box.x + 6, soilY + 5],
          [box.x + box.width - 6, soilY + 5],
        ],
        'window/edge',
        { on: 8, off: 6, closed: false },
      ),
      ink: 'thread',
      width: 1.6,
    },
  ];
  if (!up) {
    const place = { x, y: soilY + depth * 0.44, soilY, size: depth * 0.3, mostRootPx: depth * 0.5 };
    return [...ground, ...seedlingMarks('large', place, seed.risenShare)];
  }
  const foot: Point = [x, soilY + 2];
  const room = soilY - box.y;
  const pxPerInch = Math.min(
    room / Math.max(LEAST_VIEW_INCHES, seed.heightInches * 1.08 + 1.7),
    box.width / (7 + seed.heightInches * 0.7),
  );
  const { dayOfYear, heightInches } = seed;
  const nodes = layPlant(seed.plant, { dayOfYear, heightInches, foot, pxPerInch });
  const ruleX = box.x + box.width - textPx * 4;
  const below = { x, y: soilY + depth * 0.3, soilY, size: depth * 0.22, mostRootPx: depth * 0.6 };
  return [
    ...ground,
    ...risenMarks('large', below),
    ...plantMarks(nodes, { dayOfYear, pxPerInch, kind: seed.kind, leafShare: 1, foot }),
    ...(heightInches * pxPerInch < textPx
      ? []
      : dimension([ruleX, soilY], [ruleX, soilY - heightInches * pxPerInch], seed.labels.height, {
          ink: 'ink',
          size: textPx,
          words: 'after',
        })),
  ];
}
