import type { Fibre } from '../model/fibre.ts';
import { lintLostFraction, removeWasteFibre } from '../model/gin/lint-cleaner.ts';
import { readBeard } from '../model/length/beard.ts';
import { breakByLength } from '../model/length/breakage.ts';
import { machineBreakagePerMm } from '../model/length/facts.ts';
import { type LengthDistribution, lengthAtMm } from '../model/length/length-distribution.ts';
import { meanLengthMm, shareBelow, shortFibrePercent } from '../model/length/statistics.ts';
import type { Check } from './check.ts';
import { between, near } from './expected.ts';
import { type CottonName, cottonAt, type Place, uplands } from './fixtures/cottons.ts';
import { type FibreFigure, meanByWeight, shortByWeight, uniformity, upperHalfMean } from './fixtures/fibre-figures.ts';
import { once } from './fixtures/once.ts';

/** What a figure gains from one place to another. */
const gain = (figure: FibreFigure, cotton: CottonName, from: Place, to: Place) => () =>
  figure(cottonAt(cotton, to)) - figure(cottonAt(cotton, from));
const armijo = 'Armijo et al. 2019, J. Cotton Sci. 23:66-77';
const cleaners = [1, 2, 3] as const;
const beforeCleaner = (stage: 1 | 2 | 3): Place => (stage === 1 ? 'saw' : `saw+${(stage - 1) as 1 | 2}`);
/** Change of a figure for each point of lint moisture at the machines, from 3.7 to 6.9 %. */
const perMoisturePoint = (figure: FibreFigure) => () =>
  (figure(cottonAt('medium', 'saw+2', 6.9)) - figure(cottonAt('medium', 'saw+2', 3.7))) / (6.9 - 3.7);
/** Share by weight between two lengths of the array, mm. */
const bandShare = ({ lengths }: Fibre, fromMm: number, toMm: number) =>
  shareBelow(lengths, toMm, 'weight') - shareBelow(lengths, fromMm, 'weight');
const stages: readonly Place[] = ['roller', 'saw', 'saw+1', 'saw+2', 'saw+3'];
// The published band, 22.1 to 25.4 mm, is taken as read by an instrument that shows 0.945 of the array length.
const [bandFrom, bandTo] = [23.4, 26.9];
/** Extra breakage before the gin that gives the published gain of short fibre. */
const stripped = once((): LengthDistribution => {
  const picked = cottonAt('medium', 'saw+2').lengths;
  return breakByLength(picked, machineBreakagePerMm.stripper.value);
});
/** Two saw lint cleaners that break less, so that the bale has so much less short fibre. */
const gentle = once((): Fibre => {
  const wanted = shortByWeight(cottonAt('medium', 'saw+2')) - 1.16;
  const cleaned = (share: number): Fibre => {
    let { lengths } = cottonAt('medium', 'saw');
    for (const stage of [1, 2] as const) {
      const broken = breakByLength(lengths, machineBreakagePerMm.sawLintCleaner.value * share);
      lengths = removeWasteFibre(broken, lintLostFraction('saw', stage)).kept;
    }
    return { ...cottonAt('medium', 'saw'), lengths };
  };
  let [low, high] = [0, 1];
  for (let i = 0; i < 12; i++) {
    const middle = (low + high) / 2;
    if (shortByWeight(cleaned(middle)) < wanted) low = middle;
    else high = middle;
  }
  return cleaned((low + high) / 2);
});
/** Share shorter than a length in a mixture of two Weibull laws. */
const twoWeibulls = (x: number, [weight, k1, b1, k2, b2]: readonly number[]) =>
  1 - weight! * Math.exp(-((x / b1!) ** k1!)) - (1 - weight!) * Math.exp(-((x / b2!) ** k2!));
