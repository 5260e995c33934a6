/** Words of the season card. */
export const card = {
  title: 'Season card',
  toCard: 'The season card: one page to print or save',
};
