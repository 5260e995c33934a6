import type { Fact } from '../fact.ts';

/** What a class card leaves open about the fibre lengths behind it. */
export const classCardFacts = {
  uplandPeakSpread: {
    value: 0.16,
    unit: 'ratio',
    range: [0.14, 0.18],
    source: 'one peak shape serves short, medium and long upland when 65 published length targets are met together',
    mark: 'assumption',
    note: 'standard deviation of the unbroken fibres by mass over their centre; hardly identified by the targets',
  },
  pimaPeakSpread: {
    value: 0.12,
    unit: 'ratio',
    range: [0.1, 0.14],
    source: 'the published Pima crop mean (uniformity 86 at 36.3 mm) needs a narrower peak than upland',
    mark: 'assumption',
  },
  mostBreaks: {
    value: 0.08,
    unit: 'breaks/mm',
    range: [0.05, 0.1],
    source: 'two breaks in each fibre; takes the uniformity of any upland below 70, lower than any bale is reported',
    mark: 'derived',
  },
} as const satisfies Record<string, Fact>;
