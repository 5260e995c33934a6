import { expect, test } from 'vitest';
import { roomForLabels } from '../../src/ui/ribbon-labels.ts';

const placeOf = (at: number) => at;
const events = [
  { at: 200, label: 'First flower' },
  { at: 230, label: 'Cut-out' },
  { at: 395, label: 'Harvest' },
];

test('names the weightiest event where two would overlap, and keeps names on the ribbon', () => {
  const named = roomForLabels(events, placeOf, 400);
  expect(named.map(({ event }) => event.label)).toEqual(['First flower', 'Harvest']);
  expect(named[1]!.middle).toBeLessThan(400 - 20);
});

test('names all where there is room, none on a ribbon too short for a word', () => {
  expect(roomForLabels(events, (at) => at * 4, 1700)).toHaveLength(3);
  expect(roomForLabels(events, placeOf, 30)).toEqual([]);
});
