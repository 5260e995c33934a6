import type { Fact, Facts, FactTable } from '../fact.ts';

const manian = '"Important fabric parameters and formulae" (Manian), optitex.com; Peirce with a specific volume of 1.1';
const quilters = 'textbook range, not read in print';

export const geometryFacts = {
  peirceThreads: {
    value: 28,
    unit: 'threads per inch per sqrt(Ne)',
    source: manian,
    mark: 'published',
    note: 'yarn diameter = 1 / (28 sqrt Ne) in; a cover of 28 is full',
  },
  ashenhurstThreads: {
    value: 0.9,
    unit: 'threads per inch per sqrt(yd/lb)',
    range: [0.9, 0.95],
    source: 'Ashenhurst as handweavers print it (faena.medievaltextiles.org)',
    mark: 'published',
    note: 'Taylor, Cotton Weaving and Designing, p. 436, gives 0.95; Peirce comes to 0.966: the same yarn, 147 to 158 threads an inch for 32s',
  },
  waveHeight: {
    value: 4 / 3,
    unit: 'ratio',
    source:
      'Peirce geometry: wave height = 4/3 spacing x sqrt(crimp); used in GATE 2008 (Indian Institutes of Technology)',
    mark: 'published',
  },
  warpCrimpPercent: {
    value: 6,
    unit: '%',
    range: [1, 14],
    source:
      'a cotton cloth analysed: 21.2 cm of warp in a 20 cm strip (Uzzal, textilecalculation.blogspot.com, 2015); mytextilenotes prints 1 to 14 %',
    mark: 'published',
  },
  weftCrimpPercent: {
    value: 7,
    unit: '%',
    range: [1, 14],
    source: 'inside the 1 to 14 % of mytextilenotes; the value for plain cloth is ours',
    mark: 'assumption',
    note: '36 in cloth from 38 in of reed is 5.6 % (Brooks, Cotton Manufacturing); with that a 68 x 68 quilting base comes out 10 % lighter than the maker sells it',
  },
  clothWidthInches: {
    value: 45,
    unit: 'in',
    range: [44, 45],
    source: '44/45 in goods, the usual width of quilting cloth (maker page mark-sweeney-z3bb.squarespace.com/basic)',
    mark: 'published',
  },
  jerseyWidthInches: {
    value: 60,
    unit: 'in',
    range: [58, 72],
    source: 'knits are sold slit at 58 to 60 in',
    mark: 'common practice',
  },
} as const satisfies Facts;

const knitConstants =
  'Munden 1959, plain knit of wool, the mean of many cloths (lecture "Knitted Fabric Geometry", scribd 143644499)';
export const jerseyFacts = {
  tightness: { value: 15, unit: 'sqrt(tex)/cm', range: [12, 18], source: 'usual single jersey', mark: 'memory' },
  coursesDry: {
    value: 5.0,
    unit: 'courses x loop length',
    source: `${knitConstants}, dry relaxed`,
    mark: 'published',
  },
  walesDry: {
    value: 3.8,
    unit: 'wales x loop length',
    source: `${knitConstants}, dry relaxed`,
    mark: 'published',
  },
  coursesWet: {
    value: 5.3,
    unit: 'courses x loop length',
    source: `${knitConstants}, wet relaxed`,
    mark: 'published',
  },
  walesWet: {
    value: 4.1,
    unit: 'wales x loop length',
    source: `${knitConstants}, wet relaxed`,
    mark: 'published',
  },
  coursesFull: {
    value: 5.5,
    unit: 'courses x loop length',
    source: 'GATE 2015 Q54 (Indian Institutes of Technology): fully relaxed plain knit',
    mark: 'published',
  },
  walesFull: {
    value: 4.2,
    unit: 'wales x loop length',
    source: 'GATE 2015 Q54 (Indian Institutes of Technology): fully relaxed plain knit',
    mark: 'published',
  },
} as const satisfies Facts;

const hts = 'Harmonized Tariff Schedule of the US, chapter 52, Statistical Note 1 and Additional US Note 3';

