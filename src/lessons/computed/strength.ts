import { strengthFacts } from '../../model/mill/facts.ts';
import { threadStrength } from '../thread-strength.ts';
import type { Computed } from './computed.ts';

/** The share that a carded ring thread keeps; the other ways of spinning rest on assumptions of the same kind. */
const restsOn = strengthFacts.ringUse;

export const strengthQuantities = {
  'thread-breaks-at': {
    as: 'smallMass',
    value: () => threadStrength('medium', 'ringCarded').breaksAtGrams,
    decimals: 0,
    restsOn,
  },
  'thread-if-all': { as: 'smallMass', value: () => threadStrength('medium', 'ringCarded').allFibersGrams, decimals: 0 },
  'yarn-share-ring': {
    as: 'percentage',
    value: () => 100 * threadStrength('medium', 'ringCarded').share,
    decimals: 0,
    restsOn,
  },
  'yarn-share-combed': {
    as: 'percentage',
    value: () => 100 * threadStrength('medium', 'ringCombed').share,
    decimals: 0,
    restsOn,
  },
  'yarn-share-rotor': {
    as: 'percentage',
    value: () => 100 * threadStrength('medium', 'rotor').share,
    decimals: 0,
    restsOn,
  },
  'yarn-share-pima': {
    as: 'percentage',
    value: () => 100 * threadStrength('pima', 'ringCarded').share,
    decimals: 0,
    restsOn,
  },
  'thread-breaks-pima': {
    as: 'smallMass',
    value: () => threadStrength('pima', 'ringCarded').breaksAtGrams,
    decimals: 0,
    restsOn,
  },
} as const satisfies Readonly<Record<string, Computed>>;
