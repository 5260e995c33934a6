import type { Fact, Facts, FactTable } from '../fact.ts';

/** The three ways of spinning the model knows. */
export const spinningSystems = ['ringCarded', 'ringCombed', 'rotor'] as const;
export type SpinningSystem = (typeof spinningSystems)[number];
export type BySystem = Readonly<Record<SpinningSystem, Fact>>;

const rieterFibres =
  'Rieter encyclopaedia (The Rieter Manual of Spinning, W. Klein), "Number of fibres in the yarn cross-section"';

/** Fewest fibres in the section with which yarn can be spun at all. */
export const fewestFibres: BySystem = {
  ringCarded: { value: 75, unit: 'fibres', range: [60, 80], source: rieterFibres, mark: 'published' },
  ringCombed: {
    value: 33,
    unit: 'fibres',
    range: [33, 60],
    source: rieterFibres,
    mark: 'published',
    note: 'the Cotton Guide (International Trade Centre) gives about 50 for ring yarn of either kind',
  },
  rotor: { value: 100, unit: 'fibres', range: [90, 120], source: rieterFibres, mark: 'published' },
};

/** Fibres in the section from which spinning runs without strain. */
export const comfortableFibres: BySystem = {
  ringCarded: {
    value: 80,
    unit: 'fibres',
    range: [75, 100],
    source: 'a little above the published fewest of 75',
    mark: 'assumption',
  },
  ringCombed: {
    value: 50,
    unit: 'fibres',
    range: [33, 60],
    source: 'Cotton Guide, International Trade Centre, ch. 2 "Fineness": ring about half of 100',
    mark: 'published',
  },
  rotor: {
    value: 120,
    unit: 'fibres',
    range: [90, 120],
    source: 'Rieter encyclopaedia, "Rotor spinning: fibre count": 90 to 110, up to 120',
    mark: 'published',
  },
};

const indian =
  'Indian Central Cotton Committee spinning-value formula (Indian cottons of about the 1930s), as printed at textilecalculation.blogspot.com, 2015';

export const limitFacts = {
  stapleSlopePerInch: { value: 78.2, unit: 'Ne/in', source: indian, mark: 'published' },
  finenessSlope: { value: 79.2, unit: 'Ne per 1e-6 oz/in', source: indian, mark: 'published' },
  stapleIntercept: {
    value: 24.8,
    unit: 'Ne',
    source: indian,
    mark: 'published',
    note: 'extrapolates poorly past a mean length of 1.2 in',
  },
  combedAllowance: {
    value: 1.15,
    unit: 'ratio',
    range: [1, 1.3],
    source: 'combed lint spins finer than the carded lint the formula was made for; the size is ours',
    mark: 'assumption',
  },
  rotorHighestNe: {
    value: 40,
    unit: 'Ne',
    range: [30, 60],
    source: 'commercial rotor yarn seldom goes finer; the line is ours',
    mark: 'assumption',
  },
} as const satisfies Facts;

/** What a yarn is twisted for. */
export type YarnUse = 'knitting' | 'weft' | 'semiWarp' | 'warp';
/** Twist multipliers (turns per inch / sqrt Ne) by use: middle of the printed range at each staple class. */
export const twistTable: FactTable<{ use: YarnUse; short: number; medium: number; long: number }> = {
  rows: [
    { use: 'knitting', short: 3.0, medium: 2.75, long: 2.35 },
    { use: 'weft', short: 3.55, medium: 3.25, long: 2.75 },
    { use: 'semiWarp', short: 3.85, medium: 3.65, long: 3.2 },
    { use: 'warp', short: 4.5, medium: 4.15, long: 3.65 },
  ],
  unit: 'turns per inch / sqrt(Ne)',
  source: 'Rieter Manual vol. 1, twist-coefficient table; rows re-assigned, since the scan scrambles its columns',
  mark: 'published',
  note: 'no short-staple value is printed for knitting; the top of the medium range (3.0) stands in',
};

const stapleChart =
  'short to 1.01 in, medium 1.02 to 1.13, medium to long 1.14 to 1.23, long from 1.24 (staple chart, textilesbar.com)';
export const twistFacts = {
  shortStapleInches: {
    value: 1.0,
    unit: 'in',
    range: [0.99, 1.01],
    source: `longest of the short staples: ${stapleChart}`,
    mark: 'published',
  },
  mediumStapleInches: {
    value: 1.075,
    unit: 'in',
    range: [1.02, 1.13],
    source: `middle of the medium staples: ${stapleChart}`,
    mark: 'published',
  },
  longStapleInches: {
    value: 1.16,
    unit: 'in',
    range: [1.12, 1.2],
    source: 'edge of the long-staple class',
    mark: 'memory',
  },
  rotorFactor: {
    value: 1.175,
    unit: 'ratio',
    range: [1.1, 1.25],
    source: 'rotor yarn needs 10 to 25 % more twist; Rieter Manual vol. 5',
    mark: 'memory',
  },
} as const satisfies Facts;

const rieterTenacity =
  'Rieter encyclopaedia, "Count-related yarn tenacity": ring uses 50 to 65 % of fibre strength, rotor 45 to 55 %';