const mixtures = [
  ['boll', [0.294, 1.28, 13.6, 6.03, 30.7]],
  ['saw', [0.385, 1.33, 13.3, 5.74, 30.1]],
  ['saw+2', [0.457, 1.46, 14.1, 5.48, 29.4]],
  ['saw+3', [0.489, 1.49, 14.1, 5.33, 29.0]],
] as const;
const farthest = (place: Place, law: readonly number[]) => {
  const { lengths } = cottonAt('medium', place);
  let most = 0;
  for (let i = 0; i < lengths.length; i++) {
    const x = lengthAtMm(i);
    most = Math.max(most, Math.abs(shareBelow(lengths, x, 'number') - twoWeibulls(x, law)));
  }
  return most;
};
/** How deep the dip between the short end and the peak of the number curve is: the dip over the peak; 1 where there is no peak. */
function dipOverPeak({ lengths }: Fibre): number {
  const from = lengths.findIndex((_, i) => lengthAtMm(i) >= 8);
  const tail = Array.from(lengths.slice(from));
  const peak = tail.indexOf(Math.max(...tail));
  const dip = Math.min(...tail.slice(0, peak + 1));
  return dip / tail[peak]!;
}
const shredded = once((): Fibre => {
  const fibre = cottonAt('medium', 'saw+3');
  return { ...fibre, lengths: breakByLength(fibre.lengths, 0.03) };
});

