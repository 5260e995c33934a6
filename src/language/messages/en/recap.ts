/** Questions for some days after the lessons: the same matters as there, asked in other words. Each option says why. */
export const recap = {
  title: 'Recap',
  lead: 'Questions to come back to two to six days after a lesson: what is asked again after a pause stays longer. No answer leaves this device, and none is kept.',
  lessons: 'Lessons',
  none: 'Choose at least one lesson.',
  what: 'On paper',
  whats: { questions: 'Questions', answers: 'Questions with answers' },
  print: 'Print the recap',
  heading: 'What do you remember?',
  right: 'Right.',
  wrong: 'Not quite.',
  answer: 'Answer: {letter}.',
  questions: {
    'what-a-fiber-is': {
      ask: 'You hold one cotton fiber under a lens. What are you looking at?',
      options: [
        { says: 'A thread that a mill twisted', why: 'A thread is many fibers. This is one of them, before any mill.' },
        { says: 'One very long cell that grew on a seed', why: 'Each fiber is a single hair of the seed’s skin.' },
        { says: 'A strip of the boll’s wall', why: 'The wall dries to the bur. The fiber grows inside, on the seeds.' },
      ],
      right: 1,
    },
    'staple-length': {
      ask: 'The record of a bale gives one length. Whose is it?',
      options: [
        { says: 'That of its longest fiber', why: 'One long hair says little about a bale.' },
        { says: 'The middle of all its fibers', why: 'That is shorter: the short ones count in it.' },
        { says: 'The mean of its longer half', why: 'The longer half by weight is averaged. It carries the thread.' },
      ],
      right: 2,
    },
    'uniformity-and-short-fiber': {
      ask: 'Two threads are alike but for short fiber: one has much of it. What will a finger notice?',
      options: [
        {
          says: 'The one with more short fiber is hairier',
          why: 'Each fiber has two ends, and short ones bring more ends to a yard.',
        },
        { says: 'The one with more short fiber is smoother', why: 'It goes the other way: more ends stick out.' },
        {
          says: 'Nothing, short fiber falls out in the wash',
          why: 'Much of it stays twisted in, with its ends outside.',
        },
      ],
      right: 0,
    },
    micronaire: {
      ask: 'An instrument blows air through a plug of cotton and gives one number. What can that number not tell alone?',
      options: [
        {
          says: 'Whether low means fine or unripe',
          why: 'Both let less air through. It takes a second number to tell them apart.',
        },
        { says: 'Whether air passes easily', why: 'That is exactly what it measures.' },
        {
          says: 'Whether one bale reads higher than another',
          why: 'Readings can be compared. What they mean is the question.',
        },
      ],
      right: 0,
    },
    strength: {
      ask: 'A thread breaks at less than its fibers could bear, added up. Why?',
      options: [
        { says: 'Twisting cuts fibers', why: 'Twist presses them together. It does not cut.' },
        {
          says: 'Some fibers slip or pull at a slant, and not all break at once',
          why: 'Only part of each fiber’s strength points along the thread.',
        },
        { says: 'Dye eats the rest', why: 'This holds for thread that was never dyed.' },
      ],
      right: 1,
    },
    'color-and-leaf': {
      ask: 'Open cotton waits in the field through weeks of rain. What changes first?',
      options: [
        { says: 'Its length', why: 'Weather hardly shortens a fiber; machines do.' },
        { says: 'Its seeds grow', why: 'Once a boll is open its seeds grow no more.' },
        { says: 'Its brightness', why: 'It turns grayer, and its price goes down.' },
      ],
      right: 2,
    },
    'inside-a-gin': {
      ask: 'A gin’s scales show less going out than came in. What is the honest explanation?',
      options: [
        {
          says: 'Cotton is lost at every gin, nobody knows how',
          why: 'Each part can be weighed: lint, seed, trash, motes. The rest is water.',
        },
        { says: 'Water dried off', why: 'Warm air takes it up. Add it, and the sums close.' },
        { says: 'The seeds shrank', why: 'They lose a little water too, and that is counted as water.' },
      ],
      right: 1,
    },
    'yarn-numbers': {
      ask: 'One label says Ne 60, another Ne 30. You need the thinner thread. Which do you take?',
      options: [
        { says: 'Ne 60', why: 'Ne counts lengths in a pound. More length for the same weight is a thinner thread.' },
        { says: 'Ne 30', why: 'Fewer lengths make up a pound, so each yard is heavier.' },
        { says: 'Either, Ne is only a color', why: 'It is a measure of thickness.' },
      ],
      right: 0,
    },
    'weave-and-thread-count': {
      ask: 'A package shouts a very high thread count. What do you ask first?',
      options: [
        { says: 'What color is it?', why: 'Color has nothing to do with the count.' },
        {
          says: 'Were the plies of each thread counted one by one?',
          why: 'That can double the number and changes nothing in the cloth.',
        },
        { says: 'Is it cotton at all?', why: 'Worth knowing, but it does not explain the number.' },
      ],
      right: 1,
    },
    'grain-and-bias': {
      ask: 'A neckline should stretch a little around a curve. How do you cut its binding?',
      options: [
        { says: 'Along the selvage', why: 'There the warp runs straight and hardly gives.' },
        { says: 'Across, from selvage to selvage', why: 'That gives a little, not enough for a curve.' },
        {
          says: 'On the slant between warp and weft',
          why: 'There no thread is pulled straight, and the small squares of cloth can lean.',
        },
      ],
      right: 2,
    },
    shrinkage: {
      ask: 'A washed piece of cotton is shorter. Where did its length go?',
      options: [
        { says: 'Into the waves of its threads', why: 'The threads are as long as before. They wave more.' },
        { says: 'Down the drain with the water', why: 'A little lint goes there, but no length.' },
        { says: 'The fibers themselves got shorter', why: 'Cotton fibers hardly change their length in a wash.' },
      ],
      right: 0,
    },
    'one-boll-one-patch': {
      ask: 'A quilt block gets twice as wide and twice as long. How many times the bolls does it take?',
      options: [
        { says: 'Twice', why: 'It is twice as wide and also twice as long.' },
        { says: 'Four times', why: 'Twice by twice: area is what takes cotton.' },
        { says: 'Eight times', why: 'That would be for a thing twice as thick as well.' },
      ],
      right: 1,
    },
  },
};
