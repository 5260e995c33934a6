import type { Mark } from '../fact.ts';
import { projectFacts } from './facts.ts';

/** A quilt by its size: finished top and batting, inches. */
interface QuiltSize {
  readonly kind: 'quilt';
  readonly top: readonly [widthInches: number, lengthInches: number];
  readonly batting: readonly [widthInches: number, lengthInches: number];
}
/** A sewn thing by the cloth it takes. */
interface ClothNeed {
  readonly kind: 'cloth';
  readonly squareYards: number;
  readonly ouncesPerSquareYard: number;
}
/** A sewing project, where its size comes from, and how far that can be trusted. No size is a standard. */
export type Project = (QuiltSize | ClothNeed) & {
  readonly unit: string;
  readonly source: string;
  readonly mark: Mark;
};

const beds = 'bed and quilt sizes, honeybegood.com; other lists differ by up to 20 in';
const quilt = (top: QuiltSize['top'], batting: QuiltSize['batting']): Project => ({
  kind: 'quilt',
  top,
  batting,
  unit: 'in',
  source: beds,
  mark: 'published',
});
const cloth = (squareYards: number, ouncesPerSquareYard: number, source: string, mark: Mark): Project => ({
  kind: 'cloth',
  squareYards,
  ouncesPerSquareYard,
  unit: 'yd2 and oz/yd2',
  source,
  mark,
});

export const projectIds = [
  'crib-quilt',
  'twin-quilt',
  'full-quilt',
  'queen-quilt',
  'king-quilt',
  'dress-shirt',
  't-shirt',
  'jeans',
  'flat-sheet',
  'pillowcase',
  'tote',
] as const;
export type ProjectId = (typeof projectIds)[number];

/** Projects by name. */
export const projects: Readonly<Record<ProjectId, Project>> = {
  'crib-quilt': quilt([39, 54], [45, 60]),
  'twin-quilt': quilt([65, 88], [72, 90]),
  'full-quilt': quilt([80, 88], [81, 96]),
  'queen-quilt': quilt([86, 93], [90, 108]),
  'king-quilt': quilt([104, 93], [120, 120]),
  'dress-shirt': cloth(
    2.5,
    projectFacts.quiltingOunces.value,
    'long-sleeved blouse 2 1/2 yd of 36 in, quoted from an extension chart; weight as quilting cotton',
    'published',
  ),
  't-shirt': cloth(1.3, 4.4, 'about 1.1 m2 of 150 g/m2 jersey', 'common practice'),
  jeans: cloth(
    2.67,
    11.2,
    '1.6 yd of 60 in denim, inside the 1.5 to 2 yd of denim makers (blessdenim.com); weight of 68 x 38 of 7s, inside 7 to 13 oz (denim-jean.com)',
    'published',
  ),
  'flat-sheet': cloth(6.75, 3.6, 'double flat sheet torn 81 x 108 in from percale', 'memory'),
  pillowcase: cloth(1.2, 3.6, 'a yard of 42 to 44 in percale', 'common practice'),
  tote: cloth(0.6, 10, 'half a yard of 44 in canvas of 10 oz', 'common practice'),
};
