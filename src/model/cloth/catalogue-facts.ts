import type { Mark } from '../fact.ts';
import type { WashClass } from './wash-facts.ts';
import type { WeaveId } from './weaves.ts';

/** How a cloth is made: woven in one of the weaves, or knitted. */
export type Structure = WeaveId | 'jersey' | 'interlock';

/** A cloth of the trade by name: its threads, and how far they can be trusted. No name is a standard. */
export interface ListedCloth {
  readonly structure: Structure;
  /** Yarn numbers as the trade writes them; a knit has no weft of its own. */
  readonly warp: string;
  readonly weft: string;
  /** Threads per inch; 0 for a knit, whose loops are counted by their length. */
  readonly endsPerInch: number;
  readonly picksPerInch: number;
  /** Yarn in one loop, mm; 0 for woven cloth. */
  readonly loopMm: number;
  /** Percent along warp and weft; null takes the usual crimp of the weave. */
  readonly crimpPercent: readonly [warp: number, weft: number] | null;
  readonly combed: boolean;
  readonly napped: boolean;
  readonly dyedWarp: boolean;
  readonly tapedWarp: boolean;
  readonly wash: WashClass;
  readonly unit: string;
  readonly source: string;
  readonly mark: Mark;
  readonly note?: string;
}

type Rest = Partial<Omit<ListedCloth, 'structure' | 'warp' | 'weft' | 'endsPerInch' | 'picksPerInch' | 'unit'>> &
  Pick<ListedCloth, 'source' | 'mark'>;

const usual = {
  loopMm: 0,
  crimpPercent: null,
  combed: false,
  napped: false,
  dyedWarp: false,
  tapedWarp: false,
  wash: 'finished',
} as const;

const woven = (
  structure: WeaveId,
  [endsPerInch, picksPerInch]: readonly [ends: number, picks: number],
  warp: string,
  weft: string,
  rest: Rest,
): ListedCloth => ({
  ...usual,
  structure,
  warp,
  weft,
  endsPerInch,
  picksPerInch,
  unit: 'ends and picks per inch; yarn numbers; crimp %',
  ...rest,
});

const knitted = (structure: 'jersey' | 'interlock', yarn: string, loopMm: number, rest: Rest): ListedCloth => ({
  ...usual,
  structure,
  warp: yarn,
  weft: yarn,
  endsPerInch: 0,
  picksPerInch: 0,
  unit: 'yarn number; yarn in a loop, mm',
  wash: 'jersey',
  ...rest,
  loopMm,
});

const trade = 'a construction of the trade';
const fineTrade = `${trade}; sheers crimp less than sheeting`;
const numbered =
  'ducks by number weigh 19 less the number, in ounces a piece of 36 x 22 in (sizes.com, citing the US Department of Commerce); threads and yarn of the trade that come near that weight';

