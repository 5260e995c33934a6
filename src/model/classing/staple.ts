import type { CottonKind } from '../fibre.ts';
import { stapleChart } from './staple-facts.ts';

/**
 * Staple code, thirty-seconds of an inch. The length is rounded to a hundredth of an inch first, as the office does:
 * 1.17 in is 37 and 1.18 in is 38, and neither is a plain multiple of 1/32 in.
 * @param lengthIn upper half mean length, in
 */
export function stapleCode32nds(kind: CottonKind, lengthIn: number): number {
  const hundredths = Math.round(lengthIn * 100);
  let code = stapleChart[kind].rows[0]!.code32nds;
  for (const step of stapleChart[kind].rows) if (hundredths >= step.fromHundredths) code = step.code32nds;
  return code;
}
