import type { CountName, DestinationAccount, SourceAccount } from '../../../model/ledger.ts';
import type { Part } from '../../../model/lot.ts';

export const parts = {
  lint: 'Lint',
  seed: 'Seed',
  burs: 'Burs',
  sticks: 'Sticks',
  leaf: 'Leaf',
  motes: 'Motes',
  dirt: 'Dirt',
  size: 'Size',
  finish: 'Finish',
} satisfies Record<Part, string>;

export const partHelp = {
  lint: 'The fiber that can be ginned and spun.',
  seed: 'Whole seed, with the fuzz that stays on it.',
  burs: 'Dry wall pieces of the boll.',
  sticks: 'Stalk and branch.',
  leaf: 'Leaf bits and fine trash.',
  motes: 'Seeds that never filled, with their short fiber.',
  dirt: 'Soil and dust.',
  size: 'Starch on the warp, washed out later.',
  finish: 'What printing or a finish adds to the cloth.',
} satisfies Record<Part, string>;

const sources = {
  grown: 'Grown on the plant',
  takenAlong: 'Picked up with it',
  moistureTakenUp: 'Moisture from the air',
  moistureAdded: 'Moisture put back',
  warpSize: 'Size on the warp',
  finish: 'Finish added',
} satisfies Record<SourceAccount, string>;

const destinations = {
  leftInField: 'Left in the field',
  weathered: 'Lost to weather',
  moduleLoss: 'Lost in storage',
  ginTrash: 'Gin trash',
  lintCleanerWaste: 'Gin motes (lint cleaner waste)',
  seedHouse: 'Seed house',
  evaporated: 'Evaporated',
  classingSample: 'Classing sample',
  bale: 'Bales',
  millTrash: 'Mill trash',
  cardStrips: 'Card strips',
  comberNoil: 'Comber noil',
  hardWaste: 'Hard yarn waste',
  invisibleLoss: 'Invisible loss',
  effluent: 'Washed out',
  yarn: 'Yarn',
  offcuts: 'Offcuts',
  cloth: 'Cloth',
} satisfies Record<DestinationAccount, string>;

export const accounts = {
  sources,
  destinations,
  /** What a station is handed, and what it hands on. */
  lotIn: 'From {name}',
  lotOut: 'On to {name}',
  lotStart: 'At the start',
  lotEnd: 'In hand at the end',
};

const counts = {
  seedsSown: 'Seeds sown',
  plants: 'Plants up',
  notEmerged: 'Did not come up',
  squares: 'Squares (flower buds)',
  flowers: 'Flowers',
  squaresShed: 'Squares dropped',
  bolls: 'Bolls',
  bollsShed: 'Young bolls dropped',
  squaresUnopened: 'Squares still closed',
  flowersToday: 'Flowers open today',
} satisfies Record<CountName, string>;

export const ledger = {
  heading: 'The ledger',
  caption: 'What came in and where it went, in {unit}, dry, with the water by itself',
  account: 'Account',
  in: 'Came in',
  out: 'Went out',
  inAll: 'All that came in',
  outAll: 'All that went out',
  all: 'All',
  water: 'Water',
  unaccounted: 'Unaccounted',
  accounted: { us: 'Every pound accounted for', metric: 'Every kilogram accounted for' },
  notAccounted: 'Not all is accounted for',
  closes: 'In less out: {amount} left over. Closing error {error} of what came in.',
  closesMeans:
    'That is less than one part in a billion: nothing is missing, only the last digits of the arithmetic differ.',
  closesExactly: 'In less out: {amount} left over. It closes to the last digit.',
  open: 'In less out: {amount}. This ledger does not close; please tell us.',
  closingError: 'Closing error',
  byPart: 'Part by part',
  rounding: 'Rounded so that every row and column adds.',
  counts,
  countCaption: 'Counted on the plants of one acre',
  countWhole: 'All {name}',
  countSum: 'The parts add up to {n}.',
};