/** Named cotton cloths with a construction each. */
export const catalogue = {
  quilting: woven('plain', [68, 68], '28Ne', '28Ne', {
    wash: 'quilting',
    source:
      'threads: 68/68 quilting base of 3.5 yd/lb at 45 in (maker page mark-sweeney-z3bb.squarespace.com/basic); yarn number from that weight',
    mark: 'derived',
    note: 'other sellers say 60 square at least, and 120 to 170 g/m2',
  }),
  muslin: woven('plain', [68, 60], '22Ne', '22Ne', {
    source: `${trade}; its type 128 is the total of threads (Nebraska Extension, EC63-1172, 1963)`,
    mark: 'memory',
  }),
  muslinHeavy: woven('plain', [74, 66], '22Ne', '22Ne', {
    source: `${trade}; its type 140 is the total of threads (Nebraska Extension, EC63-1172, 1963)`,
    mark: 'memory',
  }),
  fineSheeting: woven('plain', [68, 68], '32Ne', '32Ne', {
    source: 'plain fine sheeting, trade note: 68 x 68 of 32s by 32s',
    mark: 'published',
  }),
  printcloth: woven('plain', [80, 80], '30Ne', '40Ne', {
    source: `${trade}: 80 square, 39 in, 4.00 yd/lb`,
    mark: 'memory',
  }),
  printclothLight: woven('plain', [64, 60], '30Ne', '40Ne', {
    source: `${trade}: 38 1/2 in, 64 x 60, 5.35 yd/lb`,
    mark: 'memory',
  }),
  percale: woven('plain', [96, 84], '38Ne', '38Ne', {
    source: `${trade}; its type 180 is the total of threads (Nebraska Extension, EC63-1172, 1963)`,
    mark: 'memory',
  }),
  percaleCombed: woven('plain', [110, 90], '40Ne', '40Ne', {
    combed: true,
    source: `${trade}: type 200, combed`,
    mark: 'memory',
  }),
  shirting: woven('plain', [63.5, 63.5], '29Ne', '45Ne', {
    combed: true,
    crimpPercent: [10, 5.5],
    source:
      'GATE 2010 (Indian Institutes of Technology): shirting of 91.15 g/m2; 25 x 25 per cm and about 29s by 45s come out of its cover factors',
    mark: 'derived',
  }),
  poplin: woven('plain', [133, 72], '40Ne', '40Ne', {
    combed: true,
    crimpPercent: [10, 3],
    source: `${trade}: 133 x 72 of 40s by 40s, warp well above weft`,
    mark: 'memory',
  }),
  lawn: woven('plain', [90, 88], '60Ne', '60Ne', {
    combed: true,
    crimpPercent: [5, 5],
    source: fineTrade,
    mark: 'memory',
  }),
  voile: woven('plain', [60, 56], '60Ne', '60Ne', {
    combed: true,
    crimpPercent: [4, 4],
    source: `${fineTrade}; its yarn is hard twisted`,
    mark: 'memory',
    note: 'a seller’s chart gives voiles of 80 to 120 g/m2, twice this',
  }),
  batiste: woven('plain', [96, 92], '80Ne', '80Ne', {
    combed: true,
    crimpPercent: [5, 5],
    source: fineTrade,
    mark: 'memory',
  }),
  chambray: woven('plain', [84, 76], '30Ne', '36Ne', { dyedWarp: true, source: trade, mark: 'memory' }),
  albatross: woven('plain', [48, 48], '28Ne', '36Ne', {
    source: 'W. H. Dooley, Textiles, "Cotton fabrics" (dyeing.ca)',
    mark: 'published',
  }),
  gauze: woven('plain', [32, 28], '40Ne', '40Ne', {
    crimpPercent: [4, 4],
    wash: 'open',
    source: `${fineTrade}; double gauze is two such cloths tacked together`,
    mark: 'memory',
  }),
  cheesecloth: woven('plain', [28, 24], '30Ne', '30Ne', {
    crimpPercent: [4, 4],
    wash: 'open',
    source: `${trade}: grade 50`,
    mark: 'memory',
  }),
  flannel: woven('plain', [44, 40], '20Ne', '13Ne', {
    napped: true,
    wash: 'open',
    source: `${trade}, before napping`,
    mark: 'memory',
  }),
  osnaburg: woven('plain', [32, 28], '7Ne', '7Ne', { source: trade, mark: 'memory' }),
  oxford: woven('plain', [88, 44], '40Ne', '12Ne', {
    tapedWarp: true,
    combed: true,
    source: `${trade}; two warp ends woven as one`,
    mark: 'memory',
  }),
  twillLight: woven('twill', [124, 64], '30Ne', '30Ne', {
    crimpPercent: [8, 3],
    source: 'drill and twill constructions, scribd 50357247: 124 x 64 of 30s by 30s',
    mark: 'published',
  }),
  twill: woven('twill', [108, 56], '20Ne', '20Ne', {
    crimpPercent: [8, 3],
    source: 'drill and twill constructions, scribd 50357247: 108 x 56 of 20s by 20s',
    mark: 'published',
  }),
  drill: woven('twill', [96, 48], '16Ne', '12Ne', {
    crimpPercent: [8, 3],
    source: 'drill and twill constructions, scribd 50357247: 96 x 48 of 16s by 12s',
    mark: 'published',
  }),
  denim: woven('twill', [68, 38], '7Ne', '7Ne', {
    crimpPercent: [10, 3],
    dyedWarp: true,
    wash: 'rawDenim',
    source: trade,
    mark: 'memory',
    note: 'sold at 6 oz/yd2 for shirts to 13 oz/yd2 for jeans (ireading.today, denim-jean.com)',
  }),
  sateen: woven('sateen', [96, 64], '40Ne', '30Ne', { combed: true, source: trade, mark: 'memory' }),
  sateenFine: woven('sateen', [173, 120], '60Ne', '60Ne', {
    combed: true,
    source: `${trade}: bed sateen of 293 threads`,
    mark: 'memory',
  }),
  duckTen: woven('plain', [40, 28], '7/2Ne', '7/2Ne', { crimpPercent: [10, 4], source: numbered, mark: 'memory' }),
  duckEight: woven('plain', [34, 22], '7/3Ne', '7/3Ne', { crimpPercent: [10, 4], source: numbered, mark: 'memory' }),
  jersey: knitted('jersey', '30Ne', 2.88, {
    source: 'the middle of five jerseys of 30s knitted with loops of 2.59 to 3.16 mm (scribd 512382682)',
    mark: 'published',
  }),
  interlock: knitted('interlock', '40Ne', 3, { wash: 'interlock', combed: true, source: trade, mark: 'memory' }),
} as const satisfies Readonly<Record<string, ListedCloth>>;

export type ClothName = keyof typeof catalogue;
