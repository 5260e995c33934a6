import type { Facts, FactTable } from '../fact.ts';

const moduleAveraging2012 =
  'between the two bounds that the 2012 repeatability of module means (AMS Dumas module averaging report) gives with the AMS tolerances (from memory)';

/** Standard deviation of one instrument test of one sample. */
export const oneTestSd = {
  micronaire: { value: 0.05, unit: 'micronaire', range: [0.046, 0.064], source: moduleAveraging2012, mark: 'derived' },
  strengthGPerTex: { value: 0.65, unit: 'g/tex', range: [0.59, 0.83], source: moduleAveraging2012, mark: 'derived' },
  lengthIn: { value: 0.009, unit: 'in', range: [0.0081, 0.0114], source: moduleAveraging2012, mark: 'derived' },
  uniformityPercent: {
    value: 0.4,
    unit: 'points of uniformity index',
    range: [0.38, 0.53],
    source: moduleAveraging2012,
    mark: 'derived',
  },
  shortFibreIndex: {
    value: 0.9,
    unit: 'points',
    range: [0.8, 1],
    source:
      'two single tests agree within 1.0 in 57 % (Knowlton, Module Averaging the Short Fiber Measurement, Beltwide 2002)',
    mark: 'derived',
  },
  reflectanceRd: {
    value: 0.35,
    unit: 'Rd',
    range: [0.2, 0.6],
    source: 'a third of the AMS tolerance of 1.0',
    mark: 'assumption',
  },
  yellownessB: {
    value: 0.17,
    unit: '+b',
    range: [0.1, 0.3],
    source: 'a third of the AMS tolerance of 0.5',
    mark: 'assumption',
  },
  trashShare: {
    value: 0.15,
    unit: 'fraction of the area',
    range: [0.1, 0.25],
    source: 'few and uneven particles under the camera window',
    mark: 'assumption',
  },
  trashFloorPercent: {
    value: 0.01,
    unit: '% area',
    range: [0, 0.05],
    source: 'reading step of the trash meter',
    mark: 'assumption',
  },
} as const satisfies Facts;

/** Allowed difference between two tests of one cotton; the yardstick of the official checks. */
export const tolerance = {
  micronaire: {
    value: 0.1,
    unit: 'micronaire',
    range: [0.1, 0.15],
    source: 'AMS tolerances',
    mark: 'memory',
    note: '0.15 is quoted too',
  },
  strengthGPerTex: { value: 1.5, unit: 'g/tex', range: [1, 2], source: 'AMS tolerances', mark: 'memory' },
  lengthIn: { value: 0.02, unit: 'in', range: [0.018, 0.03], source: 'AMS tolerances', mark: 'memory' },
  uniformityPercent: {
    value: 1,
    unit: 'points of uniformity index',
    range: [1, 1.5],
    source: 'AMS tolerances',
    mark: 'memory',
  },
  shortFibreIndex: { value: 1, unit: 'points', range: [1, 1.5], source: 'Knowlton, Beltwide 2002', mark: 'published' },
} as const satisfies Facts;

const withinModule =
  'within a module no more spread than within a bale (AMS Dumas module averaging report): same order as the test';
const withinField =
  'chosen so that every property keeps a coefficient of variation under 10 % in a field (Ge et al. 2008)';

