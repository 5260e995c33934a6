import { expect, test } from 'vitest';
import { clothThread, labelThread, ladder, ladderThread } from '../../src/lessons/thread-ladder.ts';

test('two plies of Ne 40 are Ne 20 and 29.527 tex (GNU units: 1/(40|2 cottonyarncount))', () => {
  const { numbers, plies } = ladderThread('x', '40/2Ne');
  expect(plies).toBe(2);
  expect(numbers.ne).toBeCloseTo(20, 9);
  expect(numbers.tex).toBeCloseTo(29.527, 3);
});

test('three plies of Ne 50 are 318.892 denier (GNU units), and 50 km in a kilogram are 20 tex and ticket 150', () => {
  expect(labelThread('threePly').numbers.denier).toBeCloseTo(318.892, 3);
  expect(labelThread('metric').numbers.tex).toBeCloseTo(20, 9);
  expect(labelThread('metric').numbers.metricTicket).toBeCloseTo(150, 9);
});

test('thickness goes with the root of the weight', () => {
  const [denim, lawn] = [clothThread('denim'), clothThread('lawn')];
  expect((denim.diameterMm / lawn.diameterMm) ** 2).toBeCloseTo(denim.numbers.tex / lawn.numbers.tex, 9);
});

test('the cloths stand from thick to fine, and what is no yarn number is refused', () => {
  const tex = ladder('cloth').map(({ numbers }) => numbers.tex);
  expect([...tex].sort((a, b) => b - a)).toEqual(tex);
  expect(() => ladderThread('x', 'fifty weight')).toThrow(RangeError);
});
