import type { Random } from '../random.ts';
import { kilogramsFromPounds } from '../units.ts';
import { pressFacts } from './facts.ts';

/**
 * Net weights of the bales a lot makes, kg: as many as come nearest to the wanted weight, each a few pounds off, adding up
 * to the lot exactly (the last bale takes what rounding leaves).
 * @param totalKg lint pressed, more than zero
 * @param wantedKg weight the pressman aims at
 */
export function baleWeightsKg(totalKg: number, wantedKg: number, random: Random): number[] {
  const count = Math.max(1, Math.round(totalKg / wantedKg));
  const limit = kilogramsFromPounds(pressFacts.weightLimitLb.value);
  const spread = kilogramsFromPounds(pressFacts.weightSpreadLb.value);
  const off = Array.from({ length: count }, () => Math.min(limit, Math.max(-limit, spread * random.normal())));
  const meanOff = off.reduce((sum, kg) => sum + kg, 0) / count;
  // A very light bale is never pushed below a few pounds of its share.
  const scale = Math.min(1, totalKg / count / wantedKg);
  const weights: number[] = [];
  let left = totalKg;
  for (let i = 0; i < count - 1; i++) {
    const kg = totalKg / count + (off[i]! - meanOff) * scale;
    weights.push(kg);
    left -= kg;
  }
  weights.push(left);
  return weights;
}