/** How bales of one module, and modules of one farm, differ (standard deviations). */
export const spread = {
  baleMicronaire: { value: 0.05, unit: 'micronaire', range: [0.02, 0.1], source: withinModule, mark: 'assumption' },
  baleStrengthGPerTex: { value: 0.4, unit: 'g/tex', range: [0.2, 0.7], source: withinModule, mark: 'assumption' },
  baleLengthIn: { value: 0.008, unit: 'in', range: [0.004, 0.012], source: withinModule, mark: 'assumption' },
  baleUniformityPercent: { value: 0.35, unit: 'points', range: [0.2, 0.5], source: withinModule, mark: 'assumption' },
  baleReflectanceRd: { value: 0.5, unit: 'Rd', range: [0.2, 0.8], source: withinModule, mark: 'assumption' },
  baleYellownessB: { value: 0.15, unit: '+b', range: [0.05, 0.3], source: withinModule, mark: 'assumption' },
  moduleMicronaire: { value: 0.15, unit: 'micronaire', range: [0.08, 0.3], source: withinField, mark: 'assumption' },
  moduleStrengthGPerTex: { value: 0.8, unit: 'g/tex', range: [0.4, 1.2], source: withinField, mark: 'assumption' },
  moduleLengthIn: { value: 0.018, unit: 'in', range: [0.008, 0.03], source: withinField, mark: 'assumption' },
  moduleUniformityPercent: {
    value: 0.85,
    unit: 'points',
    range: [0.3, 1],
    source: 'with farms that differ by 0.8 gives the SD of 1.2 to 1.4 fitted to whole offices (AMS MP_CN103 2010)',
    mark: 'assumption',
  },
  moduleReflectanceRd: { value: 1.2, unit: 'Rd', range: [0.5, 2], source: withinField, mark: 'assumption' },
  moduleYellownessB: { value: 0.35, unit: '+b', range: [0.2, 0.6], source: withinField, mark: 'assumption' },
  pimaUniformityShare: {
    value: 0.65,
    unit: 'ratio',
    range: [0.5, 0.8],
    source: 'Pima 2018-19 uniformity SD 0.84 (AMS MP_CN104) against 1.2 to 1.4 in upland (AMS MP_CN103)',
    mark: 'derived',
    note: 'multiplies the spread of uniformity between bales and modules of Pima',
  },
  moduleTrash: {
    value: 0.25,
    unit: 'coefficient of variation',
    range: [0.15, 0.4],
    source: 'with bales and farms adds up to the 0.33 to 0.59 of whole states (AMS MP_CN109)',
    mark: 'assumption',
  },
  baleTrash: {
    value: 0.1,
    unit: 'coefficient of variation',
    range: [0.05, 0.2],
    source: 'as moduleTrash',
    mark: 'assumption',
  },
  sharedCorrelation: {
    value: 0.4,
    unit: 'correlation',
    range: [0.2, 0.6],
    source: 'length, uniformity, strength and Rd rise together and +b falls (signs: Ge et al. 2008); size chosen',
    mark: 'assumption',
  },
  micronaireYellownessCorrelation: {
    value: 0.1,
    unit: 'correlation',
    range: [0, 0.3],
    source: 'sign: Ge et al. 2008; size chosen',
    mark: 'assumption',
  },
  neighbourShare: {
    value: 0.5,
    unit: 'fraction',
    range: [0, 0.5],
    source: 'first and last bale of a module overlap with the neighbour (Earnest, Beltwide 2003); half chosen',
    mark: 'assumption',
  },
} as const satisfies Facts;

/** Dry mass of each kind of trash as a cover for the camera, against leaf. Fine dust covers like leaf; lumps cover less than their mass. */
export const trashCover = {
  leaf: { value: 1, unit: 'ratio', source: 'the measure of the others: one by definition', mark: 'derived' },
  dirt: { value: 1, unit: 'ratio', range: [0.5, 2], source: 'pepper trash covers like leaf', mark: 'assumption' },
  burs: { value: 0.6, unit: 'ratio', range: [0.3, 1], source: 'thicker pieces', mark: 'assumption' },
  sticks: {
    value: 0.6,
    unit: 'ratio',
    range: [0.3, 1],
    source: 'thicker pieces; counted by the camera',
    mark: 'assumption',
  },
  motes: {
    value: 0.3,
    unit: 'ratio',
    range: [0.1, 0.6],
    source: 'mostly white fuzz over a dark seed',
    mark: 'assumption',
  },
  areaPerMass: {
    value: 0.225,
    unit: '% area per % mass',
    range: [0.2, 0.28],
    source:
      'fitted so that picked cotton after two saw lint cleaners reads 0.36 to 0.45 %, the Georgia and Abilene season means (AMS MP_CN109 2013, MP_CN103 2019)',
    mark: 'assumption',
  },
  rdPerPercentArea: {
    value: 3,
    unit: 'Rd per % area',
    range: [1, 4],
    source:
      'trash darkens the reading; gives +1.0, +0.5, +0.3 Rd for lint cleaners 1 to 3 (sign and falling gain: Mangialardi 1989)',
    mark: 'assumption',
  },
} as const satisfies Facts;

/** How often a classer calls extraneous matter. */
export const extraneousChance = {
  barkStripped: {
    value: 0.19,
    unit: 'share of bales',
    range: [0.1, 0.37],
    source: 'West Texas sales 2006-07, bark level 1 (Texas Tech daily price estimates, year to date 10 June 2007)',
    mark: 'published',
    note: '29 to 37 % in spring 2007',
  },
  barkPicked: {
    value: 0.018,
    unit: 'share of bales',
    range: [0.017, 0.037],
    source: 'bark 1.7 and 1.9 % of the US crops 1999 and 2001 (Quality of the crop, Beltwide 2000, 2002)',
    mark: 'derived',
    note: 'the whole crop, strippers included: picked cotton alone would be lower',
  },
  sticksStripped: {
    value: 0.0026,
    unit: 'sticks, fraction of lint mass',
    range: [0.0015, 0.004],
    source:
      'left in field-cleaned stripped cotton after two stick machines and two lint cleaners, from the gin removal shares',
    mark: 'derived',
  },
  sticksPicked: {
    value: 0.0008,
    unit: 'sticks, fraction of lint mass',
    range: [0.0005, 0.002],
    source: 'left in picked cotton after one stick machine and two lint cleaners, from the gin removal shares',
    mark: 'derived',
  },
  barkMost: {
    value: 0.6,
    unit: 'share of bales',
    range: [0.37, 0.8],
    source: 'cap; spring 2007 sales reached 0.37',
    mark: 'assumption',
  },
  grass: {
    value: 0.009,
    unit: 'share of bales',
    range: [0.007, 0.014],
    source: 'grass 1.4, 0.8, 0.7 % of the crops 1998, 1999, 2001 (Quality of the crop, Beltwide 2000, 2002)',
    mark: 'published',
  },
  prep: {
    value: 0.0002,
    unit: 'share of bales',
    range: [0, 0.005],
    source: 'preparation 0.02 % of West Texas sales 2006-07 (Texas Tech daily price estimates)',
    mark: 'published',
  },
  other: {
    value: 0.0027,
    unit: 'share of bales',
    range: [0, 0.01],
    source: 'other 0.27 % of West Texas sales 2006-07 (Texas Tech daily price estimates)',
    mark: 'published',
  },
  plastic: {
    value: 0.002,
    unit: 'share of bales',
    range: [0, 0.01],
    source: 'plastic calls exist since 2018; how many was not read',
    mark: 'assumption',
  },
  heavy: { value: 0.02, unit: 'share of calls', range: [0.0005, 0.05], source: 'level 2 is rare', mark: 'assumption' },
} as const satisfies Facts;

