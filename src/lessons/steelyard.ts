import { labourFacts, steelyardFacts } from '../model/harvest/labour-facts.ts';

/**
 * Where the poise hangs when the beam is level: load times its arm is poise times its arm (Archimedes' law of the lever).
 * @param loadLb weight on the hook, lb
 * @returns inches from the point of hanging
 */
export const poiseInches = (loadLb: number): number =>
  (loadLb * steelyardFacts.hookArmIn.value) / steelyardFacts.poiseLb.value;

/** Open bolls in some seed cotton, the fewest and the most: as many to the pound as a record of the time says. */
export const bollsInPounds = (pounds: number): { readonly fewest: number; readonly most: number } => ({
  fewest: pounds * labourFacts.fewestBollsPerPound.value,
  most: pounds * labourFacts.mostBollsPerPound.value,
});
