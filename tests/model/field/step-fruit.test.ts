import { describe, expect, test } from 'vitest';
import {
  fruitLoad,
  nodesAboveWhiteFlower,
  positionMass,
  stepFruit,
  stepNodes,
} from '../../../src/model/field/step-fruit.ts';
import { standingField } from './hand-made-field.ts';

const grown = (days: number) => {
  const field = standingField();
  for (let i = 0; i <= days; i++) {
    field.stages.firstSquare = i < 30 ? -1 : 30;
    stepNodes(field, i, 1);
    stepFruit(field, i, 1);
  }
  return field;
};

describe('nodes and branches', () => {
  test('the first square is the first fruiting branch; each node after it another', () => {
    const { calendar } = grown(50);
    expect(calendar.branches[29]).toBe(0);
    expect(calendar.branches[30]).toBe(1);
    expect(calendar.branches[50]! - 1).toBeCloseTo(calendar.nodes[50]! - calendar.nodes[30]!, 9);
  });
  test('nothing grows before the seedling is up, nor after the season is closed', () => {
    const field = grown(40);
    expect(field.calendar.nodes[3]).toBe(0);
    expect(field.calendar.nodes[4]).toBeGreaterThan(0);
    field.closed = 40;
    stepNodes(field, 41, 1);
    expect(field.calendar.nodes[41]).toBe(field.calendar.nodes[40]);
  });
});

describe('squares and flowers', () => {
  test('6 days outward, 22 days from square to flower in warm weather', () => {
    const { calendar } = grown(75);
    expect([0, 1, 2].map((p) => calendar.squareDay[p]![30])).toEqual([30, 36, 42]);
    expect([0, 1, 2].map((p) => calendar.flowerDay[p]![30])).toEqual([52, 58, 64]);
  });
  test('what was squares is flowers less what was shed', () => {
    const field = grown(75);
    const first = field.positions[0]!;
    expect(field.calendar.flowers[0]![52]).toBeCloseTo(first.squaresKept * field.calendar.squares[0]![30]!, 12);
  });
  test('kept bolls load the plant, by their size', () => {
    const field = grown(60);
    expect(fruitLoad(field)).toBeGreaterThan(0);
    const before = field.setLintLbPerAcre;
    stepNodes(field, 61, 1);
    stepFruit(field, 61, 1);
    expect(field.setLintLbPerAcre).toBeGreaterThan(before);
    expect(positionMass).toEqual([1, 0.88, 0.83, 0.83]);
  });
  test('a dry field carries less, so the same bolls load it more', () => {
    const field = grown(60);
    const watered = fruitLoad(field);
    field.soil.neededMm = 100;
    field.soil.usedMm = 50;
    expect(fruitLoad(field)).toBeGreaterThan(1.5 * watered);
  });
  test('squares fall at ten days and young bolls at six', () => {
    const field = grown(39);
    expect(field.totals.squaresShed).toBe(0);
    stepNodes(field, 40, 1);
    stepFruit(field, 40, 1);
    expect(field.totals.squaresShed).toBeGreaterThan(0);
    expect(grown(57).totals.bollsShed).toBe(0);
    expect(grown(58).totals.bollsShed).toBeGreaterThan(0);
  });
});

describe('nodes above white flower', () => {
  test('there is none before the first flower and none once the season is closed', () => {
    expect(nodesAboveWhiteFlower(grown(51), 51)).toBeNull();
    const field = grown(55);
    field.closed = 54;
    expect(nodesAboveWhiteFlower(field, 55)).toBeNull();
  });
  test('it counts the nodes above the highest flower, and falls as the load grows', () => {
    const field = grown(52);
    expect(nodesAboveWhiteFlower(field, 52)).toBeCloseTo(field.calendar.branches[52]! - 1 + 1.5, 9);
    expect(nodesAboveWhiteFlower(grown(72), 72)!).toBeLessThan(nodesAboveWhiteFlower(field, 52)!);
  });
  test('a week without a white flower is the end of it', () => {
    const field = grown(60);
    expect(nodesAboveWhiteFlower(field, 67)).not.toBeNull();
    expect(nodesAboveWhiteFlower(field, 68)).toBeNull();
  });
});
