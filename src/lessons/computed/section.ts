import { micronaireClasses } from '../../model/classing/descriptor-facts.ts';
import { fibresInSection } from '../../model/mill/limits.ts';
import { asNe, texFromNe } from '../../model/units.ts';
import { fiberSection } from '../fiber-section.ts';
import { lessonSeason } from '../lesson-season.ts';
import type { Computed } from './computed.ts';

const threadNe = 30;
/** Readings at the low and the high end of what is sold, and one between. */
const low = 3.2;
const middle = 4.2;
const high = 5;
const inThread = (micronaire: number) =>
  fibresInSection(texFromNe(asNe(threadNe)), fiberSection('upland', micronaire).linearDensityMtex);

/** Where a market class of upland begins. @param place in the order of the table */
const classFrom = (place: number): number => micronaireClasses.rows[place]!.from;

function seasonMicronaire(): number {
  const bales = lessonSeason().classing?.classed ?? [];
  return bales.reduce((sum, { reading }) => sum + reading.micronaire, 0) / Math.max(1, bales.length);
}

export const sectionQuantities = {
  'micronaire-low': { as: 'micronaire', value: () => low },
  'micronaire-middle': { as: 'micronaire', value: () => middle },
  'micronaire-base-from': { as: 'micronaire', value: () => classFrom(1) },
  'micronaire-premium-from': { as: 'micronaire', value: () => classFrom(2) },
  'micronaire-base-again': { as: 'micronaire', value: () => classFrom(3) },
  'micronaire-discount-from': { as: 'micronaire', value: () => classFrom(4) },
  'micronaire-season': { as: 'micronaire', value: seasonMicronaire },
  'fibers-in-thread-low': { as: 'plain', value: () => inThread(low), decimals: 0 },
  'fibers-in-thread': { as: 'plain', value: () => inThread(middle), decimals: 0 },
  'fibers-in-thread-high': { as: 'plain', value: () => inThread(high), decimals: 0 },
  'maturity-upland-low': { as: 'plain', value: () => fiberSection('upland', low).maturityRatio, decimals: 2 },
  'maturity-pima-low': { as: 'plain', value: () => fiberSection('pima', low).maturityRatio, decimals: 2 },
} as const satisfies Readonly<Record<string, Computed>>;
