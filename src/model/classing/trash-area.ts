import { type Lot, totalDryKg, trashParts } from '../lot.ts';
import { trashCover } from './facts.ts';

/**
 * Trash area that the camera would see on a lot of lint, percent of the surface: the foreign matter left, weighted by how
 * well each kind covers, times a fitted area per mass. A labelled assumption; grass and bark count as well (AMS).
 * @returns 0 for a lot without any mass
 */
export function trashAreaPercent(lot: Pick<Lot, 'dryKg'>): number {
  const total = totalDryKg(lot.dryKg);
  if (total === 0) return 0;
  let coverKg = 0;
  for (const part of trashParts) coverKg += lot.dryKg[part] * trashCover[part].value;
  return ((100 * coverKg) / total) * trashCover.areaPerMass.value;
}

/** Rd of the lint itself, between the trash: what a classer's eye judges. */
export const lintRd = (readingRd: number, trashArea: number): number =>
  readingRd + trashCover.rdPerPercentArea.value * trashArea;

/** Rd that the instrument sees: trash on the surface darkens the reading of the lint. */
export const darkenedRd = (lintRd: number, trashArea: number): number =>
  lintRd - trashCover.rdPerPercentArea.value * trashArea;
