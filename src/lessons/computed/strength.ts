import { threadStrength } from '../thread-strength.ts';
import type { Computed } from './computed.ts';

export const strengthQuantities = {
  'thread-breaks-at': {
    as: 'smallMass',
    value: () => threadStrength('medium', 'ringCarded').breaksAtGrams,
    decimals: 0,
  },
  'thread-if-all': { as: 'smallMass', value: () => threadStrength('medium', 'ringCarded').allFibersGrams, decimals: 0 },
  'yarn-share-ring': {
    as: 'percentage',
    value: () => 100 * threadStrength('medium', 'ringCarded').share,
    decimals: 0,
  },
  'yarn-share-combed': {
    as: 'percentage',
    value: () => 100 * threadStrength('medium', 'ringCombed').share,
    decimals: 0,
  },
  'yarn-share-rotor': { as: 'percentage', value: () => 100 * threadStrength('medium', 'rotor').share, decimals: 0 },
  'yarn-share-pima': { as: 'percentage', value: () => 100 * threadStrength('pima', 'ringCarded').share, decimals: 0 },
  'thread-breaks-pima': {
    as: 'smallMass',
    value: () => threadStrength('pima', 'ringCarded').breaksAtGrams,
    decimals: 0,
  },
} as const satisfies Readonly<Record<string, Computed>>;
