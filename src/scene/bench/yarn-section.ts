import { chanceOf, spread } from '../cloth/chance.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle, ring } from '../cloth/point.ts';
import { group, type Mark, type Point } from '../display-list.ts';
import { type BenchPicture, benchRuler, rulerTall, type Scale } from './true-scale.ts';

/** Density of the fibre wall, g/cm3: for drawing a fibre's size alone. */
const wallDensity = 1.52;
/** Magnifications that are easy to say. */
const powers = [400, 300, 200, 150, 100, 75, 50, 40, 30, 20, 10];
const micro = 1e6;

/** A yarn cut through. */
export interface CutYarn {
  readonly fibresInSingle: number;
  readonly singles: number;
  readonly fibreMtex: number;
  readonly singleDiameterMm: number;
}

const height = 236;

/** How wide the whole section is: plies touch one another around the middle. */
const spanMm = ({ singles, singleDiameterMm }: CutYarn): number =>
  singles === 1 ? singleDiameterMm : singleDiameterMm * (1 + 1 / Math.sin(Math.PI / singles));

/** The largest easy magnification at which a yarn fits its picture. */
export const sectionTimesOf = (yarn: CutYarn, pxPerMm: number): number =>
  powers.find((times) => spanMm(yarn) * times * pxPerMm <= height - 24) ?? powers.at(-1)!;

/** Diameter of a round fibre of that linear density, mm. */
const fibreDiameterMm = (mtex: number): number => 2 * Math.sqrt(mtex / micro / wallDensity / Math.PI);

/** A bean, as a dried cotton fibre is: two thirds as high as wide. */
function bean(x: number, y: number, radius: number, turn: number): Point[] {
  return Array.from({ length: 9 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 9;
    const dent = 1 - 0.28 * Math.max(0, Math.cos(angle - Math.PI / 2));
    const [u, v] = [Math.cos(angle) * radius * 1.18, Math.sin(angle) * radius * 0.82 * dent];
    return [x + u * Math.cos(turn) - v * Math.sin(turn), y + u * Math.sin(turn) + v * Math.cos(turn)];
  });
}

/** Where the singles of a plied yarn lie: around the middle, touching. */
function middles(singles: number, radius: number): readonly Point[] {
  if (singles === 1) return [[0, 0]];
  const around = radius / Math.sin(Math.PI / singles);
  return Array.from({ length: singles }, (_, i) => {
    const angle = (2 * Math.PI * i) / singles - Math.PI / 2;
    return [Math.cos(angle) * around, Math.sin(angle) * around];
  });
}

/** The section of a yarn with as many fibres as were computed, each as large as its fineness makes it. */
export function yarnSectionPicture(yarn: CutYarn, width: number, scale: Scale): BenchPicture {
  const times = sectionTimesOf(yarn, scale.pxPerMm);
  const px = scale.pxPerMm * times;
  const radius = (yarn.singleDiameterMm / 2) * px;
  const fibrePx = (fibreDiameterMm(yarn.fibreMtex) / 2) * px;
  const chance = chanceOf('bench/section');
  const count = Math.round(yarn.fibresInSingle);
  const fibres: Mark[] = middles(yarn.singles, radius).flatMap(([mx, my]) =>
    Array.from({ length: count }, (_, i): Mark => {
      // A sunflower's order fills a round evenly.
      const r = Math.max(0, radius - fibrePx) * Math.sqrt((i + 0.5) / count);
      const angle = i * Math.PI * (3 - Math.sqrt(5));
      const x = width / 2 + mx + Math.cos(angle) * r + spread(chance, fibrePx * 0.25);
      const y = height / 2 + my + Math.sin(angle) * r + spread(chance, fibrePx * 0.25);
      return {
        kind: 'patch',
        points: bean(x, y, fibrePx, chance() * Math.PI * 2),
        ink: i % 5 === 0 ? 'calico' : 'lint',
        shadow: 0,
      };
    }),
  );
  const outlines: Mark[] = middles(yarn.singles, radius).map(([mx, my], i) =>
    patch(`bench/section/${i}`, ring(width / 2 + mx, height / 2 + my, radius * 1.04, 40, 0), 'indigoWarm', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  );
  return {
    width,
    height: height + rulerTall + 6,
    marks: [
      patch('bench/section/pad', rectangle(1, 1, width - 4, height), 'indigo', { shadow: 2.6, seam: 5, grain: null }),
      ...outlines,
      group('fibres', fibres, count * yarn.singles),
      ...benchRuler('bench/section/ruler', [16, height + 4], width - 32, scale, times),
    ],
  };
}
