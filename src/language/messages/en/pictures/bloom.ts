/** Words of the picture of Bloom. */
export const bloom = {
  titles: {
    upland: ['White: opened today', 'Pink: its second day'],
    pima: ['Yellow: opened today', 'Red: its second day'],
  },
  square: 'Opens in {days}',
  squareAge: 'A square, {days} old',
  noSquare: 'No square yet',
  notYet: 'the first will come at the first branch that fruits',
  last: 'The plant shown is picked at random among those with a flower on the last day shown.',
  steps: {
    squareOn: 'Its square came on',
    flowerOn: 'Its flower opens on',
    age: 'Days since',
    left: 'Days until then',
    node: 'Node',
    place: 'Place on the branch, from the stem',
  },
};
