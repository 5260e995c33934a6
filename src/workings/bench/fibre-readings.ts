import type { WorkedBench } from '../../model/bench/work-bench.ts';
import { classCardFacts } from '../../model/length/class-card-facts.ts';
import { limitFacts } from '../../model/mill/facts.ts';
import { inchesFromMillimetres, MM_PER_INCH } from '../../model/units.ts';
import { constant, exact, formula, input, percent, procedure, read, step } from '../steps.ts';
import type { Step, Working } from '../working.ts';
import { type BenchReadings, chosen, onBench, reading } from './bench-reading.ts';

/** What the lengths were made to read: a card's two figures, or the bales laid together. */
function lengthSteps({ setUp }: WorkedBench): readonly Step[] {
  const { bales, card } = setUp;
  const spread = card.kind === 'pima' ? classCardFacts.pimaPeakSpread : classCardFacts.uplandPeakSpread;
  const peak = step('peakSpread', exact(spread.value), read(spread));
  if (bales.length > 0) return [step('balesLaid', { as: 'count', value: bales.length }, chosen), peak];
  return [
    step('cardLength', exact(card.lengthIn, 'inches'), chosen),
    step('cardUniformity', exact(card.uniformityPercent, 'percent'), chosen),
    peak,
  ];
}

const fineness = ({ fibre }: WorkedBench) => exact(fibre.linearDensityMtex, 'millitex');

function finenessWorking(bench: WorkedBench): Working {
  const { setUp, fibre } = bench;
  const value = { as: 'number', value: fibre.linearDensityMtex, decimals: 0 } as const;
  if (setUp.bales.length > 0)
    return procedure(
      [
        step('balesLaid', { as: 'count', value: setUp.bales.length }, chosen),
        step('harmonicMean', fineness(bench), onBench),
      ],
      value,
    );
  return formula(
    'nominalFineness',
    [input('m', 'cardMicronaire', exact(setUp.card.micronaire), chosen)],
    fineness(bench),
    value,
  );
}

function stapleLimitWorking(bench: WorkedBench): Working {
  const limit = bench.stapleLimitNe;
  return formula(
    'stapleLimit',
    [
      constant('a', 'stapleSlope', limitFacts.stapleSlopePerInch, 'none'),
      input('L', 'meanOfIndex', exact(bench.meanLengthIn, 'inches'), onBench),
      constant('b', 'finenessSlope', limitFacts.finenessSlope, 'none'),
      input('H', 'fibreFineness', fineness(bench), onBench),
      constant('c', 'stapleIntercept', limitFacts.stapleIntercept, 'ne'),
    ],
    exact(limit, 'ne'),
    { as: 'number', value: limit, decimals: 0 },
  );
}

/** Length, short fibre and fineness of a bench's lint. */
export const fibreReadings: BenchReadings = (bench) => {
  const { reading: read, shortByNumberPercent, fibre } = bench;
  const lengths = lengthSteps(bench);
  return [
    reading('staple', procedure(lengths, { as: 'fibreLength', value: read.upperHalfMeanMm })),
    reading(
      'meanLength',
      formula(
        'meanOfIndex',
        [
          input('L', 'upperHalfMean', exact(inchesFromMillimetres(read.upperHalfMeanMm), 'inches'), onBench),
          input('U', 'uniformity', exact(read.uniformityPercent, 'percent'), onBench),
        ],
        exact(bench.meanLengthIn, 'inches'),
        { as: 'fibreLength', value: bench.meanLengthIn * MM_PER_INCH },
      ),
    ),
    reading('shortFibre', procedure(lengths, percent(read.shortFibrePercentByWeight)), classCardFacts.uplandPeakSpread),
    reading('shortByNumber', procedure(lengths, percent(shortByNumberPercent)), classCardFacts.uplandPeakSpread),
    reading('fineness', finenessWorking(bench)),
    reading('stapleLimit', stapleLimitWorking(bench)),
    ...(fibre.strengthGPerTex > 0
      ? [
          reading(
            'strength',
            procedure([step('cardStrength', exact(fibre.strengthGPerTex, 'gramsPerTex'), chosen)], {
              as: 'strength',
              value: fibre.strengthGPerTex,
            }),
          ),
        ]
      : []),
  ];
};
