import type { Mark } from '../fact.ts';
import { projectFacts } from './facts.ts';

/** Low and high of a size. */
export type SizeRange = readonly [low: number, high: number];
type Inches = readonly [width: number, length: number];

/** A quilt by its finished top, inches; the batting's own size where a list gives it, or the top's with a margin. */
interface QuiltSize {
  readonly kind: 'quilt';
  readonly top: Inches;
  readonly batting: Inches;
}
/** A sewn thing by the cloth it takes. */
interface ClothNeed {
  readonly kind: 'cloth';
  readonly squareYards: number;
  readonly squareYardsRange: SizeRange;
  readonly ouncesPerSquareYard: number;
  readonly ouncesRange: SizeRange;
  /** About how large it is when it is done, inches: for the picture. */
  readonly finished: Inches;
}
/** A sewing project, where its size comes from, and how far that can be trusted. No size is a standard. */
export type Project = (QuiltSize | ClothNeed) & {
  readonly unit: string;
  readonly source: string;
  readonly mark: Mark;
};

const beds = 'bed and quilt sizes, honeybegood.com; other lists differ by up to 20 in';
const tops = 'quilt top sizes and yardage, sewphancy.com; a survey found sizes that differ by 17 to 20 in';
const margin = projectFacts.battingOverInches.value;
const quilt = (top: Inches, batting: Inches = [top[0] + margin, top[1] + margin], source = beds): Project => ({
  kind: 'quilt',
  top,
  batting,
  unit: 'in',
  source,
  mark: 'published',
});

type Cloth = Omit<ClothNeed, 'kind'>;
const cloth = (size: Cloth, source: string, mark: Mark): Project => ({
  kind: 'cloth',
  ...size,
  unit: 'yd2, oz/yd2 and in',
  source,
  mark,
});
const quilting = {
  ouncesPerSquareYard: projectFacts.quiltingOunces.value,
  ouncesRange: projectFacts.quiltingOunces.range,
} as const;
const percale = { ouncesPerSquareYard: 3.6, ouncesRange: [3.4, 4.6] } as const;

export const projectIds = [
  'baby-quilt',
  'crib-quilt',
  'throw-quilt',
  'twin-quilt',
  'full-quilt',
  'queen-quilt',
  'king-quilt',
  'dress-shirt',
  'skirt',
  't-shirt',
  'jeans',
  'apron',
  'bandana',
  'tote',
  'pillowcase',
  'flat-sheet',
  'sheet-set',
] as const;
export type ProjectId = (typeof projectIds)[number];

/** Projects by name. */
export const projects: Readonly<Record<ProjectId, Project>> = {
  'baby-quilt': quilt([30, 40], undefined, tops),
  'crib-quilt': quilt([39, 54], [45, 60]),
  'throw-quilt': quilt([50, 65], undefined, tops),
  'twin-quilt': quilt([65, 88], [72, 90]),
  'full-quilt': quilt([80, 88], [81, 96]),
  'queen-quilt': quilt([86, 93], [90, 108]),
  'king-quilt': quilt([104, 93], [120, 120]),
  'dress-shirt': cloth(
    { squareYards: 2.5, squareYardsRange: [2, 3], ...quilting, finished: [48, 31] },
    'long-sleeved blouse 2 1/2 yd of 36 in, short-sleeved 2 yd, quoted from an extension chart; weight as quilting cotton',
    'published',
  ),
  skirt: cloth(
    { squareYards: 2, squareYardsRange: [1.9, 2.75], ...quilting, finished: [24, 26] },
    'straight skirt 2 yd of 36 in or 1 1/4 yd of 60 in, quoted from an extension chart; weight as quilting cotton',
    'published',
  ),
  't-shirt': cloth(
    {
      squareYards: 1.3,
      squareYardsRange: [1.1, 1.6],
      ouncesPerSquareYard: 4.4,
      ouncesRange: [4.1, 5.9],
      finished: [36, 29],
    },
    'about 1.1 m2 of 150 g/m2 jersey; jersey 140 to 200 g/m2',
    'common practice',
  ),
  jeans: cloth(
    {
      squareYards: 2.67,
      squareYardsRange: [2.5, 3.3],
      ouncesPerSquareYard: 11.2,
      ouncesRange: [7, 13],
      finished: [21, 42],
    },
    '1.6 yd of 60 in denim, inside the 1.5 to 2 yd of denim makers (blessdenim.com); weight of 68 x 38 of 7s, inside 7 to 13 oz (denim-jean.com)',
    'published',
  ),
  apron: cloth(
    {
      squareYards: 1.2,
      squareYardsRange: [0.9, 1.8],
      ouncesPerSquareYard: 5,
      ouncesRange: [3.66, 10],
      finished: [28, 34],
    },
    'a yard of 44 in for a bib apron with its ties; quilting cotton to canvas',
    'common practice',
  ),
  bandana: cloth(
    {
      squareYards: 0.38,
      squareYardsRange: [0.3, 0.56],
      ouncesPerSquareYard: 3,
      ouncesRange: [2.1, 3.66],
      finished: [22, 22],
    },
    'a square of 22 in and its hem, 18 to 27 in sold; lawn to quilting cotton',
    'common practice',
  ),
  tote: cloth(
    {
      squareYards: 0.6,
      squareYardsRange: [0.5, 1],
      ouncesPerSquareYard: 10,
      ouncesRange: [7, 14.7],
      finished: [15, 27],
    },
    'half a yard of 44 in canvas of 10 oz',
    'common practice',
  ),
  pillowcase: cloth(
    { squareYards: 1.2, squareYardsRange: [1, 1.4], ...percale, finished: [20, 30] },
    'a yard of 42 to 44 in percale',
    'common practice',
  ),
  'flat-sheet': cloth(
    { squareYards: 6.75, squareYardsRange: [5.8, 7.5], ...percale, finished: [81, 100] },
    'double flat sheet torn 81 x 108 in from percale',
    'memory',
  ),
  'sheet-set': cloth(
    { squareYards: 15.1, squareYardsRange: [13, 18], ...percale, finished: [81, 100] },
    'double flat sheet torn 81 x 108 in, fitted sheet of 78 x 99 in for a mattress of 54 x 75 in, two pillowcases of a yard',
    'common practice',
  ),
};
