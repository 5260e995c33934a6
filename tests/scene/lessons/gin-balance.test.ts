import { expect, test } from 'vitest';
import { flatMarks } from '../../../src/scene/display-list.ts';
import { ginBalanceMarks } from '../../../src/scene/lessons/gin-balance.ts';

const rows = [
  {
    key: 'in',
    name: 'In',
    left: [
      { part: 'lint', kg: 200 },
      { part: 'seed', kg: 300 },
    ],
    leftText: '500 kg',
    taken: [],
    takenText: '',
  },
  {
    key: 'stand',
    name: 'Stand',
    left: [{ part: 'lint', kg: 200 }],
    leftText: '200 kg',
    taken: [{ part: 'seed', kg: 300 }],
    takenText: '300 kg',
  },
] as const;
const parts = { lint: 'Fiber', seed: 'Seed', trash: 'Trash', water: 'Water' };

test('strips are as long as they are heavy, at any width', () => {
  for (const width of [320, 600]) {
    const marks = [...flatMarks(ginBalanceMarks({ width, rows, parts, mostKg: 500 }))];
    const widths = marks.flatMap((mark) =>
      mark.kind === 'patch' && (mark.ink === 'lint' || mark.ink === 'walnut')
        ? [Math.max(...mark.points.map(([x]) => x)) - Math.min(...mark.points.map(([x]) => x))]
        : [],
    );
    expect(widths).toHaveLength(4);
    expect(widths[0]! / widths[1]!).toBeCloseTo(200 / 300, 6);
    expect(widths[3]).toBeCloseTo(widths[1]!, 6);
  }
});

test('a part too narrow for its name is named below the strip', () => {
  const narrow = [{ ...rows[0], left: [...rows[0].left, { part: 'water' as const, kg: 4 }] }];
  const texts = [...flatMarks(ginBalanceMarks({ width: 320, rows: narrow, parts, mostKg: 504 }))].flatMap((mark) =>
    mark.kind === 'text' ? [mark.text] : [],
  );
  expect(texts.filter((text) => text === 'Water')).toHaveLength(1);
});
