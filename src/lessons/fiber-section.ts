import { micronaireFacts } from '../model/fibre-facts.ts';
import { bollFacts } from '../model/field/facts.ts';
import { varietyFacts } from '../model/field/variety-facts.ts';

export const sectionCottons = ['upland', 'pima'] as const;
export type SectionCotton = (typeof sectionCottons)[number];

/** Linear density of a ripe fiber of each cotton, mtex: what its circumference allows. */
const ripeMtex: Readonly<Record<SectionCotton, number>> = {
  upland: varietyFacts.uplandMedium.standardFinenessMtex.value,
  pima: varietyFacts.pima.standardFinenessMtex.value,
};

/** A fiber cut across, as if it were round. */
export interface FiberSection {
  readonly maturityRatio: number;
  /** Mass of a length of it, mtex. */
  readonly linearDensityMtex: number;
  /** Radius on a scale where a ripe upland fiber has 1. */
  readonly radius: number;
  /** Radius of the hollow, same scale. */
  readonly hollow: number;
}

/**
 * The fiber behind a micronaire reading, if the cotton is known: Lord's relation with linear density = ripe linear density x
 * maturity ratio. The wall fills 0.577 of the circle at a maturity ratio of one (Peirce & Lord 1939, from memory).
 * @param micronaire 2.5 to 6
 */
export function fiberSection(cotton: SectionCotton, micronaire: number): FiberSection {
  const { square, slope, constant } = micronaireFacts;
  const product = square.value * micronaire ** 2 + slope.value * micronaire + constant.value;
  const ripe = ripeMtex[cotton];
  const maturityRatio = Math.sqrt(product / ripe);
  const radius = Math.sqrt(ripe / ripeMtex.upland);
  return {
    maturityRatio,
    linearDensityMtex: ripe * maturityRatio,
    radius,
    hollow: radius * Math.sqrt(Math.max(0, 1 - bollFacts.wallOfSectionGrown.value * maturityRatio)),
  };
}
