/** The few words that stand beside a number before its working is opened; the rest comes with the first one. */
export const workings = {
  show: '{value}, show the working of {name}',
  heading: 'The working of {name}',
  close: 'Close',
};
