import { expect, test } from 'vitest';
import { citedComputed, citedFacts, textPieces, textsBelow } from '../../src/lessons/text-pieces.ts';

test('a text falls into words, facts, computed numbers and measures', () => {
  expect(textPieces('Cut [[4 in]] of [[patch-per-boll]], as [[a/facts.b.c|seam]] or [[a/facts.d.e]].')).toEqual([
    { kind: 'text', text: 'Cut ' },
    { kind: 'measure', value: 4, unit: 'in' },
    { kind: 'text', text: ' of ' },
    { kind: 'computed', id: 'patch-per-boll' },
    { kind: 'text', text: ', as ' },
    { kind: 'fact', name: 'a/facts.b.c', as: 'seam' },
    { kind: 'text', text: ' or ' },
    { kind: 'fact', name: 'a/facts.d.e' },
    { kind: 'text', text: '.' },
  ]);
});

test('texts are found at any depth, and what they cite is named once', () => {
  const texts = textsBelow({ a: ['[[x-y]] [[m/facts.n.o]]', { b: '[[x-y]]' }], c: 3 });
  expect(texts).toHaveLength(2);
  expect(citedComputed(texts)).toEqual(['x-y']);
  expect(citedFacts(texts)).toEqual(['m/facts.n.o']);
});
