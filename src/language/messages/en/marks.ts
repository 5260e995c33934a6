import type { Mark } from '../../../model/fact.ts';

const names = {
  published: 'published',
  derived: 'derived',
  memory: 'from memory',
  'common practice': 'common practice',
  assumption: 'assumption',
} satisfies Record<Mark, string>;

const meaning = {
  published: 'Read in the source named.',
  derived: 'Worked out from published numbers.',
  memory: 'Known in the trade, but not read again for this.',
  'common practice': 'What people in the trade usually do.',
  assumption: 'Our own choice, where no number was found.',
} satisfies Record<Mark, string>;

export const marks = {
  label: 'How sure is this?',
  names,
  meaning,
  source: 'Source',
  value: 'Value',
  between: 'between {low} and {high}',
};

/** What the model does not get right, or simplifies, said where it shows. */
export const limits = {
  heading: 'Honest limits',
  drylandYield: 'On the dry plains the modeled yield can miss the state average by a good part.',
  desertOpening: 'In the low desert the model opens bolls at other dates than growers report.',
  colorChart: 'The official color chart has no printed borders. Ours is a simplified one.',
  inventedFarm: 'This farm is invented. Its weather and yields are in the range of its region.',
  mixedYears: 'Prices from different years are mixed here.',
  oneYearPrices: 'Prices are those of {year}.',
  pimaPrice: 'For Pima the value is the published loan rate, not a market price.',
  couplings: 'How color and leaf follow rain and trash is our assumption, fitted to published averages.',
  micronaire: 'The micronaire reading comes from a formula known from memory.',
  threadCount: 'Weight and cover are those of the finished cloth; finishing and washing draw the threads closer.',
};

/** Warnings to people, where work can hurt. */
export const cautions = {
  heading: 'Take care',
  rules: 'Follow your local rules and the people licensed to do this work.',
  seed: 'Treated planting seed is poisonous. It is never food or feed.',
  permit: 'Growing even one cotton plant may need a permit. Ask your state agriculture department.',
  harvestAid: 'Harvest chemicals are for licensed people only.',
  module: 'Keep off modules and out of the yard when machines run.',
  gin: 'Gin machines take hands. On a tour, stay behind the line.',
  rotaryCutter: 'Close the rotary cutter every time you put it down.',
  iron: 'The iron stays hot after it is off.',
  burnTest: 'Burn tests are for an adult, over metal and water, or better on film.',
  sleepwear: 'Ordinary cotton does not pass the flame rules for loose children’s sleepwear.',
};
