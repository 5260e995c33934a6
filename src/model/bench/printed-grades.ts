import { colourOf } from '../classing/colour.ts';
import { pimaColourSteps } from '../classing/colour-chart-facts.ts';
import { colourGrades } from '../classing/colour-grade-facts.ts';
import { stapleCode32nds } from '../classing/staple.ts';
import { stapleChart } from '../classing/staple-facts.ts';
import type { CottonKind } from '../fibre.ts';
import type { FibreCard } from './set-up.ts';

/** Grades as they are printed on a card, to be held against its readings; null where they were not typed. */
export interface PrintedGrades {
  /** '31' for upland, '2' for Pima. */
  readonly color: string | null;
  readonly staple32nds: number | null;
}

/** Nothing typed. */
export const noGrades: PrintedGrades = { color: null, staple32nds: null };

/** Color grades that a card of a kind may print. */
export const colourCodesOf = (kind: CottonKind): readonly string[] =>
  kind === 'pima'
    ? Array.from({ length: pimaColourSteps.rows.length + 1 }, (_, i) => String(i + 1))
    : colourGrades.rows.map(({ code }) => code);

/** Staple codes that a card of a kind may print. */
export const stapleCodesOf = (kind: CottonKind): readonly number[] =>
  stapleChart[kind].rows.map(({ code32nds }) => code32nds);

/** 'near' is one grade or one group away, which a chart without published borders cannot tell from the same. */
export type GradeAgreement = 'agrees' | 'near' | 'differs';

/** How a printed color grade stands to the Rd and +b beside it. */
export function colourAgreement({ kind, reflectanceRd, yellownessB }: FibreCard, printed: string): GradeAgreement {
  const { color } = colourOf(kind, reflectanceRd, yellownessB);
  if (color === printed) return 'agrees';
  const farthest = Math.max(
    ...[...color].map((digit, i) => Math.abs(Number(digit) - Number(printed[i] ?? Number.NaN))),
  );
  return farthest <= 1 ? 'near' : 'differs';
}

/** How a printed staple code stands to the length beside it: the office reads the one off the other. */
export const stapleAgreement = ({ kind, lengthIn }: FibreCard, printed32nds: number): GradeAgreement =>
  stapleCode32nds(kind, lengthIn) === printed32nds ? 'agrees' : 'differs';
