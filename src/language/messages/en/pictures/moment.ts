/** What is said of the moment that a picture shows. */
export const momentWords = {
  day: 'Day shown',
  done: 'Work shown as done',
  all: 'All that comes in',
};
