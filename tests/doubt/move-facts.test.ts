import { expect, test } from 'vitest';
import { factsRead } from '../../src/doubt/facts-read.ts';
import { withFactsMoved } from '../../src/doubt/move-facts.ts';
import type { Fact } from '../../src/model/fact.ts';

const fact = (value: number): Fact => ({ value, unit: 'mm', source: 'made up for this test', mark: 'assumption' });

test('a fact is moved while something runs, and back at its value afterwards', () => {
  const [one, other] = [fact(1), fact(2)];
  const sum = withFactsMoved([{ fact: one, to: 10 }], () => one.value + other.value);
  expect(sum).toBe(12);
  expect([one.value, other.value]).toEqual([1, 2]);
});

test('it is back also when what ran broke, and when it was moved twice', () => {
  const one = fact(1);
  const moves = [
    { fact: one, to: 10 },
    { fact: one, to: 20 },
  ];
  expect(withFactsMoved(moves, () => one.value)).toBe(20);
  expect(one.value).toBe(1);
  const broken = () => {
    throw new Error('broken');
  };
  expect(() => withFactsMoved(moves, broken)).toThrow('broken');
  expect(one.value).toBe(1);
});

test('the facts that a run reads are told, and are plain numbers again afterwards', () => {
  const holders = [{ fact: fact(1) }, { fact: fact(2) }, { fact: fact(3) }];
  let sum = 0;
  const read = factsRead(holders, () => {
    sum = holders[0]!.fact.value + holders[2]!.fact.value;
  });
  expect(sum).toBe(4);
  expect(read).toEqual([holders[0], holders[2]]);
  expect(holders.map((holder) => holder.fact)).toEqual([fact(1), fact(2), fact(3)]);
  expect(Object.getOwnPropertyDescriptor(holders[0]!.fact, 'value')).toEqual({
    value: 1,
    writable: true,
    enumerable: true,
    configurable: true,
  });
  const broken = () => {
    throw new Error('broken');
  };
  expect(() => factsRead(holders, broken)).toThrow('broken');
  expect(holders.map((holder) => holder.fact.value)).toEqual([1, 2, 3]);
});
