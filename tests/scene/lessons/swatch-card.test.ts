import { expect, test } from 'vitest';
import { flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import { swatchCard, swatchCardHeight } from '../../../src/scene/lessons/swatch-card.ts';

const threads = {
  weave: 'plain',
  endsPerInch: 60,
  picksPerInch: 60,
  warpInches: 0.006,
  weftInches: 0.006,
  warpInk: 'lint',
  weftInk: 'weldPale',
} as const;
const card = Array.from({ length: 12 }, (_, i) => ({ id: `cloth${i}`, name: `Cloth ${i}`, note: '1', threads }));

test.each([300, 360, 560])('at %d px every swatch and its words stay inside the picture', (width) => {
  const list = swatchCard({ swatches: card, width, times: 8 });
  const height = swatchCardHeight(width, card.length);
  expect([...groupsOf(list)].filter(({ name }) => name.startsWith('cloth'))).toHaveLength(12);
  for (const mark of flatMarks(list)) {
    const points = mark.kind === 'text' ? [[mark.x, mark.y] as const] : mark.kind === 'patch' ? mark.points : [];
    for (const [x, y] of points) {
      expect(x).toBeLessThanOrEqual(width);
      expect(y).toBeLessThanOrEqual(height);
    }
  }
});
