import { fewestFibres } from '../../../model/mill/facts.ts';
import { ceilingNe, fibresInSection } from '../../../model/mill/limits.ts';
import {
  asNe,
  asTex,
  KILO,
  kilogramsFromPounds,
  METRES_PER_FOOT,
  neFromTex,
  nominalMtexFromMicronaire,
  TEX_TIMES_NE,
  texFromNe,
  YARDS_PER_HANK,
} from '../../../model/units.ts';
import type { QuestionKind } from '../question.ts';
import { amount, askFor, down, nearest, step } from '../rounding.ts';

const feetPerYard = 3;
/** tex x Ne as it is printed. */
const texTimesNe = amount(TEX_TIMES_NE, 2, 'none');
/** Millitex of one unit of micronaire, as it is printed. */
const mtexPerMicronaire = amount(nominalMtexFromMicronaire(1), 2, 'none');

/** How thick a yarn is, and how many fibers lie side by side in it. */
export const yarn: QuestionKind = {
  1: ({ random, units }) => {
    if (units === 'metric') {
      const metres = amount(random.integer(20, 99) * 10, 0, 'm');
      const grams = amount((metres.value * random.integer(100, 900)) / 10 / KILO, 1, 'g');
      const tex = (grams.value / metres.value) * KILO;
      return {
        given: { length: metres, mass: grams },
        asks: [askFor([step('count', '{mass} ÷ {length} × 1,000', tex, 3, 'tex')], nearest(1))],
      };
    }
    const length = amount(random.integer(60, 640) * 84 + random.integer(0, 9) * 7, 0, 'yd');
    const grams = kilogramsFromPounds(1) * KILO;
    const tex = asTex((grams / (length.value * feetPerYard * METRES_PER_FOOT)) * KILO);
    return {
      given: { length },
      asks: [
        askFor([step('count', '{length} ÷ 840', length.value / YARDS_PER_HANK, 3, 'none')], nearest(1), neFromTex(tex)),
      ],
    };
  },
  2: ({ random, units }) => {
    const fiber = amount(random.integer(140, 195), 0, 'mtex');
    const isUs = units === 'us';
    const count = isUs ? amount(random.integer(7, 80), 0, 'none') : amount(random.integer(80, 850) / 10, 1, 'tex');
    const tex = isUs ? texTimesNe.value / count.value : count.value;
    const other = texTimesNe.value / count.value;
    const exactTex = isUs ? texFromNe(asNe(count.value)) : asTex(count.value);
    const countStep = isUs
      ? step('tex', '{texTimesNe} ÷ {count}', other, 4, 'tex')
      : step('ne', '{texTimesNe} ÷ {count}', other, 4, 'none');
    const fibersSum = isUs ? '{tex} × 1,000 ÷ {fiber}' : '{count} × 1,000 ÷ {fiber}';
    const fibers = (tex * KILO) / fiber.value;
    const fibersStep = step('fibers', fibersSum, fibers, 2, 'none');
    return {
      given: { count, texTimesNe, fiber },
      asks: [
        askFor([countStep], nearest(1), isUs ? exactTex : neFromTex(exactTex)),
        askFor(isUs ? [countStep, fibersStep] : [fibersStep], nearest(0), fibresInSection(exactTex, fiber.value)),
      ],
    };
  },
  3: ({ random }) => {
    const micronaire = amount(random.integer(33, 52) / 10, 1, 'none');
    const ne = amount(random.integer(12, 58), 0, 'none');
    const fewest = amount(fewestFibres.ringCarded.value, 0, 'none');
    const mtex = micronaire.value * mtexPerMicronaire.value;
    const fiberStep = step('fiber', '{micronaire} × {mtexPerMicronaire}', mtex, 3, 'mtex');
    const tex = texTimesNe.value / ne.value;
    const exactMtex = nominalMtexFromMicronaire(micronaire.value);
    const finest = (texTimesNe.value * KILO) / (fewest.value * mtex);
    return {
      given: { micronaire, mtexPerMicronaire, ne, texTimesNe, fewest },
      asks: [
        askFor([fiberStep], nearest(0), exactMtex),
        askFor(
          [
            fiberStep,
            step('tex', '{texTimesNe} ÷ {ne}', tex, 4, 'tex'),
            step('fibers', '{tex} × 1,000 ÷ {fiber}', (tex * KILO) / mtex, 2, 'none'),
          ],
          nearest(0),
          fibresInSection(texFromNe(asNe(ne.value)), exactMtex),
        ),
        askFor(
          [
            fiberStep,
            step('thinnest', '{fewest} × {fiber} ÷ 1,000', (fewest.value * mtex) / KILO, 4, 'tex'),
            step('finest', '{texTimesNe} ÷ {thinnest}', finest, 3, 'none'),
          ],
          down(),
          ceilingNe('ringCarded', exactMtex),
        ),
      ],
    };
  },
};