/** Lines of the customs definitions. */
export const tariffFacts = {
  lightGsm: { value: 200, unit: 'g/m2', source: hts, mark: 'published' },
  openThreadsPerCm2: { value: 33, unit: 'threads/cm2', source: hts, mark: 'published' },
  squareThreadsPerCm2: { value: 79, unit: 'threads/cm2', source: hts, mark: 'published' },
  squareDifferencePerCm: { value: 11, unit: 'threads/cm', source: hts, mark: 'published' },
  squareShare: { value: 0.57, unit: 'fraction', source: hts, mark: 'published' },
  printclothLow: { value: 43, unit: 'average yarn number', source: hts, mark: 'published' },
  printclothHigh: { value: 68, unit: 'average yarn number', source: hts, mark: 'published' },
  heavyNumberHigh: { value: 26, unit: 'average yarn number', source: hts, mark: 'published' },
  osnaburgNumberHigh: { value: 22, unit: 'average yarn number', source: hts, mark: 'published' },
  osnaburgThreadsPerCm: { value: 28, unit: 'threads/cm', source: hts, mark: 'published' },
} as const satisfies Facts;

const munden = 'from the knit constants of the two states';
/** How far cloth shrinks in finishing and after, percent. */
export const shrinkFacts = {
  finishLength: {
    value: 5,
    unit: '%',
    range: [3, 10],
    source: `taken out in wet finishing; ${quilters}`,
    mark: 'assumption',
  },
  finishWidth: {
    value: 3,
    unit: '%',
    range: [1, 6],
    source: `taken out in wet finishing; ${quilters}`,
    mark: 'assumption',
  },
  leftLength: {
    value: 3.5,
    unit: '%',
    range: [2, 8],
    source: `finished plain cloth not compacted 3 to 8 %, quilting cotton 2 to 4 %, more lengthwise; ${quilters}`,
    mark: 'memory',
    note: `jersey: ${munden}`,
  },
  leftWidth: { value: 2, unit: '%', range: [1, 8], source: `less than lengthwise; ${quilters}`, mark: 'memory' },
} as const satisfies Facts;

export const clothFinishes = ['grey', 'scoured', 'bleached', 'mercerised', 'printed'] as const;
export type ClothFinish = (typeof clothFinishes)[number];

const impurities =
  'raw cotton is 4 to 12 % other than cellulose (Hashem, Fibres & Textiles in Eastern Europe 15(2):85, 2007); loss in scour and bleach 5 to 10 %, from memory';
/** Share of the lint lost to the bath, by finish: wax, pectin, protein. */
export const finishLoss: Readonly<Record<ClothFinish, Fact>> = {
  grey: { value: 0, unit: 'fraction', source: 'grey cloth sees no bath', mark: 'derived' },
  scoured: { value: 0.05, unit: 'fraction', range: [0.04, 0.08], source: impurities, mark: 'memory' },
  bleached: { value: 0.06, unit: 'fraction', range: [0.05, 0.1], source: impurities, mark: 'memory' },
  mercerised: { value: 0.06, unit: 'fraction', range: [0.05, 0.1], source: impurities, mark: 'memory' },
  printed: {
    value: 0.06,
    unit: 'fraction',
    range: [0.05, 0.1],
    source: `bleached before printing; ${impurities}`,
    mark: 'memory',
  },
};

export const processFacts = {
  sizeShare: {
    value: 0.125,
    unit: 'fraction of warp',
    range: [0.1, 0.15],
    source:
      'about 10 to 15 % on cotton warps (US EPA 1996, quoted by the P2 InfoHouse textile guide); the middle. Old export shirtings carried 25 to 125 % (Brooks, Cotton Manufacturing)',
    mark: 'published',
  },
  weavingWaste: {
    value: 0.031,
    unit: 'fraction',
    range: [0.0243, 0.0396],
    source:
      'Haque & Majumder, J. Textile and Apparel, Technology and Management (NC State): 2.59 to 3.96 % of the warp and 2.43 to 3.51 % of the weft in two air-jet mills; the middle',
    mark: 'published',
  },
  knittingWaste: {
    value: 0.01,
    unit: 'fraction',
    range: [0.005, 0.02],
    source: 'cones run down to the end; less than in weaving',
    mark: 'assumption',
  },
  trashBoiledOut: {
    value: 0.9,
    unit: 'fraction',
    range: [0.7, 1],
    source: 'scouring softens and floats off the specks that grey cloth shows',
    mark: 'assumption',
  },
  printAddOn: {
    value: 0.02,
    unit: 'fraction',
    range: [0.01, 0.05],
    source: 'pigment and binder left on printed cloth',
    mark: 'assumption',
  },
  regain: {
    value: 0.085,
    unit: 'water per dry mass',
    range: [0.07, 0.085],
    source:
      'commercial regain of cotton, ASTM D1909 as tabled by Shuvo, Bioresources & Bioprocessing 7 (2020), table 10',
    mark: 'published',
  },
  mercerisedRegain: {
    value: 0.11,
    unit: 'water per dry mass',
    range: [0.09, 0.115],
    source: 'mercerised cotton holds about 10.5 to 11.5 %',
    mark: 'memory',
    note: 'an examination solution (cdquestions.com) prints about 9 to 10 %',
  },
  cuttingLoss: {
    value: 0.175,
    unit: 'fraction',
    range: [0.15, 0.2],
    source:
      'cloth left over between the pieces: markers of woven cloth use 80 to 85 % (garmentprocess.com); cutting rooms in Delhi lost 18 % in all (apparelresources.com)',
    mark: 'published',
  },
} as const satisfies Facts;