/** Trash area above which a leaf grade begins, percent. */
export const leafEdges = {
  upland: {
    rows: [0.165, 0.265, 0.415, 0.59, 0.8, 1.065, 1.5],
    unit: '% area, upper edge of leaf grades 1 to 7; above the last: 8, below leaf grade',
    source:
      'midpoints between the trash areas .13 .20 .33 .50 .68 .92 1.21 of grades 1 to 7 (AH-566 table, from memory); the last edge chosen',
    mark: 'assumption',
    note: 'Arkansas 2012: gives mean leaf 3.9 from the published trash distribution against 4.1 reported',
  },
  pima: {
    rows: [0.55, 0.97, 1.3, 1.7, 2.2, 2.7],
    unit: '% area, upper edge of leaf grades 1 to 6; above the last: 7, below leaf grade',
    source:
      'chosen: roller-ginned lint carries more leaf for a grade; a mean of 0.7 % area gives the leaf 1, 2, 3 shares 26, 61, 9 % of 2018-19 (AMS MP_CN104)',
    mark: 'assumption',
  },
} as const satisfies Record<string, FactTable<number>>;

/** Other constants of the classing office and its formulas. */
export const office = {
  sampleOunces: {
    value: 8,
    unit: 'oz a bale',
    range: [6, 10],
    source: 'USDA-AMS, The Classification of Cotton (AH-566): at least 4 oz from each side of the bale, 8 oz in all',
    mark: 'published',
    note: '7 CFR 28.908 in an older volume: about 6 oz, at least 3 oz a side; Pima 10 oz',
  },
  moistureLowPercent: {
    value: 6.75,
    unit: '% dry basis',
    source: 'sample moisture before testing (AMS/Cotton Incorporated, Quality and Reliability of Classification Data)',
    mark: 'published',
  },
  moistureHighPercent: {
    value: 8.25,
    unit: '% dry basis',
    source: 'sample moisture before testing (AMS/Cotton Incorporated, Quality and Reliability of Classification Data)',
    mark: 'published',
  },
  classerEyeIn: {
    value: 0.02,
    unit: 'in of upper quartile length',
    range: [0.01, 0.04],
    source: 'half a thirty-second of staple on the 7 CFR 28.303 scale of .041 in a step',
    mark: 'assumption',
  },
  sfiConstant: {
    value: 122.56,
    unit: '%',
    range: [121, 124],
    source: 'short fibre index formula, USDA',
    mark: 'memory',
  },
  sfiPerInch: {
    value: -12.87,
    unit: '%/in',
    range: [-13.5, -12],
    source: 'short fibre index formula, USDA',
    mark: 'memory',
  },
  sfiPerUniformity: {
    value: -1.22,
    unit: '%/point',
    range: [-1.3, -1.1],
    source: 'short fibre index formula, USDA',
    mark: 'memory',
  },
} as const satisfies Facts;

const consistency =
  'spinning consistency formula as printed in a mill handout (scribd 296728277) and carried alike by four public programs';
/** The spinning consistency index, term by term. */
export const consistencyTerms = {
  constant: {
    value: -414.67,
    unit: '1',
    source: consistency,
    mark: 'published',
    note: 'the handout has lost its dashes; with this sign ordinary upland comes to 120 to 130, as it asks for',
  },
  strength: { value: 2.9, unit: 'tex/g', source: consistency, mark: 'published' },
  micronaire: { value: -9.32, unit: '1/micronaire', source: consistency, mark: 'published' },
  length: { value: 49.17, unit: '1/in', source: consistency, mark: 'published' },
  uniformity: { value: 4.74, unit: '1/point', source: consistency, mark: 'published' },
  reflectance: { value: 0.65, unit: '1/Rd', source: consistency, mark: 'published' },
  yellowness: { value: 0.36, unit: '1/+b', source: consistency, mark: 'published' },
} as const satisfies Facts;
