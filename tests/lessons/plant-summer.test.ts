import { expect, test } from 'vitest';
import { lessonSeason } from '../../src/lessons/lesson-season.ts';
import { farmSummer, plantSummer, summerEvents, summerFarmIds } from '../../src/lessons/plant-summer.ts';

test.each(summerFarmIds)('%s: the stages come in the order of the plant', (id) => {
  const { events } = farmSummer(id);
  const days = summerEvents.map((event) => events[event]);
  expect([...days].sort((a, b) => a - b)).toEqual(days);
});

test('published: 20 to 25 days from square to flower, 45 to 65 from flower to open boll (National Cotton Council, after Oosterhuis)', () => {
  const { events } = farmSummer('coastal-plain');
  expect(events.firstFlower - events.firstSquare).toBeGreaterThanOrEqual(20);
  expect(events.firstFlower - events.firstSquare).toBeLessThanOrEqual(25);
  expect(events.firstOpenBoll - events.firstFlower).toBeGreaterThanOrEqual(45);
  expect(events.firstOpenBoll - events.firstFlower).toBeLessThanOrEqual(65);
});

test('the bolls open at picking are those that the season picks', () => {
  const { field } = lessonSeason();
  const { squares, openOfHundred } = plantSummer(field);
  expect((squares * openOfHundred) / 100).toBeCloseTo(field.bollsPerPlant, 6);
});

test('a failed crop is refused', () => {
  const { field } = lessonSeason();
  expect(() => plantSummer({ ...field, events: { ...field.events, firstFlower: null } })).toThrow(/failed/);
});