export const strengthFacts = {
  ringUseLow: { value: 0.5, unit: 'fraction', source: rieterTenacity, mark: 'published' },
  ringUseHigh: { value: 0.65, unit: 'fraction', source: rieterTenacity, mark: 'published' },
  rotorUseLow: { value: 0.45, unit: 'fraction', source: rieterTenacity, mark: 'published' },
  rotorUseHigh: { value: 0.55, unit: 'fraction', source: rieterTenacity, mark: 'published' },
  ringUse: {
    value: 0.54,
    unit: 'fraction',
    range: [0.5, 0.65],
    source: 'carded yarn of medium staple, low in the published band so that combing has room',
    mark: 'assumption',
  },
  rotorUse: {
    value: 0.47,
    unit: 'fraction',
    range: [0.45, 0.55],
    source: 'rotor yarn 10 to 20 % weaker than ring (Rieter encyclopaedia, "Count-related yarn tenacity")',
    mark: 'derived',
  },
  usePerInch: {
    value: 0.15,
    unit: '1/in',
    range: [0.05, 0.3],
    source: 'longer staple holds better; size ours, inside the published band',
    mark: 'assumption',
  },
  useReferenceInches: {
    value: 1.1,
    unit: 'in',
    range: [1, 1.2],
    source: 'staple at which the slope is zero',
    mark: 'assumption',
  },
  gainPerNoilPoint: {
    value: 0.01,
    unit: '1/% noil',
    range: [0.005, 0.012],
    source: 'mill norms: each 1 % more noil about +1 % lea strength (scribd 108105499)',
    mark: 'published',
  },
  usePerFibre: {
    value: 0.0003,
    unit: '1/fibre',
    range: [0, 0.001],
    source: 'more fibres share the load; size ours',
    mark: 'assumption',
  },
  useReferenceFibres: {
    value: 100,
    unit: 'fibres',
    range: [50, 150],
    source: 'section at which the slope is zero',
    mark: 'assumption',
  },
  centinewtonsPerGram: {
    value: 0.980665,
    unit: 'cN/tex per gf/tex',
    source: 'standard gravity, exact',
    mark: 'derived',
  },
  bundleEfficiency: {
    value: 0.7,
    unit: 'fraction',
    range: [0.65, 0.75],
    source: 'share of single-yarn strength that a lea of 160 strands shows',
    mark: 'memory',
  },
  leaStrands: {
    value: 160,
    unit: 'strands',
    source: 'a lea is 80 turns, each held twice; GNU units skeincotton 120 yd',
    mark: 'published',
  },
  newtonsPerPound: { value: 4.4482216, unit: 'N/lbf', source: 'pound and standard gravity', mark: 'derived' },
} as const satisfies Facts;

export const evennessFacts = {
  limitFactor: {
    value: 106,
    unit: '%',
    range: [100, 106],
    source:
      'Martindale limit for cotton; the only factor that gives the key of GATE 2006 Q43 (Indian Institutes of Technology)',
    mark: 'published',
    note: 'one handbook (Texcoms 2023 p. 141) prints 100 for cotton; its list looks shifted by a row',
  },
  ringCardedIndex: {
    value: 1.55,
    unit: 'ratio',
    range: [1.2, 1.8],
    source: 'actual over limit unevenness, carded ring yarn',
    mark: 'assumption',
  },
  rotorIndex: {
    value: 1.45,
    unit: 'ratio',
    range: [1.2, 1.8],
    source: 'actual over limit unevenness, rotor yarn',
    mark: 'assumption',
  },
  indexPerShortFibrePoint: {
    value: 0.01,
    unit: '1/point',
    range: [0, 0.03],
    source: 'unevenness rises with short fibre (Thibodeaux et al., J. Cotton Sci. 12:368-377, 2008); the size is ours',
    mark: 'assumption',
  },
  shortFibreReferencePercent: {
    value: 8.5,
    unit: '%',
    range: [7, 10],
    source: 'carded medium upland',
    mark: 'assumption',
  },
  unevennessPerNoilPoint: {
    value: 0.15,
    unit: 'U % per % noil',
    source: 'mill norms: each 1 % more noil about -0.15 U % (scribd 108105499)',
    mark: 'published',
  },
  variationPerUnevenness: {
    value: 1.25,
    unit: 'CV/U',
    source: 'Texcoms Textile Technical Handbook 2023, p. 147: CV = 1.25 U',
    mark: 'published',
  },
  bestIndex: {
    value: 1.1,
    unit: 'ratio',
    range: [1, 1.2],
    source: 'no spun yarn reaches the random limit',
    mark: 'assumption',
  },
} as const satisfies Facts;

export const millRegain = {
  value: 0.085,
  unit: 'water per dry mass',
  range: [0.07, 0.085],
  source: 'commercial regain of cotton, ASTM D1909 as tabled by Shuvo, Bioresources & Bioprocessing 7 (2020), table 10',
  mark: 'published',
  note: 'a trading convention; cotton in air of 65 % humidity holds 7 to 8 %',
} as const satisfies Fact;
