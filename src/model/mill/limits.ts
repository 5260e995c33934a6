import type { Fact } from '../fact.ts';
import { GRAMS_PER_OUNCE, KILO, MM_PER_INCH, nominalMtexFromMicronaire, TEX_TIMES_NE } from '../units.ts';
import { comfortableFibres, fewestFibres, limitFacts, type SpinningSystem } from './facts.ts';

/** Fibres side by side in the yarn: yarn linear density over fibre linear density. */
export const fibresInSection = (yarnTex: number, fibreMtex: number): number => (yarnTex * KILO) / fibreMtex;

/** The count at which a number of fibres is left in the section, Ne. */
const neAtFibres = (fibres: number, fibreMtex: number): number => (TEX_TIMES_NE * KILO) / (fibres * fibreMtex);

/** Finest count a system can spin from a fibre, Ne: where the section holds the fewest fibres it can run with. */
export const ceilingNe = (system: SpinningSystem, fibreMtex: number): number =>
  neAtFibres(fewestFibres[system].value, fibreMtex);

/**
 * Highest standard warp count that staple and fineness allow, Ne; may fall below zero for very short fibre.
 * HSC = 78.2 L - 79.2 W - 24.8, W the fibre's weight in 1e-6 oz per inch. Source: Indian Central Cotton Committee.
 */
export function stapleLimitNe(meanLengthInches: number, fibreMtex: number): number {
  // Micrograms over the micrograms in a millionth of an ounce, which are as many as the grams in an ounce.
  const microOuncesPerInch = (fibreMtex * MM_PER_INCH) / KILO / GRAMS_PER_OUNCE;
  const { stapleSlopePerInch, finenessSlope, stapleIntercept } = limitFacts;
  return stapleSlopePerInch.value * meanLengthInches - finenessSlope.value * microOuncesPerInch - stapleIntercept.value;
}

/** Finest count by system for a typed class card, Ne: micronaire taken at its nominal 39.37 mtex a unit. */
export function limitNeOfClassCard(micronaire: number): Readonly<Record<SpinningSystem, number>> {
  const mtex = nominalMtexFromMicronaire(micronaire);
  return {
    ringCarded: ceilingNe('ringCarded', mtex),
    ringCombed: ceilingNe('ringCombed', mtex),
    rotor: Math.min(ceilingNe('rotor', mtex), limitFacts.rotorHighestNe.value),
  };
}

/** What holds a count back: fibres in the section, staple length, or what rotor spinning goes to. */
export type SpinningReason = 'fibresInSection' | 'staple' | 'rotorCount';

/** Whether a count can be spun, and what binds. */
export interface SpinningVerdict {
  readonly status: 'comfortable' | 'strained' | 'impossible';
  /** The binding limit; null when comfortable. */
  readonly reason: SpinningReason | null;
  readonly fibresInSection: number;
  readonly fewestFibres: number;
  /** Finest count that can be spun at all, Ne. */
  readonly ceilingNe: number;
  /** Finest count without strain, Ne; may be below any count in use for very short fibre. */
  readonly comfortableNe: number;
  /** Nearest whole count that can be spun, Ne: the count itself where it can. */
  readonly nearestFeasibleNe: number;
}

interface Limit {
  readonly reason: SpinningReason;
  readonly ne: number;
}
const lowest = (limits: readonly Limit[]): Limit => limits.reduce((a, b) => (b.ne < a.ne ? b : a));

/**
 * Judges a count.
 * @param fibreMtex true linear density of the fibre
 * @param meanLengthInches mean length of the lint in the bale, as the uniformity index gives it
 */
export function judgeCount(
  system: SpinningSystem,
  countNe: number,
  fibreMtex: number,
  meanLengthInches: number,
): SpinningVerdict {
  const hard: Limit[] = [{ reason: 'fibresInSection', ne: ceilingNe(system, fibreMtex) }];
  const soft: Limit[] = [{ reason: 'fibresInSection', ne: neAtFibres(comfortableFibres[system].value, fibreMtex) }];
  if (system === 'rotor') hard.push({ reason: 'rotorCount', ne: limitFacts.rotorHighestNe.value });
  else {
    const allowance = system === 'ringCombed' ? limitFacts.combedAllowance.value : 1;
    soft.push({ reason: 'staple', ne: stapleLimitNe(meanLengthInches, fibreMtex) * allowance });
  }
  const ceiling = lowest(hard);
  const comfort = lowest([...hard, ...soft]);
  const status = countNe > ceiling.ne ? 'impossible' : countNe > comfort.ne ? 'strained' : 'comfortable';
  return {
    status,
    reason: status === 'impossible' ? ceiling.reason : status === 'strained' ? comfort.reason : null,
    fibresInSection: fibresInSection(TEX_TIMES_NE / countNe, fibreMtex),
    fewestFibres: fewestFibres[system].value,
    ceilingNe: ceiling.ne,
    comfortableNe: comfort.ne,
    nearestFeasibleNe: status === 'impossible' ? Math.floor(ceiling.ne) : countNe,
  };
}

/** The constant behind the limit that binds a count; null where the count spins with ease. */
export function bindingFact(
  system: SpinningSystem,
  { status, reason }: Pick<SpinningVerdict, 'status' | 'reason'>,
): Fact | null {
  switch (reason) {
    case 'staple':
      return limitFacts.stapleSlopePerInch;
    case 'rotorCount':
      return limitFacts.rotorHighestNe;
    case 'fibresInSection':
      return (status === 'impossible' ? fewestFibres : comfortableFibres)[system];
    case null:
      return null;
  }
}
