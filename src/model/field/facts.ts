import type { Fact } from '../fact.ts';
import { assumption, derived, memory, published } from './mark.ts';

const ncc = 'National Cotton Council, Growth and Development of a Cotton Plant, table 1, after Oosterhuis 1990';
const jenkins = 'Jenkins, McCarty & Parrott 1990, Crop Science (boll size and set)';
const shares = 'fitted so that yield shares match Jenkins 1990, Beltwide 2260, and Burch & Krieg 2002, Beltwide I018';
const noSize = 'only the direction is published';

/** Heat sums. */
export const heatFacts = {
  dd60BaseF: published(60, '°F', null, `${ncc}; Univ. Tennessee, When to Defoliate, 2012`),
  hu8655UpperF: published(86, '°F', null, 'Univ. Arizona AZMET cotton advisories'),
  hu8655LowerF: published(55, '°F', null, 'Univ. Arizona AZMET cotton advisories'),
} as const satisfies Record<string, Fact>;

/** The calendar of the plant: each stage needs its heat and its days. Heat in DD60, °F-days. */
export const stageFacts = {
  emergenceDd60: published(55, '°F-day', [50, 60], ncc),
  squareDd60: published(450, '°F-day', [425, 475], ncc, 'from emergence to the first square'),
  squareDays: published(27, 'day', [27, 38], ncc),
  flowerDd60: published(325, '°F-day', [300, 350], ncc, 'from a square to its flower'),
  flowerDays: published(22, 'day', [20, 25], `${ncc}; UC Davis and others print 23-25`),
  outwardDays: published(
    6,
    'day',
    [5, 7],
    'S. Brown, lafarmbureaunews.com 24 Jun 2021, "3 up, 6 out"',
    'each position further out on a branch',
  ),
  outwardDd60: derived(108, '°F-day', [90, 130], 'six days at 18 DD60 a day, an ordinary bloom-time rate'),
  openDd60: published(900, '°F-day', [850, 950], ncc, 'from a flower to its open boll'),
  openHu8655: published(
    1000,
    '°F-day',
    null,
    'Brown & Silvertooth, 2001 Boll Maturity & Boll Opening Dates, Univ. Arizona: 600 from flower to full-size boll, 400 more to open',
  ),
  openDays: derived(
    48,
    'day',
    [45, 65],
    `${ncc}: 45-65; chosen so that the first boll opens some 105-115 days after emergence (Cotton Management Guide)`,
  ),
  matureAgeDays: derived(
    45,
    'day',
    [45, 45],
    'the heat clock of the boll reads 45 days when it opens; no day gives more than its share of the heat, 900 / 48 = 18.75 DD60',
    'Arizona workers found the boll period constant only with a ceiling on the rate (Beltwide abstract 713, Maricopa 1985)',
  ),
  killingFrostF: published(
    29,
    '°F',
    [25, 29],
    'below about 29 °F leaves and young bolls stick and do not open (Edmisten, NC State Cotton Notes 95-11A); a night in the mid 20s kills outright (Byrd, UT Crops 2021)',
  ),
  frostSeasonDay: assumption(
    182,
    'day of year',
    [166, 213],
    'a frost before July kills a seedling; one after it ends the season',
  ),
  emergenceFraction: published(
    0.75,
    'fraction',
    [0.6, 0.8],
    'Silvertooth, Univ. Arizona az1203; Mississippi State Ext., What final live plant population',
  ),
  promptEmergenceDays: published(
    10,
    'day',
    [4, 10],
    'Cotton Management Guide, Monitoring Cotton Growth',
    'the slowest emergence in the guide; slower than this, stand is lost',
  ),
  standLossPerLateDay: assumption(0.02, 'fraction/day', [0, 0.04], `cold, slow seed rots; ${noSize}`),
  leastEmergenceFraction: assumption(0.4, 'fraction', [0.3, 0.5], 'floor under the loss of stand'),
} as const satisfies Record<string, Fact>;