export const feelFacts = {
  fibreRigidity: {
    value: 0.53,
    unit: 'mN mm2/tex2',
    range: [0.4, 0.7],
    source: 'specific flexural rigidity of cotton, Morton & Hearle',
    mark: 'memory',
  },
  shareAlong: {
    value: 0.5,
    unit: 'fraction',
    range: [0.4, 0.6],
    source: 'warp and weft are taken to hold half of the fibre each',
    mark: 'assumption',
  },
  pressRise: {
    value: 12,
    unit: 'ratio',
    range: [6, 30],
    source: 'gauze bends as its fibres do, canvas ten times as stiff: yarns press on each other',
    mark: 'assumption',
  },
  pressPower: {
    value: 7,
    unit: 'power of cover',
    range: [4, 10],
    source: 'brings quilting cotton to nearly twice the stiffness of its fibres',
    mark: 'assumption',
  },
  fluidBelow: {
    value: 4,
    unit: 'uN m',
    range: [2, 6],
    source: 'voile and gauze fall below, lawn above',
    mark: 'assumption',
  },
  crispAbove: { value: 40, unit: 'uN m', range: [20, 60], source: 'denim and canvas lie above', mark: 'assumption' },
  fuzzEndsPerCm: {
    value: 100,
    unit: 'fibre ends/cm',
    range: [80, 120],
    source: 'carded medium upland at 30s',
    mark: 'assumption',
  },
  fuzzShortPercent: {
    value: 20,
    unit: '%',
    range: [10, 40],
    source: 'short fibre that doubles the fuzz of the same number of ends',
    mark: 'assumption',
  },
  fuzzLittleBelow: {
    value: 1.15,
    unit: 'ratio',
    range: [0.9, 1.3],
    source: 'combed yarn falls below',
    mark: 'assumption',
  },
  fuzzMuchAbove: {
    value: 1.65,
    unit: 'ratio',
    range: [1.4, 2],
    source: 'short carded cotton lies above',
    mark: 'assumption',
  },
  flameOunces: {
    value: 2.6,
    unit: 'oz/yd2',
    source: '16 CFR 1610.1(d): plain-surface cloth of 2.6 oz/yd2 or more is exempt from testing',
    mark: 'published',
  },
  ironDots: {
    value: 3,
    unit: 'dots',
    source: 'ISO 3758: three dots, soleplate at most 200 C (summary by sioen-ppc)',
    mark: 'published',
  },
  ironCelsius: {
    value: 200,
    unit: 'C',
    range: [200, 210],
    source: 'ISO 3758 (summary by sioen-ppc); some charts print 210',
    mark: 'published',
  },
} as const satisfies Facts;

/** Needle and thread by weight of cloth. The thread is the cotton number range the manual names; none for light cloth, which it calls fine. */
export const needleTable: FactTable<{
  weight: 'light' | 'medium' | 'heavy';
  belowGsm: number | null;
  needles: readonly [from: string, to: string];
  threadNumbers: readonly [from: number, to: number] | null;
}> = {
  rows: [
    { weight: 'light', belowGsm: 100, needles: ['70/10', '80/12'], threadNumbers: null },
    { weight: 'medium', belowGsm: 250, needles: ['75/11', '90/14'], threadNumbers: [50, 80] },
    { weight: 'heavy', belowGsm: null, needles: ['90/14', '100/16'], threadNumbers: [40, 50] },
  ],
  unit: 'needle size (shaft in 1/100 mm / trade number), cotton thread number',
  source:
    'machine manuals: Siruba HSP-68100 p. 18 (manualshive.com) for light and medium, Janome 415 p. 6 (easymanua.ls) for heavy and for thread',
  mark: 'published',
  note: 'where one weight ends and the next starts (100 and 250 g/m2) is an assumption; the Siruba manual takes 80/12 to 90/14 for heavy cloth, the Janome 415 takes 65/9 to 75/11 for light',
};
