import { varietyFacts } from '../../model/field/variety-facts.ts';
import { fibresInSection } from '../../model/mill/limits.ts';
import { asNe, texFromNe } from '../../model/units.ts';
import { fiberSection } from '../fiber-section.ts';
import type { Computed } from './computed.ts';

const threadNe = 30;
/** Where the premium range of upland begins, a reading inside it, and a coarse one. */
const low = 3.7;
const middle = 4.2;
const high = 5;
const inThread = (micronaire: number) =>
  fibresInSection(texFromNe(asNe(threadNe)), fiberSection('upland', micronaire).linearDensityMtex);

const upland = varietyFacts.uplandMedium.standardFinenessMtex;
const pima = varietyFacts.pima.standardFinenessMtex;

export const sectionQuantities = {
  'micronaire-low': { as: 'micronaire', value: () => low },
  'micronaire-middle': { as: 'micronaire', value: () => middle },
  'fibers-in-thread-low': { as: 'plain', value: () => inThread(low), decimals: 0, restsOn: upland },
  'fibers-in-thread': { as: 'plain', value: () => inThread(middle), decimals: 0, restsOn: upland },
  'fibers-in-thread-high': { as: 'plain', value: () => inThread(high), decimals: 0, restsOn: upland },
  'maturity-upland-low': {
    as: 'plain',
    value: () => fiberSection('upland', low).maturityRatio,
    decimals: 1,
    restsOn: upland,
  },
  'maturity-pima-low': {
    as: 'plain',
    value: () => fiberSection('pima', low).maturityRatio,
    decimals: 1,
    restsOn: pima,
  },
} as const satisfies Readonly<Record<string, Computed>>;
