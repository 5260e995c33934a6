import { pressFacts } from './press-facts.ts';

/** Our gins are invented, so their code is one that no gin has. */
const inventedGinCode = '0'.repeat(pressFacts.ginCodeDigits.value);

/**
 * The permanent tag of a bale: five digits of the gin's code and seven of its running number.
 * @throws RangeError for a number that does not fit in seven digits
 */
export function baleTag(number: number): string {
  if (!Number.isInteger(number) || number < 0 || number >= 10 ** pressFacts.tagDigits.value)
    throw new RangeError(`bale number ${number} does not fit in seven digits`);
  return inventedGinCode + String(number).padStart(pressFacts.tagDigits.value, '0');
}

/** The mark stencilled on a bale of the 1930s: the gin's letters and a running number. */
export const baleMark = (number: number): string => `SF ${number}`;
