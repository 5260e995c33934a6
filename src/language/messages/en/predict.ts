import type { StationId } from '../../../model/station.ts';

/** A station's question, in at most twelve words, and what is said once it is answered. A sentence whose figure a season lacks is left out. */
interface QuestionWords {
  readonly question: string;
  /** Names in braces are figures of the station. */
  readonly why: readonly string[];
}

/** The words of the questions before each station; they come with the season page, so that the first view need not carry them. */
export const predict = {
  turnOn: 'Guess each station’s number first',
  turnOnHelp: 'One question before the numbers of each station. No score is kept. The link to this season asks it too.',
  yourGuess: 'Your guess',
  guess: 'This is my guess',
  skip: 'Skip',
  stop: 'No more questions',
  noChoice: 'Choose one first, or skip.',
  noNumber: 'Type a whole number from {low} to {high}, or skip.',
  covered: 'The numbers of this station come after your guess.',
  coveredPicture: 'The picture opens after your guess.',
  thisSeason: 'This season',
  asked: {
    planting: {
      question: 'Of 100 seeds, how many come up as plants?',
      why: [
        '{stand} plants stand on an acre.',
        'The seedlings were up on {emerged}. In cold ground seed takes longer, and fewer come up.',
      ],
    },
    bloom: {
      question: 'Of 100 flowers, how many fall without making a boll?',
      why: [
        '{squaresDropped} of the squares (flower buds) dropped before they opened, and {bollsDropped} of the flowers dropped as young bolls.',
        'A plant keeps what its leaves and roots can feed: {bollsPerPlant} bolls were picked from each.',
      ],
    },
    boll: {
      question: 'How many days from first flower to first open boll?',
      why: [
        'The first boll opened on {firstOpenBoll}. Warm days ripen a boll sooner, cool days later.',
        'One open boll holds {lintPerBoll} of lint.',
      ],
    },
    harvest: {
      question: 'What share of the open cotton stays in the field?',
      why: [
        '{leftInField} stayed behind, and {weathered} was lost to weather before.',
        '{seedCotton} of seed cotton left the field. How much stays depends on who or what picks.',
      ],
    },
    module: {
      question: 'How warm does the stored cotton get inside?',
      why: [
        'It was stored with {moisture} moisture. Damp seed cotton heats itself; dry seed cotton does not.',
        'Its yellowing came to {yellowing}.',
      ],
    },
    cleaning: {
      question: 'What share of the leaf, sticks and dirt comes out?',
      why: [
        '{ginTrash} went to the gin trash.',
        'Drier cotton lets go of more and breaks more easily: here the lint held {lintMoisture} water.',
      ],
    },
    ginning: {
      question: 'How much of this load is seed, by weight?',
      why: [
        'A bale of 480 pounds takes {seedCottonPerBale} of seed cotton and gives {seedPerBale} of seed beside it.',
        'Lint in bales is {turnout} of the load. What remains is leaf, sticks, dirt and water.',
      ],
    },
    pressing: {
      question: 'How many bales does this field make?',
      why: ['A bale holds {baleWeight} of lint here, on average, without its bagging and ties.'],
    },
    classing: {
      question: 'What staple do most bales get, in 32nds of an inch?',
      why: [
        'The kind of seed sets most of it; drought, cold nights and hard cleaning shorten it.',
        'With color {colorGrade} and leaf grade {leafGrade}, the bales bring {price}.',
      ],
    },
    spinning: {
      question: 'How many fibers lie side by side in this yarn?',
      why: [
        'The finest yarn this cotton can be spun to is {limit}.',
        'Fewer fibers make a finer and less even yarn: this one varies by {evenness} (CV).',
      ],
    },
    weaving: {
      question: 'By how much does finishing shorten this cloth?',
      why: [
        'Nothing is lost: the threads draw closer.',
        'The thread count was {threadCount} on the loom and is {threadCountFinished} now.',
      ],
    },
    sewing: {
      question: 'How wide a square of cloth does one boll make?',
      why: [
        'All the cloth is shared out among all the bolls that were picked.',
        'The cloth of one bale is {yards} long.',
      ],
    },
  } satisfies Record<StationId, QuestionWords> as Record<StationId, QuestionWords>,
  steps: {
    cottonHung: 'Dry lint and seed in the open bolls',
    cottonLeft: 'Dry lint and seed left in the field',
  },
};