/** Nodes and fruiting branches. */
export const nodeFacts = {
  dd60PerNode: published(
    50,
    '°F-day',
    [45, 55],
    'Texas A&M AgriLife, Mid-Coast IPM; Cotton Branch Development (guide)',
  ),
  leastDaysPerNode: published(2.7, 'day', [2, 5], 'Arkansas Ext. note, Mississippi County, Jul 2017'),
  nodesAboveNewSquare: derived(
    1.5,
    'node',
    [1, 2],
    'unfolded nodes above a pinhead square; brings nodes above white flower at first bloom to the published 8-10',
  ),
  cutOutNodesAboveWhiteFlower: published(5, 'node', [4, 5], 'Arkansas Ext. note 2017; Univ. Tennessee 2012'),
  internodeInches: published(
    1.7,
    'inch',
    [1.2, 2],
    'height to node guideline: 1.2-1.7 in from large square to first bloom, 1.7-2.0 in early bloom (knowledge-builders.org, after an extension guide)',
  ),
  dryInternodeShare: assumption(
    0.5,
    'fraction',
    [0.3, 0.7],
    'a wilting plant stretches half as much; only the direction is known',
  ),
  whiteFlowerGapDays: assumption(
    7,
    'day',
    [5, 10],
    'flowers come up the stem about every three days (Cotton Branch Development, guide), so a week without one is the end of bloom',
  ),
  vegetativeBranches: memory(2, 'branch', [0, 4], 'below the first fruiting branch'),
} as const satisfies Record<string, Fact>;

/** What is kept and what is shed. */
export const retentionFacts = {
  loadAtHalf: derived(
    0.8,
    'ratio',
    [0.75, 0.85],
    'fitted to the three points of Crop Science 13:168 (1973): over 75 % kept at first, under 50 % after 500-1200 kg lint/ha, under 20 % after 700-1300',
    'set lint over what the field can carry, where half is kept',
  ),
  loadWidth: derived(0.1, 'ratio', [0.05, 0.15], 'same fit'),
  dryKept: assumption(0.4, 'fraction', [0.3, 0.6], `share still kept by a wilted plant; ${noSize}`),
  warmNightF: derived(
    72,
    '°F',
    [68, 75],
    'Oosterhuis & Snider, Stress Physiology in Cotton: the decline starts above about 30/20-22 °C',
  ),
  warmNightSlope: assumption(0.012, '1/°F', [0.005, 0.02], 'shape chosen; direction from Oosterhuis & Snider'),
  hotDayF: assumption(100, '°F', [95, 104], 'shape chosen; direction from Oosterhuis & Snider'),
  hotDaySlope: assumption(0.015, '1/°F', [0.005, 0.03], 'shape chosen; direction from Oosterhuis & Snider'),
  leastHeatKept: assumption(
    0.3,
    'fraction',
    [0.2, 0.4],
    'floor; about 70 % fewer bolls were kept at 36/28 °C (Oosterhuis & Snider)',
  ),
  leastCapacityShare: assumption(
    0.02,
    'fraction',
    [0.01, 0.05],
    'a field with no water at all still carries a trace, so that the load stays a number',
  ),
  mostKept: assumption(0.97, 'fraction', [0.9, 1], 'no plant keeps every young boll'),
  referencePlantsPerAcre: published(
    40000,
    'plants/acre',
    [38000, 40000],
    jenkins,
    'the stand of the yield-share plots, 95 000 plants/ha',
  ),
  outerThinningPower: derived(0.6, 'power', [0.4, 0.8], shares, 'outer positions in thinner stands'),
  vegetativeThinningPower: derived(1.3, 'power', [1, 1.6], shares, 'vegetative branches in thinner stands'),
  mostOuterKept: derived(0.85, 'fraction', [0.8, 0.9], shares),
  mostVegetativeSites: assumption(1.6, 'site/node', [1, 2], 'two vegetative branches cannot outrun the main stem'),
  squareShedDays: assumption(10, 'day', [5, 15], 'age at which a lost square falls'),
  bollShedDays: memory(6, 'day', [4, 10], 'young bolls fall within about ten days of bloom'),
} as const satisfies Record<string, Fact>;

/** Boll mass by position, against the first. */
export const positionFacts = {
  first: derived(1, 'ratio', null, jenkins),
  second: published(0.88, 'ratio', [0.85, 0.92], `${jenkins}: first position 14 % heavier than second`),
  third: published(0.83, 'ratio', [0.8, 0.86], `${jenkins}: first position 21 % heavier than third`),
  vegetative: derived(0.83, 'ratio', [0.8, 0.86], 'as the third position'),
  fillShare: assumption(
    0.3,
    'power',
    [0, 0.6],
    'how much of a lighter boll is thinner lint rather than fewer seeds; first-position micronaire is higher (Jenkins et al. 1990, Beltwide 2354), size not published',
  ),
} as const satisfies Record<string, Fact>;

