import { lengthFraction, massFraction } from '../model/field/boll-filling.ts';
import { readBeard } from '../model/length/beard.ts';
import { lessonSeason } from './lesson-season.ts';

/** Days on a boll's own clock that a lesson stops at: flower, half long, wall begins, full length, half filled, open. */
export const bollDays = [3, 10, 17, 27, 35, 45] as const;

/** A boll's fibers on one day of its clock. */
export interface BollDay {
  readonly day: number;
  /** Length of the fibers, mm, and as a share of the full length. */
  readonly mm: number;
  readonly length: number;
  /** Wall laid down, of what a ripe fiber has, 0 to 1. */
  readonly wall: number;
}

/** The fibers of the example season's cotton on a day of the boll's clock, which reads 45 when it opens. */
export function bollDay(day: number): BollDay {
  const full = readBeard(lessonSeason().fibreTrail[0]!.fibre.lengths).upperHalfMeanMm;
  const length = lengthFraction(day);
  return { day, mm: full * length, length, wall: massFraction(day) };
}
