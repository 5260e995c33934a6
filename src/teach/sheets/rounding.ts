import type { Amount, Ask, Rounding, SheetUnit, Step } from './question.ts';

/** A hair, relative: a sum that ends in a five on paper must not fall below it in the computer's binary numbers. */
const hair = 1e-9;

/** To the nearest of so many decimals; a five goes up. */
export const nearest = (decimals: number): Rounding => ({ way: 'nearest', step: 10 ** -decimals, decimals });
/** Comes out even, or is read off a chart. */
export const exact = (decimals = 0): Rounding => ({ way: 'exact', step: 10 ** -decimals, decimals });
/** Down, or up, to whole steps. */
export const down = (step = 1, decimals = 0): Rounding => ({ way: 'down', step, decimals });
export const up = (step = 1, decimals = 0): Rounding => ({ way: 'up', step, decimals });

/** Rounds as the sheet asks. A half is rounded away from zero, as it is taught. */
function roundAsAsked(value: number, { way, step, decimals }: Rounding): number {
  const steps = Math.abs(value) / step;
  const guard = hair * Math.max(1, steps);
  const whole =
    way === 'down'
      ? Math.floor(steps + guard)
      : way === 'up'
        ? Math.ceil(steps - guard)
        : Math.floor(steps + 0.5 + guard);
  // Through text, so that 17 tenths are 1.7 and not its neighbor.
  return Number((Math.sign(value) * whole * step).toFixed(decimals));
}

/** A number as it will be printed: rounded to its decimals. */
export const amount = (value: number, decimals: number, unit: SheetUnit): Amount => ({
  value: roundAsAsked(value, nearest(decimals)),
  decimals,
  unit,
});

/** A line of working. @param decimals shown of the result, which is kept whole */
export const step = (name: string, sum: string, value: number, decimals: number, unit: SheetUnit): Step => ({
  name,
  sum,
  result: { value, decimals, unit },
});

/**
 * An ask from its working.
 * @param model what the model's function gives from the same numbers, not rounded
 * @throws Error without a line of working
 */
export function askFor(steps: readonly Step[], rounding: Rounding, model?: number): Ask {
  const last = steps.at(-1);
  if (!last) throw new Error('an ask needs its working');
  return {
    name: last.name,
    steps,
    rounding,
    answer: {
      value: roundAsAsked(last.result.value, rounding),
      decimals: rounding.decimals,
      unit: last.result.unit,
    },
    ...(model === undefined ? {} : { model }),
  };
}

/** Whether the model's own function rounds to the same answer as the sum on paper does. */
export const agrees = ({ model, rounding, answer }: Ask): boolean =>
  model === undefined || roundAsAsked(model, rounding) === answer.value;