/** Filling of the boll. Ages on the boll's own clock, days. */
export const bollFacts = {
  wallBeginsDays: published(
    17,
    'day',
    [16, 19],
    'Kinetics of Cell Elongation and Secondary Wall Thickening, 1973 (Stoneville 213)',
  ),
  wallBeginsMass: derived(0.1, 'fraction', [0.05, 0.15], 'fits the published 40 % at the end of elongation'),
  elongatedDays: published(27, 'day', [20, 27], 'Kinetics of Cell Elongation, 1973'),
  wallOfSectionGrown: memory(
    0.577,
    'fraction',
    [0.5, 0.65],
    'Peirce & Lord 1939: degree of thickening of standard cotton, wall over the whole section of a ripe fiber',
    'pictures draw the section of a fiber with it',
  ),
  fullSizeDays: memory(
    21,
    'day',
    [20, 25],
    'UGA Bulletin 1252: a boll is full size about three weeks after the flower',
    'pictures',
  ),
  elongatedMass: published(0.4, 'fraction', [0.35, 0.45], 'Kinetics of Cell Elongation, 1973'),
  safeAgeDays: derived(
    34,
    'day',
    [34, 37.5],
    'Snipes, Mississippi State, in Southeast Farm Press, Defoliation timing critical: 36-40 days after white bloom',
    'on the boll’s clock, which reads 45 when 48 warm days have passed; younger bolls are lost to harvest aid',
  ),
  gainAfterAidDays: derived(
    1,
    'day',
    [0, 5],
    'filling left after harvest aid; fits the published losses at 20 and 40 % open (Snipes)',
  ),
  openAfterAidDays: published(
    14,
    'day',
    [7, 14],
    'Gwathmey & Hayes, Beltwide 1996: ethephon had opened more bolls by 14 days in all four trials, by 7 days in one',
  ),
  seedsLostDry: assumption(
    0.35,
    'fraction',
    [0.2, 0.6],
    'seeds lost by a boll set under full stress; bolls of 14-24 seeds in a drought at Lamesa 2000 (Texas A&M AG-CARES table 31) against 26-31 at Sumner 1994',
  ),
  fillLostDry: assumption(
    0.12,
    'fraction',
    [0.1, 0.4],
    `lint per seed lost under full stress while filling; ${noSize} (eXtension 38134, 2012); 42-64 mg at Lamesa 2000`,
  ),
  fillWindowFromDays: published(
    18,
    'day',
    [16, 19],
    'eXtension 38134, 2012: from 18 days to just before opening stress acts on micronaire',
  ),
  fillReferenceF: assumption(80, '°F', [78, 83], 'mean temperature in boll fill of a mid-South crop'),
  fillPerF: assumption(
    0.008,
    '1/°F',
    [0.003, 0.012],
    'micronaire rises with mean temperature in boll fill (Bange et al. 2010, J. Cotton Sci. 14:164); slope chosen to bring West Texas to its published mean',
  ),
  fillBestF: assumption(
    83,
    '°F',
    [80, 86],
    'no further gain above this; the published line does not reach desert heat',
  ),
  fillLostHotPerF: assumption(
    0.002,
    '1/°F',
    [0, 0.01],
    'lost above the best temperature, to bring desert upland to its published micronaire',
  ),
  leastFill: assumption(0.4, 'fraction', [0.3, 0.5], 'floor under all that thins a fibre'),
} as const satisfies Record<string, Fact>;

/** What the weather of a cohort does to its fibre. */
export const fibreFacts = {
  stressShortens: assumption(
    0.02,
    'fraction',
    [0.01, 0.1],
    `length lost per unit of mean stress in the first 20 days; ${noSize} (eXtension 38134, 2012)`,
  ),
  elongationDays: published(20, 'day', [16, 22], 'eXtension 38134, 2012; onglobalcotton.com'),
  coldNightF: published(68, '°F', [68, 68], 'Gipson & Ray 1969, Crop Science 9: nights below 20 °C shorten fibre'),
  coldNightDays: published(15, 'day', [15, 15], 'Gipson & Joham 1969, Crop Science 9: sensitive to day 15'),
  coldNightShortens: assumption(0.0007, 'fraction/night', [0.0005, 0.003], `${noSize} (Gipson & Ray 1969)`),
  normalFourthMoment: derived(3, 'ratio', null, 'fourth moment of a normal over its variance squared, exact'),
  peakGridMm: assumption(
    0.05,
    'mm',
    [0.01, 0.1],
    'peaks closer than this are blended as one: far below what any instrument sees',
  ),
  stressWeakens: assumption(
    0.05,
    'fraction',
    [0, 0.1],
    `strength lost per unit of mean stress in fill; ${noSize} (eXtension 38134, 2012)`,
  ),
  bollRd: assumption(81, 'Rd %', [79, 83], 'upland as it opens, lint alone; chosen with the weathering below'),
  bollPimaRd: assumption(72.9, 'Rd %', [70, 75], 'Pima as it opens: creamier than upland'),
  bollYellowness: assumption(8.5, 'Hunter +b', [8, 9], 'upland as it opens'),
  bollPimaYellowness: assumption(11.6, 'Hunter +b', [11, 12.5], 'Pima as it opens'),
  rdPerInchOfRain: assumption(
    2.35,
    'Rd %/inch',
    [0.5, 3],
    'rain on the open boll grays it; fitted so that 85-93 % of humid crops reach color 41/32 (USDA-AMS, crops 1997-2011)',
  ),
  rdPerDay: assumption(0.03, 'Rd %/day', [0, 0.1], `sun and dew; ${noSize}`),
  mostRdLost: assumption(22, 'Rd %', [15, 30], 'weathered cotton grays no further'),
  yellownessPerInchOfRain: assumption(0.06, 'Hunter +b/inch', [0, 0.2], `fungi spot wet lint; ${noSize}`),
  yellownessPerDay: assumption(0.008, 'Hunter +b/day', [0, 0.02], `slow yellowing in the boll; ${noSize}`),
  yellownessUnfilled: assumption(
    3,
    'Hunter +b',
    [1, 5],
    'added by a boll opened with nothing in it; frosted and forced bolls open yellow, size not published',
  ),
} as const satisfies Record<string, Fact>;

