import { expect, test } from 'vitest';
import { groupsOf } from '../../../src/scene/display-list.ts';
import { bollsAndBlock } from '../../../src/scene/lessons/bolls-and-block.ts';

test.each([1, 4, 9, 16])('%d bolls are drawn, and as many patches', (bolls) => {
  const list = bollsAndBlock({ bolls, width: 480, labels: { side: '4 in', bolls: '1 boll' } });
  const groups = [...groupsOf(list)];
  for (const name of ['bolls', 'patches']) {
    const found = groups.find((group) => group.name === name)!;
    expect(found.count).toBe(bolls);
    expect(found.marks).toHaveLength(bolls);
  }
});

test('the words of both sides are written once', () => {
  const list = bollsAndBlock({ bolls: 4, width: 320, labels: { side: '8.0 in', bolls: '4 bolls' } });
  const texts = list.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  expect(texts).toEqual(['8.0 in', '4 bolls']);
});
