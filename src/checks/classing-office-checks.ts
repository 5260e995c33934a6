import { agreementPercent, repeatability } from '../model/classing/agreement.ts';
import { readyToTest } from '../model/classing/conditioning.ts';
import { shortFibreIndex, spinningConsistencyIndex } from '../model/classing/fibre-indices.ts';
import { averageModule, type InstrumentReading, testBale } from '../model/classing/reading.ts';
import { micronaireOf } from '../model/fibre.ts';
import { baleTag } from '../model/gin/bale-tag.ts';
import { openStream } from '../model/random.ts';
import type { Check } from './check.ts';
import { is, near } from './expected.ts';
import { standardDeviation } from './fixtures/sample-statistics.ts';

type Row = Omit<Exclude<Check, { kind: 'knownMiss' }>, 'link'>;
const row = (check: Row): Check => ({ link: 'classing', ...check });

const dumas = 'USDA AMS Dumas module averaging report';
/** Published agreement of module means with a check test, percent; ours is that of one test with another. */
const singleTests = [
  ['micronaire', 88, 84.3],
  ['strengthGPerTex', 93, 89.7],
  ['lengthIn', 92, 88.4],
] as const;
const agrees = (channel: string) => repeatability().find((each) => each.channel === channel)!.secondTestAgreesPercent;

const truth: InstrumentReading = {
  lengthIn: 1.11,
  uniformityPercent: 81.5,
  strengthGPerTex: 29,
  micronaire: 4.4,
  reflectanceRd: 76,
  yellownessB: 8.5,
  trashAreaPercent: 0.4,
};
/** Strength of bales tested singly and as the mean of modules of 13 of the same cotton. */
function noiseRatio(): number {
  const random = openStream(13, 'classing');
  const single: number[] = [];
  const averaged: number[] = [];
  for (let module = 0; module < 500; module++) {
    const tests = Array.from({ length: 13 }, () => testBale(truth, random));
    single.push(...tests.map(({ strengthGPerTex }) => strengthGPerTex));
    averaged.push(averageModule(tests)[0]!.strengthGPerTex);
  }
  return standardDeviation(single) / standardDeviation(averaged);
}

const lord = 'Lord 1956, Journal of the Textile Institute (from memory)';

