import { poundsFromKilograms } from '../units.ts';
import { handGinFacts } from './speed-facts.ts';

/**
 * Working days that one hand-cranked gin of 1793 takes for some lint, at the day's task.
 * @param lintKg lint as it leaves the seed, kg
 * @returns days, a fraction where the last is not full
 */
export const handGinDays = (lintKg: number): number => poundsFromKilograms(lintKg) / handGinFacts.lintLbPerDay.value;
