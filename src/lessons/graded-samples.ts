import { named, uplandColour } from '../model/classing/colour.ts';
import { chartLean, colourGroups, colourSteps } from '../model/classing/colour-chart-facts.ts';
import { leafGrade } from '../model/classing/leaf.ts';

export const gradedSampleIds = ['fresh', 'ordinary', 'rained', 'spotted'] as const;
export type GradedSampleId = (typeof gradedSampleIds)[number];

/** What the instruments would read of four samples: examples of ours inside the range that is sold. */
const readings: Readonly<
  Record<GradedSampleId, { readonly rd: number; readonly b: number; readonly trashPercent: number }>
> = {
  fresh: { rd: 80, b: 8.2, trashPercent: 0.15 },
  ordinary: { rd: 76, b: 8.6, trashPercent: 0.4 },
  rained: { rd: 67, b: 8.1, trashPercent: 0.6 },
  spotted: { rd: 70, b: 10.9, trashPercent: 0.9 },
};

/** A sample as it is graded: by the model's simplified chart, not the official one. */
export interface GradedSample {
  readonly id: GradedSampleId;
  readonly rd: number;
  readonly b: number;
  /** Percent of the surface covered with leaf. */
  readonly trashPercent: number;
  readonly code: string;
  readonly name: string;
  readonly leaf: number;
}

export function gradedSample(id: GradedSampleId): GradedSample {
  const { rd, b, trashPercent } = readings[id];
  const { color, colorName } = named(uplandColour(rd, b));
  return { id, rd, b, trashPercent, code: color, name: colorName, leaf: leafGrade('upland', trashPercent) };
}

/** Borders of the simplified chart, as a picture needs them. */
export const chartBorders = {
  groups: colourGroups.rows.map(({ belowB, leans }) => ({
    b: belowB,
    perRd: leans ? chartLean.perRd.value : 0,
    fromRd: chartLean.fromRd.value,
  })),
  steps: {
    rd: colourSteps.rows,
    weight: chartLean.yellownessWeight.value,
    fromB: chartLean.yellownessFrom.value,
    codes: Array.from({ length: colourSteps.rows.length }, (_, i) => `${i + 1}1`),
  },
};
