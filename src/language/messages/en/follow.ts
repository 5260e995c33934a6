/** Words for following one part through the ledger and the chain. */
export const follow = {
  choose: 'Follow',
  all: 'All parts',
  hint: 'Point at a band, or pick a part, to follow it.',
  seedCame:
    'Of the load brought to the gin, {share} by weight was seed: {mass} with the lint of one bale. It goes to the seed house, and an oil mill makes oil, meal, hulls and linters of it.',
  seedAsk: 'Question: where does the seed go?',
  left: 'No {part} comes this far: the last of it left at {station}.',
  toCome: 'No {part} yet: it comes in at {station}.',
  journey: '{part}: where it came from and where it ended, {scale}',
  station: 'Station',
  account: 'Account',
  came: 'Came in',
  went: 'Went',
  share: 'Of all',
  sum: 'All together',
};
