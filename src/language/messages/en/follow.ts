/** Words for following one part through the ledger and the chain. */
export const follow = {
  choose: 'Follow',
  all: 'All parts',
  hint: 'Point at a band, or pick a part, to follow it.',
  journey: '{part}: where it came from and where it ended, {scale}',
  station: 'Station',
  account: 'Account',
  came: 'Came in',
  went: 'Went',
  share: 'Of all',
  sum: 'All together',
};
