import { SIXTEENTHS_PER_INCH, THIRTY_SECONDS_PER_INCH } from '../units.ts';
import { handArray } from './staple-facts.ts';

/** Staple as a classer pulls it by hand. */
export interface StapleByEye {
  /** Whole thirty-seconds of an inch. */
  readonly thirtySeconds: number;
  /** The trade's way of writing it, such as 31/32 or 1-1/8. */
  readonly name: string;
  /** Whole sixteenths, any fraction dropped, as staples were called in the 1930s. */
  readonly sixteenths: number;
  readonly sixteenthsName: string;
}

/** Writes a length as whole inches and a fraction in lowest terms: 36 of 32 is 1-1/8. */
export function fractionName(count: number, of: number): string {
  const whole = Math.floor(count / of);
  let top = count - whole * of;
  let bottom = of;
  while (top > 0 && top % 2 === 0 && bottom % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole === 0 ? `${top}/${bottom}` : `${whole}-${top}/${bottom}`;
}

/**
 * Grades staple by hand.
 * @param upperQuartileIn length that a quarter of the fibre weight exceeds in a sorted array, in
 */
export function stapleByEye(upperQuartileIn: number): StapleByEye {
  const { inchOfStapleIn, stepIn, shortest32nds } = handArray;
  const steps = Math.round((upperQuartileIn - inchOfStapleIn.value) / stepIn.value);
  const thirtySeconds = Math.max(shortest32nds.value, THIRTY_SECONDS_PER_INCH + steps);
  const sixteenths = Math.floor(thirtySeconds / 2);
  return {
    thirtySeconds,
    name: fractionName(thirtySeconds, THIRTY_SECONDS_PER_INCH),
    sixteenths,
    sixteenthsName: fractionName(sixteenths, SIXTEENTHS_PER_INCH),
  };
}
