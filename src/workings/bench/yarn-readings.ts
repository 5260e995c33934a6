import type { BenchYarn } from '../../model/bench/bench-yarn.ts';
import type { WorkedBench } from '../../model/bench/work-bench.ts';
import { readFibre } from '../../model/fibre.ts';
import { shortFibrePercent } from '../../model/length/statistics.ts';
import { totalDryKg } from '../../model/lot.ts';
import { comfortableFibres, fewestFibres, limitFacts, strengthFacts, twistTable } from '../../model/mill/facts.ts';
import type { Yarn } from '../../model/mill/yarn.ts';
import { inchesFromMillimetres, KG_PER_POUND } from '../../model/units.ts';
import { ceilingWorking, evennessOf, strengthOf } from '../of-yarn.ts';
import { above, exact, formula, input, mass, percent, procedure, read, step } from '../steps.ts';
import type { FormulaWorking, Step, Working } from '../working.ts';
import { type BenchReading, chosen, onBench, reading } from './bench-reading.ts';

const from = { yarn: onBench, fibre: onBench, noil: chosen };
const noilOf = (bench: WorkedBench): number => (bench.setUp.system === 'ringCombed' ? bench.setUp.noilPercent : 0);
const finenessOf = (bench: WorkedBench) =>
  input('H', 'fibreFineness', exact(bench.fibre.linearDensityMtex, 'millitex'), onBench);

/** What a count is judged by. */
export function verdictSteps(bench: WorkedBench, { spinning, singleNe }: BenchYarn): readonly Step[] {
  const { system } = bench.setUp;
  const { verdict } = spinning;
  return [
    step('countWanted', exact(singleNe, 'ne'), chosen),
    step('fibresInSection', exact(verdict.fibresInSection, 'fibres'), onBench),
    step('fewestFibres', exact(fewestFibres[system].value, 'fibres'), read(fewestFibres[system])),
    step('comfortableFibres', exact(comfortableFibres[system].value, 'fibres'), read(comfortableFibres[system])),
    ...(system === 'rotor'
      ? [step('rotorFinest', exact(limitFacts.rotorHighestNe.value, 'ne'), read(limitFacts.rotorHighestNe))]
      : [step('stapleLimit', exact(bench.stapleLimitNe, 'ne'), read(limitFacts.stapleSlopePerInch))]),
    ...(system === 'ringCombed'
      ? [step('combedAllowance', exact(limitFacts.combedAllowance.value), read(limitFacts.combedAllowance))]
      : []),
    step('comfortableNe', exact(verdict.comfortableNe, 'ne'), above),
    step('ceilingNe', exact(verdict.ceilingNe, 'ne'), above),
  ];
}

/** A single's evenness, and under it that of the plies together. */
function evennessWorking(bench: WorkedBench, yarn: BenchYarn, single: Yarn, cvPercent: number): Working {
  const carded = yarn.spinning.fibreAfter.find(({ after }) => after === 'card')?.fibre;
  const short = carded ? shortFibrePercent(carded.lengths, 'weight') : 0;
  const ofSingle = evennessOf(single, short, noilOf(bench), from);
  const { singles } = yarn.number;
  if (singles === 1) return ofSingle;
  return formula(
    'pliedEvenness',
    [
      input('v', 'singleUnevenness', exact(single.cvPercent, 'percent'), onBench),
      input('k', 'plies', exact(singles), chosen),
    ],
    exact(cvPercent, 'percent'),
    percent(cvPercent),
  );
}

/** What the mill takes of a pound of lint, machine by machine. */
function wasteReadings(bench: WorkedBench, { spinning }: BenchYarn): BenchReading[] {
  const boughtKg = totalDryKg(bench.lot.dryKg);
  const taken = spinning.steps.flatMap(({ machine, removed }) =>
    removed.map(({ account, masses }) => ({ machine, account, kg: totalDryKg(masses.dryKg) })),
  );
  return taken.map(({ machine, account, kg }) =>
    reading(
      `waste.${account}`,
      procedure(
        [
          step('dryBought', mass(boughtKg, 3), onBench),
          step({ account, side: 'out' }, mass(kg, 4), { at: 'machine', machine }),
        ],
        percent((100 * kg) / boughtKg),
      ),
    ),
  );
}

