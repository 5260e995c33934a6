import type { PluralForms } from '../../../fill.ts';

/** Words of the pictures in the field. */
export const field = {
  caption: 'One plant of this field, picked at random; on the blue, not to scale. One drop: {drop} of water.',
  sun: 'The sun is as big as the day’s heat, {heat}, and its ring turns with it.',
  drops: 'Each drop is {drop} of water over the field.',
  heatSum: '{heat} since planting',
  stages: {
    emerged: 'up',
    firstSquare: 'first square',
    firstFlower: 'first flower',
    cutOut: 'cut-out',
    firstOpenBoll: 'first open boll',
    harvestAid: 'harvest aid',
    harvest: 'harvest',
  },
  places: {
    first: 'node {node}, first place on the branch',
    second: 'node {node}, second place on the branch',
    third: 'node {node}, third place on the branch',
  },
  placeShort: 'node {node}',
  rows: {
    height: 'Height, mean plant',
    nodes: 'Nodes, mean plant',
    heatToday: 'Heat of the day',
    heatSum: 'Heat since planting',
    rain: 'Rain of the day',
    irrigation: 'Irrigation of the day',
    soilWater: 'Soil water, of what the soil can hold',
    squares: 'Squares, mean plant',
    flowers: 'Flowers today, mean plant',
    greenBolls: 'Green bolls, mean plant',
    openBolls: 'Open bolls, mean plant',
    shed: 'Dropped so far, mean plant',
    drop: 'Water that one drop stands for',
    drawn: 'On the plant drawn',
    large: 'Shown large',
  },
  drawn: {
    square: { one: '{n} square', other: '{n} squares' } as PluralForms,
    flower: { one: '{n} flower', other: '{n} flowers' } as PluralForms,
    greenBoll: { one: '{n} green boll', other: '{n} green bolls' } as PluralForms,
    openBoll: { one: '{n} open boll', other: '{n} open bolls' } as PluralForms,
    shed: { one: '{n} dropped', other: '{n} dropped' } as PluralForms,
  },
};
