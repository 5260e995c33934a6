import type { Random } from '../random.ts';
import { kilogramsFromPounds } from '../units.ts';
import { pressFacts } from './press-facts.ts';

/**
 * Net weights of the bales a lot makes, kg, adding up to the lot exactly: as many as come nearest to the wanted weight, each
 * a few pounds off. A lot too small to be shared out evenly makes whole bales, and a light last one of what is left.
 * @param totalKg lint pressed, more than zero
 * @param wantedKg weight the pressman aims at
 */
export function baleWeightsKg(totalKg: number, wantedKg: number, random: Random): number[] {
  const nearest = Math.max(1, Math.round(totalKg / wantedKg));
  const even = Math.abs(totalKg / nearest / wantedKg - 1) <= pressFacts.oddWeightShare.value;
  if (even) return evenWeightsKg(totalKg, nearest, random);
  const whole = Math.floor(totalKg / wantedKg);
  return [...evenWeightsKg(whole * wantedKg, whole, random), totalKg - whole * wantedKg];
}

/** Shares a weight out over bales that are a few pounds apart; none for no bales. The last takes what rounding leaves. */
function evenWeightsKg(totalKg: number, count: number, random: Random): number[] {
  if (count === 0) return [];
  const limit = kilogramsFromPounds(pressFacts.weightLimitLb.value);
  const spread = kilogramsFromPounds(pressFacts.weightSpreadLb.value);
  const off = Array.from({ length: count }, () => Math.min(limit, Math.max(-limit, spread * random.normal())));
  const meanOff = off.reduce((sum, kg) => sum + kg, 0) / count;
  const weights: number[] = [];
  let left = totalKg;
  for (let i = 0; i < count - 1; i++) {
    const kg = totalKg / count + off[i]! - meanOff;
    weights.push(kg);
    left -= kg;
  }
  weights.push(left);
  return weights;
}
