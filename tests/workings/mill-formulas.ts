import fc from 'fast-check';
import { pliedVariationPercent } from '../../src/model/bench/bench-yarn.ts';
import { meanLengthIn } from '../../src/model/bench/work-bench.ts';
import { micronaireOf } from '../../src/model/fibre.ts';
import { micronaireFacts } from '../../src/model/fibre-facts.ts';
import { limitVariationPercent, yarnVariationPercent } from '../../src/model/mill/evenness.ts';
import {
  evennessFacts,
  fewestFibres,
  limitFacts,
  type SpinningSystem,
  strengthFacts,
} from '../../src/model/mill/facts.ts';
import { fibreEndsPerCm } from '../../src/model/mill/hairiness.ts';
import { fibresInSection, judgeCount, stapleLimitNe } from '../../src/model/mill/limits.ts';
import { strengthUse, yarnTenacityCnPerTex } from '../../src/model/mill/strength.ts';
import { turnsPerInch } from '../../src/model/mill/twist.ts';
import { MM_PER_INCH, nominalMtexFromMicronaire } from '../../src/model/units.ts';
import { always, type FormulaModel, from, letters, oneOf, type Values } from './formula-model.ts';

/** The finest whole count that the mill's judge finds for a system. */
const ceilingNe = (system: SpinningSystem, mtex: number) => Math.floor(judgeCount(system, 1, mtex, 1).ceilingNe);

/** Only a comber takes noil out. */
const ringSystem = (noil: number): SpinningSystem => (noil > 0 ? 'ringCombed' : 'ringCarded');

/** What the share of the fibre's strength that a yarn uses hangs on. */
const used: fc.Arbitrary<Values> = fc
  .record({ rotor: fc.boolean(), L: from(0.8, 1.6), n: from(30, 900), noil: from(0, 20) })
  .map(({ rotor, L, n, noil }) => ({
    h: (rotor ? strengthFacts.rotorUseHigh : strengthFacts.ringUseHigh).value,
    l: (rotor ? strengthFacts.rotorUseLow : strengthFacts.ringUseLow).value,
    u: (rotor ? strengthFacts.rotorUse : strengthFacts.ringUse).value,
    a: strengthFacts.usePerInch.value,
    L,
    q: strengthFacts.useReferenceInches.value,
    b: strengthFacts.usePerFibre.value,
    n,
    m: strengthFacts.useReferenceFibres.value,
    g: strengthFacts.gainPerNoilPoint.value,
    p: rotor ? 0 : noil,
  }));
const useOf = ({ u, L, n, p }: Values): number =>
  strengthUse(u === strengthFacts.rotorUse.value ? 'rotor' : ringSystem(p!), L!, n!, p!);

/** The formulas of the fibre and the yarn. */
export const millFormulas = {
  fibresInSection: {
    inputs: letters({ T: from(4, 150), H: from(100, 260) }),
    compute: ({ T, H }) => fibresInSection(T!, H!),
  },
  spinLimit: {
    inputs: letters({ n: oneOf([fewestFibres.ringCarded.value, fewestFibres.ringCombed.value]), H: from(100, 260) }),
    compute: ({ n, H }) => ceilingNe(n === fewestFibres.ringCarded.value ? 'ringCarded' : 'ringCombed', H!),
  },
  spinLimitRotor: {
    inputs: letters({ n: always(fewestFibres.rotor), H: from(100, 260), c: always(limitFacts.rotorHighestNe) }),
    compute: ({ H }) => ceilingNe('rotor', H!),
  },
  meanOfIndex: {
    inputs: letters({ L: from(0.8, 1.6), U: from(75, 87) }),
    compute: ({ L, U }) => meanLengthIn({ upperHalfMeanMm: L! * MM_PER_INCH, uniformityPercent: U! }),
  },
  nominalFineness: {
    inputs: letters({ m: from(2, 7) }),
    compute: ({ m }) => nominalMtexFromMicronaire(m!),
  },
  stapleLimit: {
    inputs: letters({
      a: always(limitFacts.stapleSlopePerInch),
      b: always(limitFacts.finenessSlope),
      c: always(limitFacts.stapleIntercept),
      L: from(0.6, 1.5),
      H: from(100, 260),
    }),
    compute: ({ L, H }) => stapleLimitNe(L!, H!),
  },
  pliedEvenness: {
    inputs: letters({ v: from(5, 30), k: from(1, 6) }),
    compute: ({ v, k }) => pliedVariationPercent(v!, k!),
  },
  randomEvenness: {
    inputs: letters({ f: always(evennessFacts.limitFactor), n: from(30, 900) }),
    compute: ({ n }) => limitVariationPercent(n!),
  },
  evenness: {
    inputs: fc
      .record({ rotor: fc.boolean(), n: from(30, 900), s: from(0, 30), noil: from(0, 20) })
      .map(({ rotor, n, s, noil }) => ({
        b: evennessFacts.bestIndex.value,
        n,
        v: limitVariationPercent(n),
        i: (rotor ? evennessFacts.rotorIndex : evennessFacts.ringCardedIndex).value,
        a: evennessFacts.indexPerShortFibrePoint.value,
        s,
        r: evennessFacts.shortFibreReferencePercent.value,
        k: evennessFacts.unevennessPerNoilPoint.value,
        u: evennessFacts.variationPerUnevenness.value,
        p: rotor ? 0 : noil,
      })),
    compute: ({ i, n, s, p }) =>
      yarnVariationPercent(i === evennessFacts.rotorIndex.value ? 'rotor' : ringSystem(p!), n!, s!, p!),
  },
  strengthUse: { inputs: used, compute: useOf },
  yarnStrength: {
    inputs: fc.tuple(used, from(20, 50)).map(([values, S]) => ({
      ...values,
      S,
      c: strengthFacts.centinewtonsPerGram.value,
      z: useOf(values),
    })),
    compute: ({ S, u, L, n, p }) =>
      yarnTenacityCnPerTex(u === strengthFacts.rotorUse.value ? 'rotor' : ringSystem(p!), S!, L!, n!, p!),
  },
  twist: {
    inputs: letters({ k: from(2, 6), N: from(4, 120) }),
    compute: ({ k, N }) => turnsPerInch(k!, N!),
  },
  fibreEnds: {
    inputs: letters({ n: from(30, 900), L: from(10, 40) }),
    compute: ({ n, L }) => fibreEndsPerCm(n!, L!),
  },
  micronaire: {
    inputs: letters({
      H: from(90, 260),
      M: from(0.5, 1.2),
      a: always(micronaireFacts.square),
      b: always(micronaireFacts.slope),
      c: always(micronaireFacts.constant),
    }),
    compute: ({ H, M }) => micronaireOf(H!, M!),
  },
} satisfies Readonly<Record<string, FormulaModel>>;
