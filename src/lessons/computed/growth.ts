import { bollFacts, stageFacts } from '../../model/field/facts.ts';
import { varietyFacts } from '../../model/field/variety-facts.ts';
import { gradedSample } from '../graded-samples.ts';
import type { Computed } from './computed.ts';

export const growthQuantities = {
  'fibers-per-seed': {
    as: 'plain',
    value: () => Math.round(varietyFacts.uplandMedium.fibresPerSeed.value / 1000) * 1000,
    restsOn: varietyFacts.uplandMedium.fibresPerSeed,
  },
  'days-to-full-length': { as: 'days', value: () => bollFacts.elongatedDays.value },
  'wall-at-full-length': { as: 'percentage', value: () => 100 * bollFacts.elongatedMass.value, decimals: 0 },
  'days-to-open': { as: 'days', value: () => stageFacts.openDays.value },
  'trash-ordinary': { as: 'percentage', value: () => gradedSample('ordinary').trashPercent, decimals: 1 },
} as const satisfies Readonly<Record<string, Computed>>;
