import { expect, test } from 'vitest';
import { assumption, derived, memory, published } from '../../../src/model/field/mark.ts';

test('each maker gives its own mark', () => {
  const marks = [published, derived, memory, assumption].map((make) => make(1, 'day', [0, 2], 'a source').mark);
  expect(marks).toEqual(['published', 'derived', 'memory', 'assumption']);
});
test('a range and a note are there only when they were given', () => {
  expect(published(5, 'g', null, 'a source')).toEqual({ value: 5, unit: 'g', source: 'a source', mark: 'published' });
  expect(memory(5, 'g', [4, 6], 'a source', 'a note')).toEqual({
    value: 5,
    unit: 'g',
    range: [4, 6],
    source: 'a source',
    mark: 'memory',
    note: 'a note',
  });
});
