import { breakageLaw } from './facts.ts';
import { type LengthDistribution, lengthAtMm, lengthCount, stepMm } from './length-distribution.ts';

const breakageExponent = breakageLaw.exponent.value;
const machineSteps = breakageLaw.steps.value;
const referenceLengthMm = breakageLaw.referenceLengthMm.value;

/**
 * Random scission, exact: every length of fibre is equally likely to be cut, theta breaks in each mm. The fibrogram at x
 * is multiplied by e^(-theta x). Total length is conserved to rounding.
 */
export function breakAtRandom(lengths: LengthDistribution, thetaPerMm: number): LengthDistribution {
  const q = Math.exp(-thetaPerMm * stepMm);
  const broken = new Float64Array(lengthCount);
  let longer = 0; // S_(j+1): fibres longer than j
  let windows = 0; // G_(j+2): windows of length j + 2
  for (let i = lengthCount - 1; i >= 0; i--) {
    broken[i] = q ** i * (lengths[i]! + 2 * (1 - q) * longer + (1 - q) * (1 - q) * windows);
    windows += longer;
    longer += lengths[i]!;
  }
  return broken;
}

/** Rate of change under breakage that grows with length^exponent, the break anywhere along the fibre. */
function breakageRate(numbers: Float64Array, rates: Float64Array, out: Float64Array): void {
  let pieces = 0; // pieces of each shorter length made by all longer fibres
  for (let i = lengthCount - 1; i >= 0; i--) {
    const broken = rates[i]! * numbers[i]!;
    out[i] = pieces - broken;
    if (i > 0) pieces += (2 * broken) / i;
  }
}

/**
 * Breakage by a machine: rate theta x l x (l/25 mm)^(p-1), break point uniform. Integrated with the trapezium corrector;
 * each step conserves total length exactly whatever its size.
 * @param thetaPerMm breaks per mm of a 25 mm fibre
 * @param exponent p; 1 is random scission
 * @param steps steps of the integration
 */
export function breakByLength(
  lengths: LengthDistribution,
  thetaPerMm: number,
  exponent: number = breakageExponent,
  steps: number = machineSteps,
): LengthDistribution {
  if (thetaPerMm === 0) return lengths;
  // A fibre one step long cannot break; the rate is for the i places between steps.
  const rates = Float64Array.from(
    { length: lengthCount },
    (_, i) => (thetaPerMm / steps) * i * stepMm * (lengthAtMm(i) / referenceLengthMm) ** (exponent - 1),
  );
  const now = Float64Array.from(lengths);
  const first = new Float64Array(lengthCount);
  const second = new Float64Array(lengthCount);
  const ahead = new Float64Array(lengthCount);
  for (let step = 0; step < steps; step++) {
    breakageRate(now, rates, first);
    for (let i = 0; i < lengthCount; i++) ahead[i] = now[i]! + first[i]!;
    breakageRate(ahead, rates, second);
    for (let i = 0; i < lengthCount; i++) now[i] = now[i]! + (first[i]! + second[i]!) / 2;
  }
  return now;
}
