import { comfortableFibres, type SpinningSystem, twistFacts } from '../../model/mill/facts.ts';
import type { Yarn } from '../../model/mill/yarn.ts';
import { combing, type SpunThread, spunThread } from '../spun-threads.ts';
import type { Computed } from './computed.ts';

/** The count at which the three ways of spinning are set side by side: that of the example season. */
const comparedNe = 30;

const spun = new Map<SpinningSystem, SpunThread>();
function compared(system: SpinningSystem): SpunThread {
  const known = spun.get(system) ?? spunThread(system, comparedNe);
  spun.set(system, known);
  return known;
}

/** @throws Error when the example cotton cannot be spun so fine this way */
function yarnOf(system: SpinningSystem): Yarn {
  const { yarn } = compared(system);
  if (!yarn) throw new Error(`the example cotton makes no Ne ${comparedNe} by ${system}`);
  return yarn;
}

export const threadQuantities = {
  'comb-takes-fibers': { as: 'plain', value: () => combing().fibresTakenPercent, decimals: 0 },
  'comb-takes-weight': { as: 'percentage', value: () => combing().weightTakenPercent, decimals: 0 },
  'comb-short-before': { as: 'plain', value: () => combing().shortBeforePercent, decimals: 0 },
  'comb-short-after': { as: 'plain', value: () => combing().shortAfterPercent, decimals: 0 },
  'thread-per-pound-carded': { as: 'distance', value: () => compared('ringCarded').kilometresPerPound ?? 0 },
  'thread-per-pound-combed': { as: 'distance', value: () => compared('ringCombed').kilometresPerPound ?? 0 },
  'strength-carded': { as: 'yarnStrength', value: () => yarnOf('ringCarded').tenacityCnPerTex },
  'strength-combed': { as: 'yarnStrength', value: () => yarnOf('ringCombed').tenacityCnPerTex },
  'strength-rotor': { as: 'yarnStrength', value: () => yarnOf('rotor').tenacityCnPerTex },
  'finest-carded': {
    as: 'yarnCount',
    value: () => Math.floor(compared('ringCarded').comfortableNe),
    restsOn: comfortableFibres.ringCarded,
  },
  'finest-combed': {
    as: 'yarnCount',
    value: () => Math.floor(compared('ringCombed').comfortableNe),
    restsOn: comfortableFibres.ringCombed,
  },
  'finest-rotor': {
    as: 'yarnCount',
    value: () => Math.floor(compared('rotor').comfortableNe),
    restsOn: comfortableFibres.rotor,
  },
  'turns-ring': { as: 'plain', value: () => yarnOf('ringCarded').turnsPerInch, decimals: 0 },
  'turns-rotor': {
    as: 'plain',
    value: () => yarnOf('rotor').turnsPerInch,
    decimals: 0,
    restsOn: twistFacts.rotorFactor,
  },
} as const satisfies Readonly<Record<string, Computed>>;
