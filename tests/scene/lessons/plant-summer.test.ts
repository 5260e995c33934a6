import { expect, test } from 'vitest';
import { flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import { plantSummerMarks } from '../../../src/scene/lessons/plant-summer.ts';

const scene = {
  width: 360,
  kind: 'upland',
  months: [{ day: 20, name: 'Jun' }],
  rows: [
    { piece: 'seed', day: 0, name: 'Planted', date: 'May 12' },
    { piece: 'seedling', day: 6, name: 'Up', date: 'May 18' },
    { piece: 'sack', day: 30, name: 'Picked', date: 'June 11' },
  ],
  counts: [{ key: 'squares', head: 'Squares', counts: Array.from({ length: 31 }, (_, day) => day / 3), most: '10' }],
  mostCount: 10,
} as const;

test('labels of days that lie close keep clear of each other', () => {
  const texts = [...flatMarks(plantSummerMarks(scene))].flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
  const of = (text: string) => texts.find((mark) => mark.text === text)!;
  expect(of('Up').y - of('May 12').y).toBeGreaterThan(12);
});

test('every event and every count is a named group', () => {
  const names = [...groupsOf(plantSummerMarks(scene))].map(({ name }) => name);
  expect(names).toEqual(['seed', 'seedling', 'sack', 'squares']);
});
