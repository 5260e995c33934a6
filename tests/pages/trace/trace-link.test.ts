import { describe, expect, test } from 'vitest';
import { projectIds } from '../../../src/model/trace/project-facts.ts';
import { startIds } from '../../../src/model/trace/trace-forward.ts';
import { decodeTrace, encodeTrace } from '../../../src/pages/trace/trace-link.ts';

const run = 'v=1&farm=irrigated-desert&seed=7&set=0a1c';

describe('a link reopens what was asked', () => {
  test.each([...projectIds, 'own' as const])('%s', (project) => {
    const { asked } = decodeTrace(`project=${project}&${run}`);
    expect(asked.project).toBe(project);
    expect(decodeTrace(encodeTrace(asked))).toEqual({ asked, problems: [] });
  });
  test.each(startIds)('forward from %s', (start) => {
    const { asked } = decodeTrace(`count=3&from=${start}&of=12&${run}`);
    expect(asked).toMatchObject({ count: 3, start, startCount: 12, run });
    expect(decodeTrace(encodeTrace(asked))).toEqual({ asked, problems: [] });
  });
  test('cloth of one’s own, through the stated averages', () => {
    const { asked, problems } = decodeTrace('project=own&yards=2.5&width=60&weight=11.2&through=averages');
    expect(problems).toEqual([]);
    expect(asked).toMatchObject({
      project: 'own',
      own: { yards: 2.5, widthInches: 60, ouncesPerSquareYard: 11.2 },
      stated: true,
      run: null,
    });
    expect(decodeTrace(encodeTrace(asked)).asked).toEqual(asked);
  });
  test('nothing asked is a twin quilt and a boll', () => {
    expect(decodeTrace('').asked).toMatchObject({ project: 'twin-quilt', count: 1, start: 'boll', run: null });
  });
});

describe('junk is named and the rest kept', () => {
  test.each([
    ['project=spaceship', 'project'],
    ['count=0', 'count'],
    ['count=2.5', 'count'],
    ['count=', 'count'],
    ['yards=-1', 'yards'],
    ['width=abc', 'width'],
    ['weight=1e9', 'weight'],
    ['from=moon', 'from'],
    ['of=99999', 'of'],
    ['through=wormhole', 'through'],
  ])('%s', (piece, field) => {
    const { asked, problems } = decodeTrace(`${piece}&${run}`);
    expect(problems.map((problem) => problem.field)).toEqual([field]);
    expect(asked.run).toBe(run);
    expect(asked.startCount).toBe(1);
  });
});