/** What the gin's machines do to lengths: what their breakage was fitted to, and what it was not. */
export const lengthShiftChecks: readonly Check[] = [
  ...uplands.flatMap((cotton) =>
    cleaners.flatMap((stage): Check[] => [
      {
        id: `length/23.uniformity-${cotton}-${stage}`,
        link: 'length',
        kind: 'calibrated',
        what: `saw lint cleaner ${stage} on ${cotton} upland changes uniformity`,
        source: armijo,
        unit: 'points',
        expected: between(-1.1, -0.4),
        ours: gain(uniformity, cotton, beforeCleaner(stage), `saw+${stage}`),
      },
      {
        id: `length/23.short-${cotton}-${stage}`,
        link: 'length',
        kind: 'calibrated',
        what: `saw lint cleaner ${stage} on ${cotton} upland adds short fiber by weight`,
        source: 'Baker, Beltwide abstract 1267: one cleaner hardly, three clearly (range derived)',
        unit: 'points',
        expected: between(0.5, 1.5),
        ours: gain(shortByWeight, cotton, beforeCleaner(stage), `saw+${stage}`),
      },
    ]),
  ),
  ...cleaners.map(
    (stage): Check => ({
      id: `length/24.${stage}`,
      link: 'length',
      kind: 'calibrated',
      what: `saw lint cleaner ${stage} on medium upland shortens the upper half mean`,
      source: 'Baker, Beltwide abstract 1267: two and three cleaners cut length (range derived)',
      unit: 'mm',
      expected: between(-0.6, -0.2),
      ours: gain(upperHalfMean, 'medium', beforeCleaner(stage), `saw+${stage}`),
    }),
  ),
  ...uplands.map(
    (cotton): Check => ({
      id: `length/25.${cotton}`,
      link: 'length',
      kind: 'calibrated',
      what: `saw against roller stand on ${cotton} upland: uniformity`,
      source: armijo,
      unit: 'points',
      // Short upland lies just outside, inside the rounding of the table.
      expected: between(-2, -0.75),
      ours: gain(uniformity, cotton, 'roller', 'saw'),
    }),
  ),
  {
    id: 'length/26',
    link: 'length',
    kind: 'knownMiss',
    what: 'saw against roller stand on medium upland: upper half mean length',
    source: `${armijo}: one staple code, 1/32 in`,
    unit: 'mm',
    expected: near(-0.8, 0.25),
    recorded: { value: -0.32, tolerance: 0.02 },
    reason:
      'breakage that takes 0.8 mm would cost 2.7 points of uniformity, where 1.2 was published; a steeper rate at the stand alone would meet both but move the length at which shares turn',
    ours: gain(upperHalfMean, 'medium', 'roller', 'saw'),
  },
  {
    id: 'length/28',
    link: 'length',
    kind: 'calibrated',
    what: 'short fiber by weight for each point of lint moisture at the gin, 3.7 to 6.9 %',
    source: '78-bale atomizing-nozzle study',
    unit: 'points',
    expected: near(-0.5, 0.12),
    ours: perMoisturePoint(shortByWeight),
  },
  {
    id: 'length/29',
    link: 'length',
    kind: 'knownMiss',
    what: 'mean length by weight as lint moisture at the gin goes from 4.8 to 5.6 %',
    source: 'Byler 2005',
    unit: 'mm',
    expected: near(0.4, 0.1),
    recorded: { value: 0.25, tolerance: 0.02 },
    reason:
      'a slope that gives the published length doubles the published gain of short fiber: other cottons, other instruments',
    ours: () => meanByWeight(cottonAt('medium', 'saw+2', 5.6)) - meanByWeight(cottonAt('medium', 'saw+2', 4.8)),
  },
  ...cleaners.map(
    (stage): Check => ({
      id: `length/30.${stage}`,
      link: 'length',
      kind: 'calibrated',
      what: `waste of saw lint cleaner ${stage} on medium upland: share at or below 12.7 mm by weight`,
      source: 'Hughs, Armijo & Foulk 2013, J. Cotton Sci. 17:115',
      unit: '%',
      expected: between(33, 100),
      ours: () => {
        const broken = breakByLength(
          cottonAt('medium', beforeCleaner(stage)).lengths,
          machineBreakagePerMm.sawLintCleaner.value,
        );
        return shortFibrePercent(removeWasteFibre(broken, lintLostFraction('saw', stage)).removed, 'weight');
      },
    }),
  ),
  {
    id: 'length/31.constant-band',
    link: 'length',
    kind: 'notTuned',
    what: 'roller stand, saw stand, saw with one to three lint cleaners: how far the share in 23.4 to 26.9 mm of the array wanders',
    source:
      'Hughs, Armijo & Foulk 2013, J. Cotton Sci. 17:115: about constant between 22.1 and 25.4 mm as an instrument reads',
    unit: 'fraction of the weight',
    expected: between(0, 0.012),
    ours: () => {
      const shares = stages.map((place) => bandShare(cottonAt('medium', place), bandFrom, bandTo));
      return Math.max(...shares) - Math.min(...shares);
    },
  },
  {
    id: 'length/31.above',
    link: 'length',
    kind: 'notTuned',
    what: 'from roller stand to saw with three lint cleaners the share above 26.9 mm of the array falls',
    source: 'Hughs, Armijo & Foulk 2013, J. Cotton Sci. 17:115, in kind',
    unit: 'fraction of the weight',
    expected: between(0.1, 0.3),
    ours: () =>
      bandShare(cottonAt('medium', 'roller'), bandTo, 99) - bandShare(cottonAt('medium', 'saw+3'), bandTo, 99),
  },
  {
    id: 'length/32.short',
    link: 'length',
    kind: 'calibrated',
    what: 'stripper instead of picker adds short fiber by weight',
    source: 'ASAE, Alternate harvesting systems and cotton quality',
    unit: 'points',
    expected: near(0.9, 0.15),
    ours: () => shortFibrePercent(stripped(), 'weight') - shortByWeight(cottonAt('medium', 'saw+2')),
  },
  {
    id: 'length/32.mean',
    link: 'length',
    kind: 'notTuned',
    what: 'stripper instead of picker, by the breakage that gives the published short fiber: mean length by weight',
    source: 'ASAE, Alternate harvesting systems and cotton quality',
    unit: 'mm',
    expected: near(-0.4, 0.1),
    ours: () => meanLengthMm(stripped(), 'weight') - meanByWeight(cottonAt('medium', 'saw+2')),
  },
  {
    id: 'length/32.uniformity',
    link: 'length',
    kind: 'knownMiss',
    what: 'stripper instead of picker, by the breakage that gives the published short fiber: uniformity',
    source: 'ASAE, Alternate harvesting systems and cotton quality: uniformity ratio',
    unit: 'points',
    expected: near(-0.9, 0.2),
    recorded: { value: -0.6, tolerance: 0.05 },
    reason: 'the ratio of the old span lengths is not the uniformity index of today',
    ours: () => readBeard(stripped()).uniformityPercent - uniformity(cottonAt('medium', 'saw+2')),
  },
  {
    id: 'length/33',
    link: 'length',
    kind: 'notTuned',
    what: 'lint moistened from 5 to 7 % between stand and two lint cleaners: uniformity',
    source: armijo,
    unit: 'points',
    expected: near(0.5, 0.15),
    ours: () => uniformity(cottonAt('medium', 'saw+2', 5, 7)) - uniformity(cottonAt('medium', 'saw+2', 5, 5)),
  },
  {
    id: 'length/roller-cleaner',
    link: 'length',
    kind: 'calibrated',
    what: 'roller-type lint cleaner on medium upland: uniformity',
    source: armijo,
    unit: 'points',
    expected: between(-0.8, -0.2),
    ours: gain(uniformity, 'medium', 'roller', 'roller+1'),
  },
  {
    id: 'length/34.upper-half-mean',
    link: 'length',
    kind: 'knownMiss',
    what: 'gentle lint cleaners with 1.16 points less short fiber: upper half mean length',
    source: 'modified lint cleaner, CSIRO and CRDC (insidecotton.com)',
    unit: 'mm',
    expected: near(0.53, 0.15),
    recorded: { value: 0.24, tolerance: 0.03 },
    reason: 'the calibrated breakage gives half of the published length for the same short fiber',
    ours: () => upperHalfMean(gentle()) - upperHalfMean(cottonAt('medium', 'saw+2')),
  },
  {
    id: 'length/34.uniformity',
    link: 'length',
    kind: 'knownMiss',
    what: 'gentle lint cleaners with 1.16 points less short fiber: uniformity',
    source: 'modified lint cleaner, CSIRO and CRDC (insidecotton.com)',
    unit: 'points',
    expected: near(1.34, 0.3),
    recorded: { value: 0.76, tolerance: 0.05 },
    reason: 'the calibrated breakage gives half of the published uniformity for the same short fiber',
    ours: () => uniformity(gentle()) - uniformity(cottonAt('medium', 'saw+2')),
  },
  {
    id: 'length/short-one-cleaner',
    link: 'length',
    kind: 'knownMiss',
    what: 'one saw lint cleaner on medium upland: short fiber by weight grows by a share of what it was',
    source: 'Anthony 2000, USDA ARS 102070',
    unit: '%',
    expected: near(50, 15),
    recorded: { value: 12, tolerance: 1 },
    reason: 'published trials differ threefold; the model keeps to those that find half a point to a point and a half',
    ours: () => 100 * (shortByWeight(cottonAt('medium', 'saw+1')) / shortByWeight(cottonAt('medium', 'saw')) - 1),
  },
  ...mixtures.map(
    ([place, law]): Check => ({
      id: `length/35.${place}`,
      link: 'length',
      kind: 'notTuned',
      what: `medium upland, ${place}: farthest that the number curve lies from a mixture of two Weibull laws`,
      source: 'Cui et al. 2007, World Cotton Research Conference 4, in kind; the mixture fitted by hand (derived)',
      unit: 'fraction',
      expected: between(0, 0.01),
      ours: () => farthest(place, law),
    }),
  ),
  {
    id: 'length/36.dip',
    link: 'length',
    kind: 'notTuned',
    what: 'number curve of medium upland: dip over peak, saw with three lint cleaners less the boll: the peak sinks',
    source: 'Krifa, Cotton fiber length distribution modality alteration in ginning and mill processing, in kind',
    unit: 'ratio',
    expected: between(0.1, 0.5),
    ours: () => dipOverPeak(cottonAt('medium', 'saw+3')) - dipOverPeak(cottonAt('medium', 'boll')),
  },
  {
    id: 'length/36.gone',
    link: 'length',
    kind: 'notTuned',
    what: 'number curve of medium upland torn to more than 23 % short fiber: dip over peak, 1 where no peak is left',
    source: 'Krifa, Cotton fiber length distribution modality alteration in ginning and mill processing, in kind',
    unit: 'ratio',
    expected: near(1, 1e-9),
    ours: () => (shortByWeight(shredded()) > 23 ? dipOverPeak(shredded()) : Number.NaN),
  },
];
