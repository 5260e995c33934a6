import { mostStretchPercent } from '../model/cloth/trellis.ts';
import { RADIANS_PER_DEGREE } from '../model/units.ts';
import { listedCloth } from './listed-cloths.ts';

/** Directions a strip may be cut in, degrees from the warp. */
export const cutDegrees = [0, 15, 45, 90] as const;
export type CutDegrees = (typeof cutDegrees)[number];

/** The cloth that lessons cut: quilting cotton of the list of cloths. */
export const cutCloth = () => listedCloth('quilting').construction;

/** The most that a strip of quilting cotton can be drawn out, percent. @param degrees from the warp */
export const cutStretchPercent = (degrees: number): number =>
  mostStretchPercent(cutCloth(), degrees * RADIANS_PER_DEGREE);
