import type { PluralForms } from '../../../fill.ts';

/** Words on the picture of the module. */
export const moduleWords = {
  day: 'Day {day} of {days}',
  noDays: 'Not stored',
  rain: 'Rain so far: {rain}',
  round: { one: '{n} round module, each {mass}', other: '{n} round modules, each {mass}' } as PluralForms,
  conventional: { one: '{n} long module, each {mass}', other: '{n} long modules, each {mass}' } as PluralForms,
  wagon: { one: '{n} wagon load, each {mass}', other: '{n} wagon loads, each {mass}' } as PluralForms,
  moistureBoth: 'Moisture: {came} to {goes}',
  feet: '{n} ft',
  captionPieces: 'A tuft, seed or drop stands for {tuft}, a bit of trash for {bit}.',
  captionShort: 'A tuft, seed or drop: {tuft}. A bit: {bit}.',
  captionRings: 'Each ring round the core: {degrees} warmer.',
  captionLimits: 'Double notches: published limits.',
  captionPace: 'A bale passes in {seconds} seconds.',
  ringUs: '5 °F',
  ringMetric: '3 °C',
  core: 'Core',
  rainSoFar: 'Rain so far',
  dayLabel: 'Day in storage',
  verdict: 'Verdict',
  moistureInLabel: 'Moisture as it came',
  moistureOutLabel: 'Moisture as it goes to the gin',
  eachLabel: 'In each',
  countLabel: 'In the yard',
  seeRound: 'A round module in its wrap stands in the yard with a probe in its core; the farm’s others stand behind.',
  seeConventional:
    'A long module, tamped and crowned, stands in the yard with a probe in its core; the others stand behind.',
  seeWagon:
    'A wagon heaped with seed cotton waits for the gin with a probe in the load; the farm’s other loads stand behind.',
  covers: {
    good: 'Its cover is sound and sheds the rain.',
    poor: 'Its cover is torn, and rain comes in.',
    none: 'It has no cover.',
  },
  seeRain: 'Rain hangs from the cloud day by day: {rain} so far, on day {day} of {days}.',
  seeCore: 'The core is at {core}: {verdict}. Published rules say gin soon at {soon}, gin at once at {now}.',
};
