import type { Fact } from '../fact.ts';

const magnus =
  'Alduchov & Eskridge 1996, J. Applied Meteorology, equation 21: vapour pressure over water, as public weather code documents it';
/** Moisture, drying and the air that does it. */
export const dryingFacts = {
  magnusScaleKPa: { value: 0.61094, unit: 'kPa', source: magnus, mark: 'published' },
  magnusSlope: { value: 17.625, unit: 'ratio', source: magnus, mark: 'published' },
  magnusOffsetC: { value: 243.04, unit: 'C', source: magnus, mark: 'published' },
  dampestHumidity: {
    value: 0.99,
    unit: 'fraction',
    range: [0.95, 0.99],
    source: 'the regain curve has no end at saturation; it is held here',
    mark: 'assumption',
  },
  regainScale: {
    value: 0.059,
    unit: 'dry fraction',
    range: [0.055, 0.064],
    source: 'fitted to lint regain by humidity (ASHRAE industrial table, American cloth)',
    mark: 'derived',
    note: 'the table itself is from memory; the fit gives 7.56 % at 65 %, inside the published 7-8 % (Morton & Hearle)',
  },
  regainExponent: { value: 0.4, unit: 'ratio', range: [0.37, 0.43], source: 'the same fit', mark: 'derived' },
  outsideF: { value: 70, unit: 'F', range: [40, 95], source: 'an autumn day at the gin', mark: 'assumption' },
  outsideHumidity: {
    value: 0.6,
    unit: 'fraction',
    range: [0.3, 0.9],
    source: 'an autumn day at the gin',
    mark: 'assumption',
  },
  meanRiseShare: {
    value: 0.5,
    unit: 'fraction',
    range: [0.4, 0.7],
    source: 'the air cools along the tower: mean temperature half way between the outside air and the inlet',
    mark: 'assumption',
  },
  exposureSeconds: {
    value: 5,
    unit: 's',
    range: [3, 15],
    source: 'chosen so that one or two dryers at about 180 F bring 9-10 % seed cotton to lint of 5.5-6.5 %',
    mark: 'assumption',
  },
  ratePerSecond: {
    value: 0.05,
    unit: '1/s',
    range: [0.03, 0.1],
    source:
      'lint of 13-17.5 % seed cotton to 7.4 % in 14 s in counter-flow air of 150-200 F (Hughs et al. 1985), first order to 2 %',
    mark: 'derived',
  },
  rateReferenceF: {
    value: 180,
    unit: 'F',
    range: [150, 200],
    source: 'middle of the air for which the rate was found',
    mark: 'derived',
  },
  ratePerF: {
    value: 0.004,
    unit: '1/F',
    range: [0, 0.008],
    source: 'the rate rises with temperature (Barker & Laird 1993, in kind)',
    mark: 'assumption',
  },
  seedDryingShare: {
    value: 0.05,
    unit: 'fraction',
    range: [0, 0.1],
    source: 'seed hardly dries in one pass (Laird & Barker 1995, in kind)',
    mark: 'assumption',
  },
  trashDryingShare: {
    value: 0.6,
    unit: 'fraction',
    range: [0.3, 0.9],
    source: 'burs and leaf dry at another rate than lint (Laird & Barker 1995, in kind)',
    mark: 'assumption',
  },
  harmlessF: {
    value: 200,
    unit: 'F',
    range: [200, 250],
    source: 'above 200 F damage grows, most as it nears 350 F (Anthony 2004)',
    mark: 'published',
  },
  hottestF: {
    value: 350,
    unit: 'F',
    source: 'above 200 F damage grows, most as it nears 350 F (Anthony 2004)',
    mark: 'published',
    note: 'that no dryer may pass it is remembered from USDA Agriculture Handbook 503',
  },
  breakagePerMmAtHottest: {
    value: 0.0015,
    unit: 'breaks/mm',
    range: [0.0005, 0.0025],
    source: 'about 0.1 mm of length for each 50 F; grows with the square so that most comes near 350 F',
    mark: 'assumption',
  },
} as const satisfies Record<string, Fact>;

