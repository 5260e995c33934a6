import { readFibre } from '../model/fibre.ts';
import { shortFibrePercent } from '../model/length/statistics.ts';
import { totalDryKg } from '../model/lot.ts';
import { comfortableFibres, fewestFibres, twistTable } from '../model/mill/facts.ts';
import type { SpinningOutcome } from '../model/mill/spin.ts';
import type { Yarn } from '../model/mill/yarn.ts';
import type { Season } from '../model/season.ts';
import { inchesFromMillimetres, TEX_TIMES_NE } from '../model/units.ts';
import { ceilingWorking, evennessOf, strengthOf } from './of-yarn.ts';
import {
  above,
  atStation,
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

const from = { yarn: at, fibre: ofFibre, noil: decided('spinning') };

function evennessWorking(yarn: Yarn, season: Season, spinning: SpinningOutcome): Working {
  const carded = spinning.fibreAfter.find(({ after }) => after === 'card')?.fibre;
  return evennessOf(yarn, carded ? shortFibrePercent(carded.lengths, 'weight') : 0, noilOf(yarn, season), from);
}

function strengthWorking(yarn: Yarn, season: Season, { lot }: SpinningOutcome): Working {
  const upperHalf = inchesFromMillimetres(readFibre(lot.fibre).upperHalfMeanMm);
  return strengthOf(yarn, lot.fibre.strengthGPerTex, upperHalf, noilOf(yarn, season), from);
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
  limit: spun(({ verdict }, season) =>
    ceilingWorking(season.scenario.decisions.spinning.system, verdict, bought(season)),
  ),
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
