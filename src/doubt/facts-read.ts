import type { Fact } from '../model/fact.ts';

/**
 * Which of some facts a run reads. A fact that is not read cannot have changed what came out.
 * @returns the facts read, in the order given
 */
export function factsRead<Holder extends { readonly fact: Fact }>(
  holders: readonly Holder[],
  run: () => void,
): Holder[] {
  const read = new Set<Fact>();
  const values = holders.map(({ fact }) => fact.value);
  const put = (fact: Fact, value: PropertyDescriptor) =>
    Object.defineProperty(fact, 'value', { ...value, configurable: true, enumerable: true });
  try {
    holders.forEach(({ fact }, i) => {
      const get = () => {
        read.add(fact);
        return values[i]!;
      };
      put(fact, { get });
    });
    run();
  } finally {
    holders.forEach(({ fact }, i) => {
      put(fact, { value: values[i]!, writable: true });
    });
  }
  return holders.filter(({ fact }) => read.has(fact));
}