/** Seed-cotton cleaning. */
export const cleaningFacts = {
  leafFactorPicked: {
    value: 1,
    unit: 'ratio',
    range: [0.7, 1],
    source: 'the leaf fractions are quoted for picked cotton; hairy or green leaf clings (0.7)',
    mark: 'assumption',
  },
  leafFactorStripped: {
    value: 1.5,
    unit: 'ratio',
    range: [1.2, 1.8],
    source: 'stripped cotton carries dry, frost-killed leaf that shakes out',
    mark: 'assumption',
  },
  mostRemoved: {
    value: 0.95,
    unit: 'fraction',
    range: [0.9, 1],
    source: 'no machine cleans perfectly',
    mark: 'assumption',
  },
  moistureSlope: {
    value: 0.05,
    unit: '1/point',
    range: [0.02, 0.08],
    source: 'wetter cotton keeps more trash (atomizing-nozzle study; Laird, Beltwide 2228, in kind)',
    mark: 'assumption',
  },
  moistureReferencePercent: {
    value: 6,
    unit: '% wet basis',
    range: [5, 7],
    source: 'lint moisture at which the removal tables are quoted',
    mark: 'assumption',
  },
  leastMoistureFactor: { value: 0.7, unit: 'ratio', range: [0.6, 0.8], source: 'held below this', mark: 'assumption' },
  mostMoistureFactor: { value: 1.2, unit: 'ratio', range: [1.1, 1.3], source: 'held above this', mark: 'assumption' },
  overflowShare: {
    value: 0.1,
    unit: 'fraction',
    range: [0.05, 0.15],
    source: 'the distributor must feed every stand a little too much; no share is published',
    mark: 'assumption',
  },
  loadingBalesPerHourFoot: {
    value: 2,
    unit: 'bales/(h ft)',
    range: [1.5, 4.5],
    source: 'recommended 1.5-2.5 bales an hour a foot; gins run to 4.5 (Hardin & Byler 2011)',
    mark: 'published',
  },
  fullLoading: {
    value: 2.5,
    unit: 'bales/(h ft)',
    source: 'upper end of the recommended loading (Hardin & Byler 2011)',
    mark: 'published',
  },
  removalLostPerLoading: {
    value: 0.05,
    unit: 'fraction',
    range: [0, 0.1],
    source: 'an overloaded cleaner cleans less, for each bale/(h ft) above',
    mark: 'assumption',
  },
  cottonLostPerLoading: {
    value: 0.4,
    unit: 'fraction',
    range: [0.2, 0.6],
    source: 'and throws out more seed cotton',
    mark: 'assumption',
  },
  nepsFactor: {
    value: 1.03,
    unit: 'ratio',
    range: [1, 1.06],
    source: 'neps rise a little in seed-cotton cleaning (Boykin & Ray 2010; Armijo et al. 2019, in kind)',
    mark: 'assumption',
  },
} as const satisfies Record<string, Fact>;

export const standFacts = {
  fullPaceToPercent: {
    value: 7.5,
    unit: '% wet basis',
    range: [7, 8],
    source:
      'gin at 6-8 % lint moisture (Hughs et al. 2004) or 6-7 % (cottonguide.org; Valco): between the two upper ends',
    mark: 'derived',
  },
  chokesAbovePercent: {
    value: 12,
    unit: '% wet basis',
    range: [10, 14],
    source: 'no limit at the stand is published; taken where seed cotton is too wet to store (Cotton Inc. 2021)',
    mark: 'assumption',
  },
  paceAtChoke: {
    value: 0.45,
    unit: 'fraction',
    range: [0.4, 0.7],
    source: '42 bales an hour from dry modules, 19 from modules that rain had wetted (Texas A&M, deltafarmpress.com)',
    mark: 'derived',
    note: 'the moisture of those modules is not given; it is taken as the choking limit',
  },
  rakedOutSlowPerPoint: {
    value: 0.005,
    unit: '1/point',
    range: [0.003, 0.01],
    source:
      'damp wads picked from a slowed stand; only the direction is known. Enough that the heavier seed and the trash left in damp lint pay nobody',
    mark: 'assumption',
  },
  rakedOutPerPoint: {
    value: 0.03,
    unit: '1/point',
    range: [0.01, 0.05],
    source:
      'on top of that, wads raked out of a choked roll and thrown on the trash; wet modules turned out 26 % lint where dry ones gave 34 (Texas A&M, deltafarmpress.com), in kind',
    mark: 'assumption',
  },
  mostRakedOut: {
    value: 0.25,
    unit: 'fraction',
    range: [0.2, 0.5],
    source: 'no crew goes on ginning what it loses more of; 26 over 34 is a loss of 0.24',
    mark: 'assumption',
  },
  sawNepsFactor: {
    value: 1.4,
    unit: 'ratio',
    range: [1.2, 1.6],
    source: 'fewer neps behind a roller (Gillum & Armijo 2007, in kind)',
    mark: 'assumption',
  },
  rollerNepsFactor: {
    value: 1,
    unit: 'ratio',
    range: [1, 1.1],
    source: 'the roller pulls; it makes few neps',
    mark: 'assumption',
  },
} as const satisfies Record<string, Fact>;

