/** Words about the last choice: taking it back, and what it did downstream. They come with the season page. */
export const choice = {
  undo: 'Undo the last choice',
  undone: 'The last choice is undone.',
  nothingLeft: 'Nothing is left to undo.',
  downstream: 'Downstream of your choice:',
  hardly: 'Downstream of your choice hardly anything changed.',
  compareBoth: 'Compare both',
};
