import { oneTestSd, tolerance } from './facts.ts';
import { errorFunctionSeries, normalCurve } from './normal-curve-facts.ts';

/** Area under the normal curve between -z and z, percent (Abramowitz and Stegun 7.1.26, error below 2e-5 percent). */
function centralNormalPercent(z: number): number {
  const x = z / Math.SQRT2;
  const t = 1 / (1 + normalCurve.seriesScale.value * x);
  const series = errorFunctionSeries.rows.reduceRight((sum, coefficient) => t * (coefficient + sum), 0);
  return 100 * (1 - series * Math.exp(-x * x));
}

/**
 * How often two readings agree.
 * @param sdOfDifference standard deviation of their difference; for two single tests the root of two times one test's
 * @param allowed the largest difference that counts as agreement
 * @returns percent of pairs
 */
export const agreementPercent = (sdOfDifference: number, allowed: number): number =>
  centralNormalPercent(allowed / sdOfDifference);

/** One channel's repeatability, for the card's line on how sure a reading is. */
export interface Repeatability {
  readonly channel: keyof typeof tolerance;
  readonly oneTestSd: number;
  readonly tolerance: number;
  /** Percent of repeat tests that fall within the tolerance of the first. */
  readonly secondTestAgreesPercent: number;
}

/** How sure one test is, channel by channel. */
export function repeatability(): readonly Repeatability[] {
  return (Object.keys(tolerance) as (keyof typeof tolerance)[]).map((channel) => {
    const sd = oneTestSd[channel].value;
    const allowed = tolerance[channel].value;
    return {
      channel,
      oneTestSd: sd,
      tolerance: allowed,
      secondTestAgreesPercent: agreementPercent(sd * Math.SQRT2, allowed),
    };
  });
}
