import type { Mark } from '../fact.ts';
import type { CottonKind } from '../fibre.ts';

/** What a class card says of a kind of cotton. */
interface CottonKindCard {
  readonly kind: CottonKind;
  readonly lengthIn: number;
  readonly uniformityPercent: number;
  readonly strengthGPerTex: number;
  readonly micronaire: number;
  readonly reflectanceRd: number;
  readonly yellownessB: number;
  readonly leaf: number;
  readonly trashAreaPercent: number;
  readonly unit: string;
  readonly source: string;
  readonly mark: Mark;
}

const unit = 'in; %; g/tex; micronaire; Rd; +b; leaf grade; % area';
const crops = 'USDA-AMS crop means of 2010 and 2012';
const cotton = (
  kind: CottonKind,
  [lengthIn, uniformityPercent, strengthGPerTex, micronaire]: readonly [number, number, number, number],
  [reflectanceRd, yellownessB, leaf, trashAreaPercent]: readonly [number, number, number, number],
  source: string,
  mark: Mark,
): CottonKindCard => ({
  kind,
  lengthIn,
  uniformityPercent,
  strengthGPerTex,
  micronaire,
  reflectanceRd,
  yellownessB,
  leaf,
  trashAreaPercent,
  unit,
  source,
  mark,
});

/** Kinds of cotton by the card that a bale of them would carry. */
export const cottons = {
  uplandShort: cotton(
    'upland',
    [1, 80, 27, 4.6],
    [74, 9, 4, 0.5],
    'the short end of upland staples, 32/32 in; uniformity and strength low in the bands of the descriptors',
    'assumption',
  ),
  uplandMedium: cotton(
    'upland',
    [1.11, 81.4, 30, 4.5],
    [76, 8.5, 3, 0.4],
    `${crops}: staple 35.4 to 35.7, strength 30, micronaire 4.5, leaf 3; uniformity of 1998 to 2002`,
    'published',
  ),
  uplandLong: cotton(
    'upland',
    [1.2, 83, 31.5, 4],
    [79, 8, 2, 0.25],
    'the long end of upland staples, 38/32 in; uniformity and strength high in the bands of the descriptors',
    'assumption',
  ),
  pima: cotton(
    'pima',
    [1.5, 86, 41.7, 3.8],
    [70, 11.5, 2, 0.25],
    'American Pima: staple 48.2, strength 41.7, micronaire 3.8 (USDA-AMS, crop of 2010); uniformity 86.3 of 2018-19',
    'published',
  ),
  desi: cotton(
    'upland',
    [0.75, 77, 20, 6.5],
    [70, 9.5, 5, 0.7],
    'desi, Gossypium arboreum, Pakistan: 9.5 to 19.5 mm, micronaire 6 to 10.5 (tehqeeqat.org 35440); strength 19 to 21 of Indian desi (icracotton.org)',
    'published',
  ),
  seaIsland: cotton(
    'pima',
    [1.6, 87, 42, 3.2],
    [72, 10.5, 2, 0.25],
    'Sea Island averaged 1.6 in (lsmensclothing.com glossary); the other readings are those of a fine Pima, no cards exist of it',
    'memory',
  ),
} as const satisfies Readonly<Record<string, CottonKindCard>>;

export type CottonName = keyof typeof cottons;
