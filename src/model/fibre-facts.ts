import type { Facts } from './fact.ts';

const lord = 'Lord 1956, J. Textile Institute: maturity ratio x linear density = 3.86 X^2 + 18.16 X + 13, X micronaire';
/** What an air-flow instrument makes of linear density and maturity. */
export const micronaireFacts = {
  square: { value: 3.86, unit: 'mtex per micronaire squared', range: [3.8, 3.92], source: lord, mark: 'memory' },
  slope: { value: 18.16, unit: 'mtex per micronaire', range: [17.5, 18.8], source: lord, mark: 'memory' },
  constant: { value: 13, unit: 'mtex', range: [11, 15], source: lord, mark: 'memory' },
} as const satisfies Facts;
