import type { Random } from '../random.ts';
import { type BalePrice, flatPrice } from './class-card.ts';
import { belowGradeCode, type Colour, named, uplandColour } from './colour.ts';
import { colourGrades } from './colour-grade-facts.ts';
import { office } from './facts.ts';
import { leafGrade } from './leaf.ts';
import { thirtiesMoney } from './money-facts.ts';
import { priceOfCrop } from './prices.ts';
import type { InstrumentReading } from './reading.ts';
import { type StapleByEye, stapleByEye } from './staple-by-eye.ts';
import { lintRd } from './trash-area.ts';

/** A bale graded by eye and hand, as in the 1930s. */
export interface EyeGrade extends Colour {
  readonly leaf: number;
  readonly staple: StapleByEye;
}

const codes = new Set(colourGrades.rows.map(({ code }) => code));

/**
 * The classer's one grade from colour and leaf. The white standards carried their own leaf (Middling, the third, holds
 * leaf 3); leafier cotton is put half way down from its colour, and cleaner cotton is not lifted. Both are assumptions.
 * @param code colour code of the lint
 * @param leaf leaf grade
 */
export function eyeGrade(code: string, leaf: number): Colour {
  const colour = Number(code[0]);
  const grade = `${Math.max(colour, Math.ceil((colour + leaf) / 2))}${code[1]}`;
  return named(codes.has(grade) ? grade : belowGradeCode(code[1]!));
}

/**
 * Grades one bale by eye: the classer judges the colour of the lint apart from its leaf, and misjudges the pull a little.
 * @param truth the bale's true values
 * @param quartilePerLength hand-array upper quartile length over upper half mean length in this cotton
 */
export function gradeByEye(truth: InstrumentReading, quartilePerLength: number, random: Random): EyeGrade {
  const leaf = leafGrade('upland', truth.trashAreaPercent);
  const pulledIn = truth.lengthIn * quartilePerLength + office.classerEyeIn.value * random.normal();
  return {
    ...eyeGrade(uplandColour(lintRd(truth.reflectanceRd, truth.trashAreaPercent), truth.yellownessB), leaf),
    leaf,
    staple: stapleByEye(pulledIn),
  };
}

/** Price of the 1930s: one season average for every grade, since no differences of the time were read. */
export function thirtiesPrice(bale: Parameters<typeof flatPrice>[0]): BalePrice {
  const year = thirtiesMoney.cropYear.value;
  return flatPrice(bale, priceOfCrop(year)!.lintCentsPerLb, year, 'seasonAverage');
}
