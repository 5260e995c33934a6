import type { CottonKind } from '../fibre.ts';
import { leafEdges } from './facts.ts';

/**
 * Leaf grade from trash area: 1 is cleanest; upland 8 and Pima 7 are below leaf grade. Our edges, see leafEdges.
 * @param trashAreaPercent percent of the surface covered
 */
export function leafGrade(kind: CottonKind, trashAreaPercent: number): number {
  const edges = leafEdges[kind].rows;
  const place = edges.findIndex((edge) => trashAreaPercent <= edge);
  return place < 0 ? edges.length + 1 : place + 1;
}

/** The two-digit trash reading of the record: tenths of a percent of the surface, so that 12 means 1.2 %. */
export const trashReading = (trashAreaPercent: number): number => Math.round(trashAreaPercent * 10);
/** Percent of the surface that a trash reading stands for. */
export const trashAreaOfReading = (reading: number): number => reading / 10;
