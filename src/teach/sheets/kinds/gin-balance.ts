import type { Amount, Draw, QuestionKind } from '../question.ts';
import { amount, askFor, exact, nearest, step } from '../rounding.ts';
import { ginMasses, massUnit } from './gin-masses.ts';

/** A load of two to six bales in whole pounds or kilograms; the load is the sum of its rounded parts, so that it closes. */
function drawLoad({ inTurn, season, units }: Draw) {
  const masses = ginMasses(season, units);
  const bales = inTurn(200, 600) / 100;
  const unit = massUnit(units);
  const whole = (value: number): Amount => amount(Math.max(1, value * bales), 0, unit);
  const [lint, seed, trash] = [whole(masses.lintToPress), whole(masses.seed), whole(masses.trash)];
  const [motes, dried, added] = [whole(masses.motes), whole(masses.dried), whole(masses.added)];
  const load = amount(lint.value + seed.value + trash.value + motes.value + dried.value, 0, unit);
  const moisture = amount((100 * masses.loadWater) / masses.load, 1, 'percent');
  return { lint, seed, trash, motes, dried, added, load, moisture, unit } as const;
}

const outs = '{load} − {lint} − {seed} − {trash} − {motes}';

/** What goes into a gin comes out of it: the part that nobody weighed is what is left. */
export const ginBalance: QuestionKind = {
  1: (draw) => {
    const { load, lint, seed, unit } = drawLoad(draw);
    const rest = load.value - lint.value - seed.value;
    return {
      given: { load, lint, seed },
      asks: [askFor([step('rest', '{load} − {lint} − {seed}', rest, 0, unit)], exact())],
    };
  },
  2: (draw) => {
    const { load, lint, seed, trash, motes, dried, unit } = drawLoad(draw);
    return {
      given: { load, lint, seed, trash, motes },
      asks: [
        askFor([step('dried', outs, dried.value, 0, unit)], exact()),
        askFor([step('seedShare', '{seed} ÷ {load} × 100', (100 * seed.value) / load.value, 3, 'percent')], nearest(1)),
      ],
    };
  },
  3: (draw) => {
    const { load, lint, seed, trash, motes, dried, added, moisture, unit } = drawLoad(draw);
    const water = (load.value * moisture.value) / 100;
    const waterStep = step('water', '{load} × {moisture}', water, 2, unit);
    const driedStep = step('dried', outs, dried.value, 0, unit);
    return {
      given: { load, moisture, lint, seed, trash, motes, added },
      asks: [
        askFor([waterStep], nearest(0)),
        askFor([driedStep], exact()),
        askFor(
          [
            waterStep,
            driedStep,
            step('waterOut', '{water} − {dried} + {added}', water - dried.value + added.value, 2, unit),
          ],
          nearest(0),
        ),
      ],
    };
  },
};
