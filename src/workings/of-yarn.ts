import { limitVariationPercent } from '../model/mill/evenness.ts';
import { evennessFacts, fewestFibres, limitFacts, type SpinningSystem, strengthFacts } from '../model/mill/facts.ts';
import type { SpinningVerdict } from '../model/mill/limits.ts';
import { strengthUse } from '../model/mill/strength.ts';
import type { Yarn } from '../model/mill/yarn.ts';
import { between, constant, exact, formula, input, percent } from './steps.ts';
import type { Input, Origin, Working } from './working.ts';

/** Where the inputs of a yarn's figures come from: the yarn itself, its fibre, and the noil that was chosen. */
export interface YarnOrigins {
  readonly yarn: Origin;
  readonly fibre: Origin;
  readonly noil: Origin;
}

/** Finest whole count that a system can spin of a fibre. @param fineness the fibre's linear density, as letter H */
export function ceilingWorking(system: SpinningSystem, verdict: SpinningVerdict, fineness: Input): Working {
  const ceiling = Math.floor(verdict.ceilingNe);
  const inputs = [fineness, constant('n', 'fewestFibres', fewestFibres[system], 'fibres')];
  const result = { as: 'yarnCount', value: ceiling } as const;
  return system === 'rotor'
    ? formula(
        'spinLimitRotor',
        [...inputs, constant('c', 'rotorFinest', limitFacts.rotorHighestNe, 'ne')],
        exact(ceiling, 'ne'),
        result,
      )
    : formula('spinLimit', inputs, exact(ceiling, 'ne'), result);
}

/** Unevenness of a single. @param shortAfterCard percent by weight @param noil percent, 0 where there is no comber */
export function evennessOf(yarn: Yarn, shortAfterCard: number, noil: number, from: YarnOrigins): Working {
  const facts = evennessFacts;
  return formula(
    'evenness',
    [
      constant('b', 'bestIndex', facts.bestIndex, 'none'),
      constant('f', 'randomFactor', facts.limitFactor, 'percent'),
      input('n', 'fibresInSection', exact(yarn.fibresInSection, 'fibres'), from.yarn),
      constant('i', 'unevenIndex', yarn.system === 'rotor' ? facts.rotorIndex : facts.ringCardedIndex, 'none'),
      constant('a', 'indexPerShort', facts.indexPerShortFibrePoint, 'percentPerPoint'),
      input('s', 'shortAfterCard', exact(shortAfterCard, 'percent'), from.fibre),
      constant('r', 'shortUsual', facts.shortFibreReferencePercent, 'percent'),
      constant('k', 'unevenPerNoil', facts.unevennessPerNoilPoint, 'percentPerPoint'),
      constant('u', 'cvPerU', facts.variationPerUnevenness, 'none'),
      input('p', 'noil', exact(noil, 'percent'), from.noil),
    ],
    exact(yarn.cvPercent, 'percent'),
    percent(yarn.cvPercent),
    [between('randomEvenness', 'v', 'unevenAtRandom', exact(limitVariationPercent(yarn.fibresInSection), 'percent'))],
  );
}

/** Strength of a single. @param upperHalfIn length of the fibre that is spun, in @param noil percent, 0 without a comber */
export function strengthOf(
  yarn: Yarn,
  strengthGPerTex: number,
  upperHalfIn: number,
  noil: number,
  from: YarnOrigins,
): Working {
  const facts = strengthFacts;
  const rotor = yarn.system === 'rotor';
  return formula(
    'yarnStrength',
    [
      input('S', 'fibreStrength', exact(strengthGPerTex, 'gramsPerTex'), from.fibre),
      constant('c', 'gravity', facts.centinewtonsPerGram, 'cNPerGram'),
      constant('h', 'useMost', rotor ? facts.rotorUseHigh : facts.ringUseHigh, 'fraction'),
      constant('l', 'useLeast', rotor ? facts.rotorUseLow : facts.ringUseLow, 'fraction'),
      constant('u', 'useUsual', rotor ? facts.rotorUse : facts.ringUse, 'fraction'),
      constant('a', 'usePerInch', facts.usePerInch, 'perInch'),
      input('L', 'upperHalfMean', exact(upperHalfIn, 'inches'), from.fibre),
      constant('q', 'usualLength', facts.useReferenceInches, 'inches'),
      constant('b', 'usePerFibre', facts.usePerFibre, 'perFibre'),
      input('n', 'fibresInSection', exact(yarn.fibresInSection, 'fibres'), from.yarn),
      constant('m', 'usualFibres', facts.useReferenceFibres, 'fibres'),
      constant('g', 'gainPerNoil', facts.gainPerNoilPoint, 'percentPerPoint'),
      input('p', 'noil', exact(noil, 'percent'), from.noil),
    ],
    exact(yarn.tenacityCnPerTex, 'centinewtonsPerTex'),
    { as: 'yarnStrength', value: yarn.tenacityCnPerTex },
    [
      between(
        'strengthUse',
        'z',
        'strengthUsed',
        exact(strengthUse(yarn.system, upperHalfIn, yarn.fibresInSection, noil), 'fraction'),
      ),
    ],
  );
}
