import { describe, expect, test } from 'vitest';
import { benchQuestionIds, benchQuestionOf } from '../../src/compare/bench-questions.ts';
import { benchOutcome } from '../../src/model/bench/outcomes.ts';
import { workBench } from '../../src/model/bench/work-bench.ts';

const benchesOf = (id: (typeof benchQuestionIds)[number]) => {
  const { a, b } = benchQuestionOf[id];
  return { a: workBench(a), b: workBench(b) };
};

describe.each(benchQuestionIds)('%s', (id) => {
  const { a, b } = benchesOf(id);
  test('every number that it looks at is there on both benches', () => {
    for (const key of benchQuestionOf[id].looksAt) {
      expect(benchOutcome(key, a), key).not.toBeNull();
      expect(benchOutcome(key, b), key).not.toBeNull();
    }
  });
  test('says what it rests on', () => {
    expect(benchQuestionOf[id].decidedBy.length).toBeGreaterThan(0);
  });
});

test('longer staple: fewer fibre ends and less fuzz, the same threads', () => {
  const { a, b } = benchesOf('pilling');
  expect(b.warp.fibreEndsPerCm!).toBeLessThan(a.warp.fibreEndsPerCm!);
  expect([a.cloth.fuzz, b.cloth.fuzz]).toEqual(['much', 'little']);
  expect(benchOutcome('cover', a)).toBe(benchOutcome('cover', b));
});

test('lawn beside muslin: too fine for carded yarn, less lint, more spindle time', () => {
  const { a, b } = benchesOf('lawn');
  expect(workBench({ ...benchQuestionOf.lawn.b, system: 'ringCarded' }).warp.spinning.verdict).toMatchObject({
    status: 'impossible',
    reason: 'fibresInSection',
  });
  expect(b.lintGramsPerYard!).toBeLessThan(a.lintGramsPerYard!);
  expect(b.spindleMinutesPerYard!).toBeGreaterThan(1.5 * a.spindleMinutesPerYard!);
});

test('flannel shrinks more than quilting cotton, from an opener cloth of softer yarn', () => {
  const { a, b } = benchesOf('flannel');
  expect(b.cloth.shrinkPercent.length).toBeGreaterThan(a.cloth.shrinkPercent.length);
  expect(benchOutcome('cover', b)!).toBeLessThan(benchOutcome('cover', a)!);
  expect(benchOutcome('turns', b)!).toBeLessThan(benchOutcome('turns', a)!);
});
