import { describe, expect, test } from 'vitest';
import { parseYarnNumber, yarnNumbers } from '../../../src/model/mill/yarn-number.ts';
import { problemLine } from '../../../src/model/problem.ts';
import { asTex } from '../../../src/model/units.ts';

const read = (text: string) => {
  const result = parseYarnNumber(text);
  if (!result.ok) throw new Error(problemLine(result.problems[0]!));
  return result.value;
};

describe('reads', () => {
  test.each(['30Ne', '30', '30s', 'Ne 30', ' 30 ne ', 'ne30'])('"%s" as 30s', (text) => {
    expect(read(text)).toEqual(read('30Ne'));
  });
  test.each([
    ['40/2Ne', 2, 20],
    ['60/3', 3, 20],
  ])('%s as %i singles with the resultant of %is', (text, singles, resultantNe) => {
    const { singles: plied, resultantTex, singleTex } = read(text);
    expect(plied).toBe(singles);
    expect(resultantTex).toBeCloseTo(read(`${resultantNe}`).singleTex, 9);
    expect(singleTex * singles).toBeCloseTo(resultantTex, 12);
  });
  test('tex multiplies its plies', () => {
    expect(read('20x2tex')).toEqual({ singleTex: 20, singles: 2, resultantTex: 40 });
  });
  test('metric divides them', () => {
    expect(read('50/2Nm').resultantTex).toBeCloseTo(40, 12);
  });
});

describe('refuses, naming field and value', () => {
  test.each([
    '',
    'thirty',
    '30/2tex',
    '20x2Ne',
    '-30',
    '30Ne tex',
    'Ne30Ne',
    '1e9',
    '30//2',
    '0',
    '30/0',
    '40/99',
    '0.5tex',
    '1001tex',
  ])('"%s"', (text) => {
    const result = parseYarnNumber(text, 'warp');
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.problems[0]).toMatchObject({ field: 'warp', value: text });
  });
});

test('one yarn in every numbering', () => {
  expect(yarnNumbers(asTex(25))).toMatchObject({ tex: 25, nm: 40, denier: 225, metricTicket: 120 });
});
