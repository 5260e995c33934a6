import { describe, expect, test } from 'vitest';
import { readChoice, wholeWithin } from '../../../src/pages/teach/sheets/sheet-choice.ts';

describe('the choice of sheets', () => {
  test('comes back as it was kept, its kinds in the order of the chain', () => {
    const kept = { kinds: ['trace', 'heat'], level: 3, paper: 'both', pupils: 12, first: 400, units: 'metric' };
    expect(readChoice(JSON.stringify(kept), 'us')).toEqual({ ...kept, kinds: ['heat', 'trace'] });
  });
  test.each([
    ['nothing', null],
    ['no JSON', '{'],
    ['null', 'null'],
    ['a list', '[1]'],
    ['values of no meaning', '{"kinds":["x"],"level":9,"pupils":0.5,"first":-1,"units":"imperial"}'],
    ['values of another kind', '{"kinds":7,"level":"2","pupils":"many","first":null,"units":{}}'],
  ])('junk falls back to what a first visit shows: %s', (_name, text) => {
    expect(readChoice(text, 'us')).toEqual(readChoice(null, 'us'));
    expect(readChoice(text, 'metric').units).toBe('metric');
  });
  test('a number is whole and within its limits, or it is none', () => {
    const limits = { low: 1, high: 40 };
    expect(wholeWithin(' 30 ', limits)).toBe(30);
    for (const text of ['', '0', '41', '1.5', '-3', '1e1', 'ten']) expect(wholeWithin(text, limits), text).toBeNull();
  });
});