/** The oil mill: shares of the seed's weight. */
export const oilMillFacts = {
  oil: {
    value: 0.16,
    unit: 'fraction',
    range: [0.15, 0.17],
    source: 'about 320 lb a ton (oil-mill interview, farmprogress.com)',
    mark: 'published',
  },
  meal: {
    value: 0.45,
    unit: 'fraction',
    range: [0.43, 0.475],
    source: 'National Cottonseed Products Association',
    mark: 'memory',
  },
  hulls: {
    value: 0.265,
    unit: 'fraction',
    range: [0.26, 0.275],
    source: 'National Cottonseed Products Association',
    mark: 'memory',
  },
  linters: {
    value: 0.085,
    unit: 'fraction',
    range: [0.07, 0.09],
    source: 'National Cottonseed Products Association',
    mark: 'memory',
  },
  seedPaidToPercent: {
    value: 12,
    unit: '% wet basis',
    range: [10, 13],
    source:
      'seed keeps its oil up to 12 % and stores below 10 % (Cotton Inc., cottonseed pages); that damper seed is paid as if dried to 12 % is assumed',
    mark: 'assumption',
  },
  seedLbPerCubicFoot: {
    value: 25,
    unit: 'lb/ft3',
    range: [20, 30],
    source: 'gin-run seed 25 lb/ft3, 80 ft3 a ton (Cotton Inc., cottonseed characteristics)',
    mark: 'published',
    note: 'a sister page says 22 and 80, which do not agree',
  },
} as const satisfies Record<string, Fact>;

export const energyFacts = {
  sawKwh: {
    value: 39.5,
    unit: 'kWh/bale',
    range: [25.8, 39.5],
    source: '20-gin audit 2009 (Funk & Hardin 2012); 35.8 in 2010, 31.4 and 25.8 at two gins in 2011',
    mark: 'published',
  },
  rollerKwh: { value: 62.6, unit: 'kWh/bale', source: '20-gin audit 2009 (Funk & Hardin 2012)', mark: 'published' },
  firstDryerLitres: {
    value: 1.35,
    unit: 'L propane/bale',
    range: [1.25, 1.45],
    source: 'stage-1 dryer 1.25 and 1.45 at two gins, 2011 (Hardin & Funk)',
    mark: 'published',
  },
  secondDryerLitres: {
    value: 0.32,
    unit: 'L propane/bale',
    source: 'stage-2 dryer, 2011 (Hardin & Funk)',
    mark: 'published',
  },
  restorationLitres: {
    value: 0.635,
    unit: 'L propane/bale',
    range: [0.38, 0.89],
    source: 'moisture restoration 0.89 and 0.38 at two gins, 2011 (Hardin & Funk): mean',
    mark: 'derived',
  },
  ordinaryDryerF: {
    value: 180,
    unit: 'F',
    range: [150, 200],
    source: 'inlet air taken for those gins',
    mark: 'assumption',
  },
  propaneMjPerLitre: {
    value: 25.46,
    unit: 'MJ/L',
    range: [25.45, 25.5],
    source:
      '91,333 Btu a US gallon (US Energy Information Administration, Monthly Energy Review 2019); the trade says 91,500',
    mark: 'published',
  },
  nationalBales: {
    value: 19_122_000,
    unit: 'bales',
    source: 'US 1994/95 (EPA AP-42 section 9.7)',
    mark: 'published',
    note: '14,565 bales a gin in USDA ERS Stat. Bull. 929',
  },
  nationalGins: { value: 1306, unit: 'gins', source: 'US 1994/95 (EPA AP-42 section 9.7)', mark: 'published' },
} as const satisfies Record<string, Fact>;