/** Tags, the office's air and noise, and its indices. */
export const classingOfficeChecks: readonly Check[] = [
  row({
    id: 'C20.digits',
    kind: 'definition',
    what: 'digits of a permanent bale tag: five of the gin and seven of the bale',
    source: 'Permanent Bale Identification tag numbering system, National Cotton Council',
    unit: 'digits',
    expected: near(12, 0),
    ours: () => baleTag(35_001).length,
  }),
  row({
    id: 'C20.last',
    kind: 'definition',
    what: 'last seven digits of the 20,001st bale',
    source: 'Permanent Bale Identification tag numbering system, National Cotton Council',
    unit: '',
    expected: is('0020001'),
    ours: () => baleTag(20_001).slice(5),
  }),
  ...(
    [
      [6.5, 'waits'],
      [6.75, 'is tested'],
      [8.25, 'is tested'],
      [8.3, 'waits'],
    ] as const
  ).map(([moisture, word]) =>
    row({
      id: `C21.${moisture}`,
      kind: 'definition',
      what: `a sample at ${moisture} % moisture, dry basis`,
      source: 'AMS/Cotton Incorporated, Quality and Reliability of Classification Data',
      unit: '',
      expected: is(word),
      ours: () => (readyToTest(moisture) ? 'is tested' : 'waits'),
    }),
  ),
  row({
    id: 'C34',
    kind: 'calibrated',
    what: 'two single short fiber tests agree within 1.0 point',
    source: 'Knowlton, Beltwide 2002',
    unit: '% of pairs',
    expected: near(57, 2),
    ours: () => agrees('shortFibreIndex'),
  }),
  row({
    id: 'C35',
    kind: 'plainSum',
    what: 'strength readings whose difference has a standard deviation of .83 g/tex agree within 1.5',
    source: `${dumas}; the deviation follows from its 93 %`,
    unit: '% of pairs',
    expected: near(93, 1),
    ours: () => agreementPercent(0.83, 1.5),
  }),
  row({
    id: 'classing/agree-uniformity',
    kind: 'calibrated',
    what: 'two single uniformity tests agree within 1.0 point; the source has module means against a check',
    source: dumas,
    unit: '% of pairs',
    expected: near(94, 2),
    ours: () => agrees('uniformityPercent'),
  }),
  ...singleTests.map(
    ([channel, percent, value]): Check => ({
      id: `classing/agree-${channel}`,
      link: 'classing',
      kind: 'knownMiss',
      what: `two single tests of ${channel.replace(/[A-Z].*/, '')} agree within the office's tolerance`,
      source: dumas,
      unit: '% of pairs',
      expected: near(percent, 2),
      recorded: { value, tolerance: 0.1 },
      reason: 'the published figure is that of a module mean against a check test; one test repeats less often',
      ours: () => agrees(channel),
    }),
  ),
  ...(
    [
      [0.5, 0.5205, 1e-4],
      [1, 0.8427, 1e-4],
      [1.5, 0.9661, 1e-4],
    ] as const
  ).map(([x, value, tolerance]) =>
    row({
      id: `classing/error-function-${x}`,
      kind: 'exact',
      what: `share of readings within ${x} root-two standard deviations`,
      source: 'simple-statistics 7.12.1',
      unit: 'fraction',
      expected: near(value, tolerance),
      tool: { name: 'simple-statistics', call: `errorFunction(${x})` },
      ours: () => agreementPercent(1, x * Math.SQRT2) / 100,
    }),
  ),
  row({
    id: 'C40.noise',
    kind: 'definition',
    what: 'strength of single tests over module means of 13 bales of one cotton, standard deviations, as a share of the root of 13',
    source: dumas,
    unit: 'ratio',
    expected: near(1, 0.1),
    ours: () => noiseRatio() / Math.sqrt(13),
  }),
  row({
    id: 'C40.same',
    kind: 'definition',
    what: 'different strengths on the records of a module of 13 averaged bales',
    source: dumas,
    unit: 'strengths',
    expected: near(1, 0),
    ours: () => {
      const random = openStream(13, 'classing');
      const means = averageModule(Array.from({ length: 13 }, () => testBale(truth, random)));
      return new Set(means.map(({ strengthGPerTex }) => strengthGPerTex)).size;
    },
  }),
  row({
    id: 'C38',
    kind: 'definition',
    what: 'spinning consistency index at 29 g/tex, 4.4, 1.11 in, 81.5 %, Rd 76, +b 8.5',
    source: 'formula in a mill handout, signs from memory',
    unit: 'index',
    expected: near(121.8, 0.1),
    ours: () => spinningConsistencyIndex(truth),
  }),
  row({
    id: 'mill/21',
    kind: 'definition',
    what: 'spinning consistency index at 30 g/tex, 4.3, 1.12 in, 82 %, Rd 76, +b 8.5',
    source: 'formula as printed alike in four unrelated public code bases',
    unit: 'index',
    expected: near(128.46, 0.01),
    ours: () =>
      spinningConsistencyIndex({
        ...truth,
        strengthGPerTex: 30,
        micronaire: 4.3,
        lengthIn: 1.12,
        uniformityPercent: 82,
      }),
  }),
  row({
    id: 'classing/short-fibre-index',
    kind: 'definition',
    what: 'short fiber index at 1.11 in and 81.5 %',
    source: 'USDA formula, from memory',
    unit: '%',
    expected: near(8.8, 0.05),
    ours: () => shortFibreIndex(1.11, 81.5)!,
  }),
  // Maturity ratio and fineness that the relation gives by hand for a standard fineness of 195 mtex.
  ...(
    [
      [3, 141.2, 0.724],
      [4.2, 175.2, 0.898],
      [5, 197.6, 1.013],
    ] as const
  ).map(([micronaire, mtex, maturity]) =>
    row({
      id: `classing/lord-${micronaire}`,
      kind: 'plainSum',
      what: `fiber of ${mtex} mtex and maturity ratio ${maturity}: micronaire`,
      source: lord,
      unit: 'micronaire',
      expected: near(micronaire, 0.005),
      ours: () => micronaireOf(mtex, maturity),
    }),
  ),
];
