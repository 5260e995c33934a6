import { bollFacts, stageFacts } from './facts.ts';

/**
 * Mass of a boll over its final mass.
 * @param ageDays on the boll's own clock: it opens at 45
 */
export function massFraction(ageDays: number): number {
  const { wallBeginsDays, wallBeginsMass, elongatedDays, elongatedMass } = bollFacts;
  const line = (fromAge: number, fromMass: number, toAge: number, toMass: number) =>
    fromMass + ((toMass - fromMass) * (ageDays - fromAge)) / (toAge - fromAge);
  if (ageDays <= 0) return 0;
  if (ageDays < wallBeginsDays.value) return line(0, 0, wallBeginsDays.value, wallBeginsMass.value);
  if (ageDays < elongatedDays.value) {
    return line(wallBeginsDays.value, wallBeginsMass.value, elongatedDays.value, elongatedMass.value);
  }
  return Math.min(1, line(elongatedDays.value, elongatedMass.value, stageFacts.matureAgeDays.value, 1));
}

/**
 * Length of a boll's fibres over their full length: they are full when the fitted curve ends (Kinetics of Cell Elongation, 1973).
 * The curve itself is not at hand, so a straight line stands for it.
 * @param ageDays on the boll's own clock
 */
export const lengthFraction = (ageDays: number): number =>
  Math.min(1, Math.max(0, ageDays / bollFacts.elongatedDays.value));

/** Seeds of a boll set and grown under this mean stress (0 to 1), against a boll that lacked nothing. */
export const seedsUnderStress = (stress: number): number => 1 - bollFacts.seedsLostDry.value * stress;

/**
 * Lint and seed on each seed, against a full one: maturity, water and warmth while the wall was laid down.
 * @param fillGain mean relative gain of the temperatures in fill
 */
export const fillOf = (ageDays: number, stress: number, fillGain: number): number =>
  massFraction(ageDays) *
  Math.max(bollFacts.leastFill.value, (1 - bollFacts.fillLostDry.value * stress) * (1 + fillGain));