/** Harvest aid, picking and the wait in the field. */
export const pickingFacts = {
  lintLostPerInchOfRain: derived(
    0.0093,
    'fraction/inch',
    [0.005, 0.015],
    'Parvin et al. 2005, J. Cotton Sci. 9:115: 4.09 kg lint/ha per cm of rain, on a crop of about 1000 lb/acre',
    'the same paper gives 2.35 kg/ha per day instead; the rain term is used alone',
  ),
  latestAidDay: memory(298, 'day of year', [283, 305], 'about 25 October; later aids hardly work in the cold'),
  latestReadyDay: assumption(
    335,
    'day of year',
    [320, 345],
    'about 1 December; a field without harvest aid is picked then, whatever is open',
  ),
  lastHarvestDay: assumption(
    354,
    'day of year',
    [340, 365],
    'about 20 December; c. 1917 picking ended in December (USDA, Seedtime and Harvest)',
  ),
  frostToReadyDays: assumption(10, 'day', [7, 21], 'a frosted plant dries down'),
  daysBetweenPickings: memory(25, 'day', [14, 35], 'a field was gone over two or three times'),
  leastPickingShare: assumption(
    0.02,
    'fraction',
    [0.01, 0.1],
    'share of all bolls for which hands go over a field again',
  ),
  dryDayInches: assumption(0.01, 'inch', [0, 0.05], 'a day with less rain than this can be picked'),
  leafAfterAid: assumption(0.12, 'fraction', [0.05, 0.25], 'leaf that stays on a defoliated plant'),
  leafFallDays: assumption(4, 'day', [3, 7], 'time constant of leaf fall after harvest aid or frost'),
  leafAfterFrost: assumption(0.35, 'fraction', [0.2, 0.6], 'frozen leaf sticks to the plant'),
  irrigationEndsOpenPercent: assumption(30, '%', [0, 40], 'water is cut off when the first third of the bolls is open'),
  lintMoisturePercent: derived(
    7.83,
    '% wet basis',
    [6.5, 8.5],
    'commercial regain 8.5 % on oven-dry weight (ASTM D1909-13)',
  ),
  seedMoisturePercent: published(
    9.7,
    '% wet basis',
    [9.7, 10.5],
    'USDA-AMS, Cottonseed Quality 1993: crop mean 9.7; 10.5 and 10.2 the two years before',
  ),
  trashMoisturePercent: assumption(10, '% wet basis', [8, 14], 'plant parts in the same air'),
  motesPercent: derived(
    0.9,
    '% of seed cotton',
    [0.5, 1.5],
    'undeveloped seeds: 12 % of the 8 % foreign matter of picked cotton (remembered from USDA Agriculture Handbook 503)',
  ),
} as const satisfies Record<string, Fact>;

const locks = 'upland bolls usually have four or five locks, Sea Island three or four (Duggar, Southern Field Crops)';
/** One plant drawn from the field. */
export const sampleFacts = {
  locksPerBoll: derived(4.5, 'locks/boll', [4, 5], `between the two: ${locks}`),
  fewestLocks: {
    value: 4,
    unit: 'locks/boll',
    source: locks,
    mark: 'published',
  },
  mostLocks: {
    value: 5,
    unit: 'locks/boll',
    source: locks,
    mark: 'published',
  },
  seedSpread: assumption(2, 'seeds/boll', [1, 4], 'spread of seeds from boll to boll'),
} as const satisfies Record<string, Fact>;
