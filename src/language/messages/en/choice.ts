/** Words about the last choice: taking it back, and what it did downstream. They come with the season page. */
export const choice = {
  undo: 'Undo the last choice',
  undone: 'The last choice is undone.',
  nothingLeft: 'Nothing is left to undo.',
  notYet: 'Change something: what it does is told here.',
  did: 'Your last choice:',
  hardly: 'Your last choice changed hardly anything further on.',
  compareBoth: 'Both seasons side by side',
  downstream: 'Further on, it also changed:',
};