function realisationWorking(bench: WorkedBench, { spinning }: BenchYarn, share: number): Working {
  const boughtKg = totalDryKg(bench.lot.dryKg);
  const taken = spinning.steps.flatMap(({ machine, removed }) =>
    removed.map(({ account, masses }) =>
      step({ account, side: 'out' }, mass(totalDryKg(masses.dryKg), 4), { at: 'machine', machine }),
    ),
  );
  return procedure([step('dryBought', mass(boughtKg, 3), onBench), ...taken], {
    as: 'smallMass',
    value: share * KG_PER_POUND * 1000,
  });
}

function twistWorking({ twistMultiplier, singleNe, turnsPerInch }: BenchYarn, own: boolean): FormulaWorking {
  return formula(
    'twist',
    [
      input('k', 'twistMultiplier', exact(twistMultiplier), own ? chosen : read(twistTable)),
      input('N', 'countWanted', exact(singleNe, 'ne'), chosen),
    ],
    exact(turnsPerInch, 'turnsPerInch'),
    { as: 'threads', value: turnsPerInch },
  );
}

/** The figures of one yarn of a bench. @param isWeft the weft takes the table's twist */
export function yarnReadings(bench: WorkedBench, yarn: BenchYarn, isWeft: boolean): readonly BenchReading[] {
  const { spinning, number, singleNe, fibreEndsPerCm, cvPercent } = yarn;
  const { verdict, yarn: single } = spinning;
  const limits = verdictSteps(bench, yarn);
  const upperHalfIn = inchesFromMillimetres(readFibre(spinning.lot.fibre).upperHalfMeanMm);
  return [
    reading('verdict', procedure(limits, { as: 'word', list: 'spinVerdicts', word: verdict.status })),
    reading('comfortable', procedure(limits, { as: 'number', value: Math.max(0, Math.floor(verdict.comfortableNe)) })),
    reading(
      'count',
      procedure(
        [
          step('singleCount', exact(singleNe, 'ne'), chosen),
          step('plies', exact(number.singles), chosen),
          step('yarnTex', exact(number.resultantTex, 'tex'), above),
        ],
        { as: 'number', value: number.resultantTex, decimals: 1 },
      ),
    ),
    reading(
      'fibresInSection',
      formula(
        'fibresInSection',
        [input('T', 'yarnTex', exact(number.singleTex, 'tex'), chosen), finenessOf(bench)],
        exact(verdict.fibresInSection, 'fibres'),
        { as: 'count', value: verdict.fibresInSection },
      ),
    ),
    reading('ceiling', ceilingWorking(bench.setUp.system, verdict, finenessOf(bench))),
    reading('turns', twistWorking(yarn, !isWeft && bench.setUp.twist !== null)),
    ...(single && cvPercent !== null && fibreEndsPerCm !== null
      ? [
          reading('evenness', evennessWorking(bench, yarn, single, cvPercent), {
            source: limitNote,
            mark: 'assumption',
          }),
          reading(
            'tenacity',
            strengthOf(single, spinning.lot.fibre.strengthGPerTex, upperHalfIn, noilOf(bench), from),
            strengthFacts.ringUse,
          ),
          reading(
            'fibreEnds',
            formula(
              'fibreEnds',
              [
                input('n', 'fibresInSection', exact(single.fibresInSection * number.singles, 'fibres'), onBench),
                input('L', 'meanLength', exact(single.meanFibreLengthMm, 'millimetres'), onBench),
              ],
              exact(fibreEndsPerCm, 'endsPerCm'),
              { as: 'count', value: fibreEndsPerCm },
            ),
          ),
        ]
      : []),
    ...(spinning.yarnRealisation !== null
      ? [
          reading('realisation', realisationWorking(bench, yarn, spinning.yarnRealisation)),
          ...wasteReadings(bench, yarn),
        ]
      : []),
  ];
}

const limitNote =
  'good for medium counts, 10s to 40s: one index serves all, so coarse yarn comes out too even and fine combed yarn too uneven';
