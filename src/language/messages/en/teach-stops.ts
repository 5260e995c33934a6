import type { StationId } from '../../../model/station.ts';

/** A lesson in a plan: name and question are those of the lesson itself. */
interface LessonStop {
  readonly title: string;
  readonly ask: string;
  readonly usual: string;
}

/** Words of the stops that a plan can have; they come with the teacher's pages. */
export const teachStops = {
  talk: {
    opening: {
      title: 'Opening: a scrap in every hand',
      steps: ['Hand out the scraps before a word is said.', 'Let each one look for threads that run two ways.'],
      ask: 'What was this before it was cloth?',
      usual: 'Many say a shop, a factory or a sheep. Few say a seed. Take every answer and come back to it at the end.',
    },
    recap: {
      title: 'Recap: one thing to tell at home',
      steps: ['Everyone writes one sentence on a slip.', 'Read three of them aloud.', 'Ask again in two to six days.'],
      ask: 'What did we guess wrong, and what would you tell at home?',
      usual: 'They tell the largest surprise and leave out why. Ask for the why each time.',
    },
  },
  hands: {
    pullThread: {
      title: 'Hands on: pull a thread apart',
      steps: [
        'Pull one thread from the edge of the scrap.',
        'Turn it against its twist until it slips apart.',
        'Hold the ends to the light.',
      ],
      ask: 'What holds the fibers together?',
      usual: 'Often glue, or knots. It is twist alone: untwist it, and the fibers slide past each other.',
    },
    fiberPinch: {
      title: 'Hands on: measure a fiber',
      steps: [
        'Pull a small pinch apart, lay the halves together and pull again, five times.',
        'Lay the tuft on dark cloth.',
        'Measure from its blunt end to where most fibers stop.',
      ],
      ask: 'Is there one length, or many?',
      usual: 'Most expect all fibers to be alike. The tuft thins out bit by bit: a cotton is a spread of lengths.',
    },
    seedByHand: {
      title: 'Hands on: seed by hand',
      steps: [
        'Give each pair one lock of seed cotton from a boll.',
        'Pull the fiber off one seed and time it.',
        'Weigh seed and fiber in the hand.',
      ],
      ask: 'Which is heavier, the seed or its fiber?',
      usual:
        'Most say the fiber, because it is larger. The seed is heavier. Use cotton from a boll only: treated planting seed is poisonous.',
    },
    hundredSquares: {
      title: 'Hands on: a load in a hundred squares',
      steps: [
        'A hundred paper squares stand for a hundred pounds hauled to the gin.',
        'Each table sorts them: fiber, seed, and all the rest.',
        'Leave the piles as they are until the season shows them.',
      ],
      ask: 'How many squares are fiber, how many seed, how many neither?',
      usual: 'Most make fiber the largest pile. Keep the piles: they are the guess to look at later.',
    },
    biasPull: {
      title: 'Hands on: pull on grain and on bias',
      steps: [
        'Cut one strip along the selvage and one at 45 degrees, the same size.',
        'Pull each along a ruler.',
        'Let go and measure again.',
      ],
      ask: 'Why does one stretch and the other not?',
      usual:
        'Many say the bias strip has weaker threads. The threads are the same; on the bias their squares lean over.',
    },
    dampCotton: {
      title: 'Hands on: the weight of damp',
      steps: [
        'Weigh a handful of cotton.',
        'Mist it, squeeze it gently and weigh it again.',
        'Feel both with the eyes closed.',
      ],
      ask: 'Whoever buys cotton by the pound: what do they also buy?',
      usual: 'Few think of water. Cotton that feels dry holds some as well, so a gin measures it.',
    },
    tenCounters: {
      title: 'Hands on: ten counters for a bale',
      steps: [
        'Ten counters are the money for one bale and its seed.',
        'Each table deals them out: picking, ginning, classing, what is left to the farm.',
        'Write the deal down.',
      ],
      ask: 'Who gets how many?',
      usual: 'Tables often leave out the gin, and forget that the seed is sold too.',
    },
  },
  station: {
    planting: 'Most say all of them, or nearly. Cold or crusted ground takes its share.',
    bloom: 'Most say a few. A plant drops more flowers than seems sensible, and lives well with it.',
    boll: 'Guesses run from one week to a whole summer. Ask what else takes about that long.',
    harvest: 'Many say none: a machine takes everything. Ask who would go back for the rest, and at what cost.',
    module: 'Few expect warmth at all. Ask who has put a hand into a heap of cut grass.',
    cleaning: 'Many say all of it. What stays in is counted again at the classing office.',
    ginning: 'Most say a small share, for the fiber takes up more room. Weight and room are two things.',
    pressing: 'Guesses run from one to thousands. Ask what one bale weighs first.',
    classing: 'Many guess several inches, as of wool. The unit, 32nds of an inch, is a surprise in itself.',
    spinning: 'Guesses run from three to thousands. Hold up a thread and ask again.',
    weaving: 'Sewers guess well, others say nothing shrinks. Ask where the cloth went: no thread was lost.',
    sewing: 'Most say a shirt, or a thread. A patch about as large as a hand comes as a surprise.',
  } satisfies Record<StationId, string> as Record<StationId, string>,
  question: {
    'good-and-bad-years': 'Most think of prices. Rain and heat alone move the crop.',
    'forty-or-eighty': 'Many wait for all bolls to open. Ask what happens meanwhile to those that are open.',
    rain: 'Many say that rain is good. Before the bolls open it is; after that it is not.',
    'stripper-or-picker': 'Most choose the machine that leaves less behind. Ask what else it brings in.',
    'by-hand': 'Guesses of the days are far too low. Say plainly who did this work and how it was paid.',
    'wet-module': 'Few expect loss without anything falling out. Color and price go first.',
    'seed-and-lint': 'Often: glue, or hooks. The fiber grows out of the seed’s skin.',
    'saw-or-roller': 'Most choose the faster one. Ask what the saw does to a long fiber.',
    'third-lint-cleaning': 'Cleaner sounds better. Ask what leaves together with the leaf.',
    'where-the-seed-goes': 'Most say it is thrown away or sown. Very little is sown.',
    'who-gets-the-money': 'Few name the gin, and few count the seed as money.',
    'one-staple': 'It sounds like nothing. Ask a buyer of thread.',
  } as Readonly<Record<string, string>>,
  bench: {
    pilling: 'Many think longer staple cures everything. It helps against pills; fraying is a matter of the weave.',
    lawn: 'Most say lawn takes more cotton, because it costs more. It takes less, and more work.',
    thread: 'Most take the number for a weight. Two makers can mean two things by it.',
    flannel: 'Most say the fiber shrank. The threads drew together; their length is still there.',
  },
  lesson: {
    'one-boll-one-patch': {
      title: 'From one boll to one patch',
      ask: 'How much cloth does one boll make?',
      usual: 'Guesses are far apart, so draw them on paper first. Squares are easier to compare than words.',
    },
    'what-a-fiber-is': {
      title: 'What a cotton fiber is: from seed hair to thread',
      ask: 'How does a tuft of fluff hold together as thread?',
      usual: 'Glue, knots, or hooks. Pull a thread apart slowly, let it turn back, and ask again.',
    },
    'staple-length': {
      title: 'Staple length, and how to see it with your fingers',
      ask: 'How long is one cotton fiber, and how can you tell without a machine?',
      usual: 'Most give one length. Ask for the shortest and the longest in the same pinch.',
    },
    'uniformity-and-short-fiber': {
      title: 'Uniformity and short fiber: where fuzz and pills begin',
      ask: 'Why does one fabric get fuzzy and the other not?',
      usual: 'Most look for a flaw in the mill. It came in with the bale.',
    },
    'inside-a-gin': {
      title: 'Inside a gin',
      ask: 'What happens to cotton inside a gin, and what comes out besides fiber?',
      usual: 'Most name the saw only. Much of a gin is drying and cleaning.',
    },
    'from-hand-to-spindle': {
      title: 'From hand to spindle',
      ask: 'Who picked the cotton, how fast, and who was paid for it?',
      usual: 'Some know it from their family. Give them time, and name slavery and sharecropping plainly.',
    },
    'a-plants-summer': {
      title: 'A plant’s summer',
      ask: 'How does one cotton plant spend its summer, from seed to open boll?',
      usual: 'Most leave out the flower, or put it at the end. The boll comes from it.',
    },
  } as Readonly<Record<string, LessonStop>>,
  steps: {
    station: [
      'Read the question. Everyone writes a guess.',
      'Take five guesses aloud, then show what the season gave.',
      'Ask what could change it.',
    ],
    question: [
      'Read the question. Hands up for each answer.',
      'Let two who differ give their reasons.',
      'Show the answer, then open its numbers.',
    ],
    bench: [
      'Read the question. Everyone decides.',
      'Show the answer and ask what would prove it.',
      'Open the two benches for the numbers.',
    ],
    lesson: [
      'Read the question. Everyone writes a guess.',
      'Open the lesson and go through its figures together.',
      'End with two questions of its quiz.',
    ],
  },
  materials: {
    scraps: 'A scrap of woven quilting cotton for each',
    ruler: 'Rulers',
    cottonBall: 'Cotton batting or cotton balls',
    darkCloth: 'Dark cloth to lay fibers on',
    ginnedSeed: 'Locks of seed cotton from bolls (never treated planting seed)',
    paperSquares: 'A hundred paper squares for each table',
    counters: 'Ten counters or buttons for each table',
    scale: 'A kitchen scale',
    water: 'A spray bottle of water',
    slips: 'Slips of paper and pencils',
  },
};
