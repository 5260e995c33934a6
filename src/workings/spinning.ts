import { readFibre } from '../model/fibre.ts';
import { shortFibrePercent } from '../model/length/statistics.ts';
import { totalDryKg } from '../model/lot.ts';
import { limitVariationPercent } from '../model/mill/evenness.ts';
import {
  comfortableFibres,
  evennessFacts,
  fewestFibres,
  limitFacts,
  strengthFacts,
  twistTable,
} from '../model/mill/facts.ts';
import type { SpinningOutcome } from '../model/mill/spin.ts';
import { strengthUse } from '../model/mill/strength.ts';
import type { Yarn } from '../model/mill/yarn.ts';
import type { Season } from '../model/season.ts';
import { inchesFromMillimetres, TEX_TIMES_NE } from '../model/units.ts';
import {
  above,
  atStation,
  between,
  constant,
  decided,
  exact,
  formula,
  inLedger,
  input,
  mass,
  percent,
  procedure,
  read,
  type StationWorkings,
  step,
} from './steps.ts';
import type { Input, Origin, Working } from './working.ts';

const at = atStation('spinning');
const ofFibre: Origin = { at: 'fibre' };
const spun = (working: (spinning: SpinningOutcome, season: Season) => Working | null) => (season: Season) =>
  season.spinning ? working(season.spinning, season) : null;
const yarned = (working: (yarn: Yarn, season: Season, spinning: SpinningOutcome) => Working | null) =>
  spun((spinning, season) => (spinning.yarn ? working(spinning.yarn, season, spinning) : null));

/** The lint as it came in bales: the limit is judged on that. */
const bought = ({ classing }: Season): Input =>
  input('H', 'fibreFineness', exact(classing?.lot.fibre.linearDensityMtex ?? 0, 'millitex'), ofFibre);
const noilOf = ({ combed }: Yarn, { scenario }: Season): number =>
  combed ? scenario.decisions.spinning.noilPercent : 0;

