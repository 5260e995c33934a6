import { describe, expect, test } from 'vitest';
import { readLayDown } from '../../../src/model/bench/read-lay-down.ts';

const file =
  'Bale,Length,Uniformity,Strength,Mic,Rd,+b,Leaf,Trash,Net\n1,1.12,82,30,4.2,76,8.5,3,0.4,480\n2,1.5,86,41,3.8,70,11,2,0.2,500\n';

test('bales come in whatever order the columns have; a column that is not known is left alone', () => {
  const read = readLayDown(file);
  if (!read.ok) throw new Error('refused');
  expect(read.value).toHaveLength(2);
  expect(read.value[1]).toMatchObject({ kind: 'upland', lengthIn: 1.5, micronaire: 3.8, netLb: 500, leaf: 2 });
  const turned = readLayDown('micronaire,strength,uniformity,staple,kind\r\n3.8,41,86,1.5,Pima\r\n');
  expect(turned).toMatchObject({ ok: true, value: [{ kind: 'pima', lengthIn: 1.5, netLb: 480 }] });
});

describe('what is wrong is named by line and column', () => {
  const problemsOf = (text: string) => {
    const read = readLayDown(text);
    return read.ok ? [] : read.problems.map(({ field, value }) => `${field}: ${value}`);
  };
  test.each([
    ['a number out of range', file.replace('1.12', '11.2'), ['line 2, length: 11.2']],
    ['no number', file.replace(',41,', ',strong,'), ['line 3, strength: strong']],
    ['a cell left empty', file.replace('1.12,', ','), ['line 2, length: ']],
    ['half a leaf grade', file.replace(',3,0.4', ',2.5,0.4'), ['line 2, leaf: 2.5']],
    ['another kind', 'kind,length,uniformity,strength,mic\nlinen,1.1,82,30,4\n', ['line 2, kind: linen']],
    ['a missing column', 'length,uniformity,strength\n1.1,82,30\n', ['line 1, micronaire: ']],
    ['no bale', 'length,uniformity,strength,mic\n', ['bales: 0']],
    ['nothing at all', '', ['line 1, length: ', 'line 1, uniformity: ', 'line 1, strength: ', 'line 1, micronaire: ']],
  ])('%s', (_, text, problems) => {
    expect(problemsOf(text)).toEqual(problems);
  });
  test('all of them at once', () => {
    expect(problemsOf(file.replace('1.12', '11.2').replace(',41,', ',strong,'))).toHaveLength(2);
  });
});