function limitWorking({ verdict }: SpinningOutcome, season: Season): Working {
  const { system } = season.scenario.decisions.spinning;
  const ceiling = Math.floor(verdict.ceilingNe);
  const inputs = [bought(season), constant('n', 'fewestFibres', fewestFibres[system], 'fibres')];
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

function evennessWorking(yarn: Yarn, season: Season, spinning: SpinningOutcome): Working {
  const facts = evennessFacts;
  const carded = spinning.fibreAfter.find(({ after }) => after === 'card')?.fibre;
  const short = carded ? shortFibrePercent(carded.lengths, 'weight') : 0;
  return formula(
    'evenness',
    [
      constant('b', 'bestIndex', facts.bestIndex, 'none'),
      constant('f', 'randomFactor', facts.limitFactor, 'percent'),
      input('n', 'fibresInSection', exact(yarn.fibresInSection, 'fibres'), at),
      constant('i', 'unevenIndex', yarn.system === 'rotor' ? facts.rotorIndex : facts.ringCardedIndex, 'none'),
      constant('a', 'indexPerShort', facts.indexPerShortFibrePoint, 'percentPerPoint'),
      input('s', 'shortAfterCard', exact(short, 'percent'), ofFibre),
      constant('r', 'shortUsual', facts.shortFibreReferencePercent, 'percent'),
      constant('k', 'unevenPerNoil', facts.unevennessPerNoilPoint, 'percentPerPoint'),
      constant('u', 'cvPerU', facts.variationPerUnevenness, 'none'),
      input('p', 'noil', exact(noilOf(yarn, season), 'percent'), decided('spinning')),
    ],
    exact(yarn.cvPercent, 'percent'),
    percent(yarn.cvPercent),
    [between('randomEvenness', 'v', 'unevenAtRandom', exact(limitVariationPercent(yarn.fibresInSection), 'percent'))],
  );
}

function strengthWorking(yarn: Yarn, season: Season, { lot }: SpinningOutcome): Working {
  const facts = strengthFacts;
  const rotor = yarn.system === 'rotor';
  const upperHalf = inchesFromMillimetres(readFibre(lot.fibre).upperHalfMeanMm);
  const noil = noilOf(yarn, season);
  const used = strengthUse(yarn.system, upperHalf, yarn.fibresInSection, noil);
  return formula(
    'yarnStrength',
    [
      input('S', 'fibreStrength', exact(lot.fibre.strengthGPerTex, 'gramsPerTex'), ofFibre),
      constant('c', 'gravity', facts.centinewtonsPerGram, 'cNPerGram'),
      constant('h', 'useMost', rotor ? facts.rotorUseHigh : facts.ringUseHigh, 'fraction'),
      constant('l', 'useLeast', rotor ? facts.rotorUseLow : facts.ringUseLow, 'fraction'),
      constant('u', 'useUsual', rotor ? facts.rotorUse : facts.ringUse, 'fraction'),
      constant('a', 'usePerInch', facts.usePerInch, 'perInch'),
      input('L', 'upperHalfMean', exact(upperHalf, 'inches'), ofFibre),
      constant('q', 'usualLength', facts.useReferenceInches, 'inches'),
      constant('b', 'usePerFibre', facts.usePerFibre, 'perFibre'),
      input('n', 'fibresInSection', exact(yarn.fibresInSection, 'fibres'), at),
      constant('m', 'usualFibres', facts.useReferenceFibres, 'fibres'),
      constant('g', 'gainPerNoil', facts.gainPerNoilPoint, 'percentPerPoint'),
      input('p', 'noil', exact(noil, 'percent'), decided('spinning')),
    ],
    exact(yarn.tenacityCnPerTex, 'centinewtonsPerTex'),
    { as: 'yarnStrength', value: yarn.tenacityCnPerTex },
    [between('strengthUse', 'z', 'strengthUsed', exact(used, 'fraction'))],
  );
}

export const spinningWorkings: StationWorkings = {
  verdict: spun(({ verdict }, { scenario }) => {
    const { system, countNe } = scenario.decisions.spinning;
    const ne = (value: number) => exact(value, 'ne');
    return procedure(
      [
        step('countWanted', ne(countNe), decided('spinning')),
        step('fibresInSection', exact(verdict.fibresInSection, 'fibres'), at),
        step('fewestFibres', exact(fewestFibres[system].value, 'fibres'), read(fewestFibres[system])),
        step('comfortableFibres', exact(comfortableFibres[system].value, 'fibres'), read(comfortableFibres[system])),
        step('comfortableNe', ne(verdict.comfortableNe), above),
        step('ceilingNe', ne(verdict.ceilingNe), above),
      ],
      { as: 'word', list: 'spinVerdicts', word: verdict.status },
    );
  }),
  limit: spun(limitWorking),
  fibresInSection: spun(({ verdict }, season) => {
    const tex = TEX_TIMES_NE / season.scenario.decisions.spinning.countNe;
    return formula(
      'fibresInSection',
      [input('T', 'yarnTex', exact(tex, 'tex'), decided('spinning')), bought(season)],
      exact(verdict.fibresInSection, 'fibres'),
      { as: 'count', value: verdict.fibresInSection },
    );
  }),
  evenness: yarned(evennessWorking),
  tenacity: yarned(strengthWorking),
  twist: yarned((yarn) =>
    formula(
      'twist',
      [
        input('k', 'twistMultiplier', exact(yarn.twistMultiplier), read(twistTable)),
        input('N', 'countWanted', exact(yarn.ne, 'ne'), decided('spinning')),
      ],
      exact(yarn.turnsPerInch, 'turnsPerInch'),
      { as: 'threads', value: yarn.turnsPerInch },
    ),
  ),
  fuzz: yarned((yarn) =>
    formula(
      'fibreEnds',
      [
        input('n', 'fibresInSection', exact(yarn.fibresInSection, 'fibres'), at),
        input('L', 'meanLength', exact(yarn.meanFibreLengthMm, 'millimetres'), ofFibre),
      ],
      exact(yarn.fibreEndsPerCm, 'endsPerCm'),
      { as: 'count', value: yarn.fibreEndsPerCm },
    ),
  ),
  realisation: spun(({ steps, yarnRealisation }, { classing }) => {
    const made = steps.at(-1);
    if (yarnRealisation === null || !made || !classing) return null;
    const boughtKg = totalDryKg(classing.lot.dryKg);
    const spunKg = totalDryKg(made.out.dryKg);
    const taken = steps.flatMap(({ machine, removed }) =>
      removed.map(({ account, masses }) =>
        step({ account, side: 'out' }, mass(totalDryKg(masses.dryKg)), { at: 'machine', machine }),
      ),
    );
    return procedure(
      [
        step('dryBought', mass(boughtKg), inLedger('spinning')),
        ...taken,
        step('dryYarn', mass(spunKg), inLedger('spinning')),
      ],
      percent((100 * spunKg) / boughtKg),
    );
  }),
};
