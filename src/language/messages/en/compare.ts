import type { PluralForms } from '../../fill.ts';

/** How a difference is said: with a count, or with an amount in the reader's units. */
export interface DifferenceForms {
  readonly more: PluralForms;
  readonly less: PluralForms;
}
const amount = (more: string, less: string): DifferenceForms => ({
  more: { one: more, other: more },
  less: { one: less, other: less },
});

/** The words of the page that sets two seasons side by side. They come with it, so that the first view need not carry them. */
export const compare = {
  title: 'Two seasons side by side',
  sameWeather: '{farm}, season {seed}. Both have the same weather, so every difference comes from what was decided.',
  otherWeather:
    '{farm}, season {seed} and season {other}. The weather differs, so not every difference comes from what was decided.',
  otherFarm:
    '{farm}, season {seed}, beside {otherFarm}, season {other}. Not only decisions differ; what each difference did is taken apart below.',
  invented: 'The farms and their weather are invented; how surely each number is known is told where it is shown.',
  sides: { before: 'This season', after: 'The other season' },
  /** Where one farm is set beside itself under the same weather, and only choices differ. */
  choice: { before: 'Before the choice', after: 'With the choice' },
  open: { before: 'Open this season', after: 'Open the other season' },
  openChoice: { before: 'Open the season before the choice', after: 'Open the season with the choice' },
  swap: 'Swap the two',
  nothing:
    'Both took the same decisions in the same season. Change one at the Season page and come back, or try a question.',
  working: 'Running the seasons',
  decisions: {
    heading: 'What was decided',
    differ: { one: 'One decision differs.', other: '{n} decisions differ.' } as PluralForms,
    none: 'No decision differs.',
    rest: { one: 'One decision is the same in both', other: '{n} decisions are the same in both' } as PluralForms,
    decision: 'Decision',
    more: { one: 'One more that differs', other: '{n} more that differ' } as PluralForms,
  },
  /** What two farms do not share beside what was decided on them. */
  land: {
    heading: 'The farm',
    names: { era: 'Time', climate: 'Climate', acres: 'Field', soilWaterMm: 'Water the soil can hold' },
  },
  words: {
    heading: 'What it changed',
    hardly: 'Hardly anything changed.',
    table: 'All the numbers, side by side',
    difference: 'Difference',
  },
  bands: {
    heading: 'Where it went',
    caption: 'Both ledgers on one scale: a band twice as wide is twice the mass.',
    station: 'Station',
    none: 'This season did not come so far.',
    spoken: '{side}, {station}. In: {in}. Out: {out}.',
  },
  arrays: {
    heading: 'The fiber in the bale',
    caption: 'Each pad lays out as many fibers, longest first, on one ruler.',
    none: 'No fiber came to the bale.',
  },
  apart: {
    heading: 'What made the difference',
    caption:
      'Each difference is put in one after the other: time and land first, then the weather, then the decisions in the order of the season. These parts add up to the whole difference.',
    outcome: 'Difference in what?',
    part: 'What differs',
    inTurn: 'In its turn',
    alone: 'Changed alone',
    weather: 'Weather of the other season',
    first: 'This season as it is',
    before: 'With all those above put in',
    with: 'With this: {change}',
    whole: 'The whole difference',
    still: {
      one: 'One more thing differs and moved nothing of this.',
      other: '{n} more things differ and moved nothing of this.',
    } as PluralForms,
    together: 'Only together',
    togetherMeans:
      '“Only together” is what is left when each is changed alone: two of them can help or hinder each other.',
    one: 'One thing differs, so the whole difference is its doing.',
    none: 'Nothing differs, so there is nothing to take apart.',
    untold: 'One of the seasons on the way came to no bale, so the parts of this cannot be told.',
    progress: '{done} of {of} seasons run',
  },
  outcomes: {
    seedCottonKg: 'Seed cotton picked',
    rainInches: 'Rain on the field',
    irrigationInches: 'Irrigation',
    leftInFieldKg: 'Left in the field',
    weatheredKg: 'Lost to weather',
    moduleLossKg: 'Spoiled in storage',
    ginTrashKg: 'Gin trash',
    seedKg: 'Seed to the seed house',
    motesKg: 'Lint-cleaner waste',
    lintKg: 'Lint in the bales',
    turnoutPercent: 'Turnout',
    bales: 'Bales',
    staple32nds: 'Staple, mean of the bales',
    lengthMm: 'Fiber length (upper half mean)',
    uniformityPercent: 'Uniformity',
    shortFibrePercent: 'Short fiber',
    strengthGPerTex: 'Strength',
    micronaire: 'Micronaire',
    reflectanceRd: 'Brightness (Rd)',
    yellownessB: 'Yellowness (+b)',
    leafGrade: 'Leaf grade, mean of the bales',
    centsPerLb: 'Price',
    usdPerBale: 'Value of a bale',
    lintUsd: 'Value of the lint',
    leftToFarmUsd: 'Paid to the farm, before the costs of growing',
    millWasteKg: 'Waste of the mill',
    clothSquareMetres: 'Cloth',
    patchInches: 'Patch from one boll, side',
  },
  colour: 'Color of most bales',
  differences: {
    noBale: 'no bale at all: the crop came to nothing',
    aBale: 'a crop where there was none',
    noCloth: 'no cloth: the mill cannot make it',
    aCloth: 'cloth where there was none',
    colour: 'color {from} → {to}',
    bales: {
      more: { one: 'one bale more', other: '{n} bales more' },
      less: { one: 'one bale fewer', other: '{n} bales fewer' },
    },
    staple32nds: {
      more: { one: 'one staple longer', other: '{n} staples longer' },
      less: { one: 'one staple shorter', other: '{n} staples shorter' },
    },
    lengthMm: amount('fiber {amount} longer', 'fiber {amount} shorter'),
    leafGrade: {
      more: { one: 'one leaf grade worse', other: '{n} leaf grades worse' },
      less: { one: 'one leaf grade better', other: '{n} leaf grades better' },
    },
    lintKg: amount('{amount} more lint', '{amount} less lint'),
    usdPerBale: amount('{amount} more a bale', '{amount} less a bale'),
    leftToFarmUsd: amount('{amount} more to the farm', '{amount} less to the farm'),
    turnoutPercent: amount('turnout {amount} higher', 'turnout {amount} lower'),
    uniformityPercent: amount('uniformity {amount} higher', 'uniformity {amount} lower'),
    shortFibrePercent: amount('short fiber {amount} higher', 'short fiber {amount} lower'),
    strengthGPerTex: amount('fiber {amount} stronger', 'fiber {amount} weaker'),
    micronaire: amount('micronaire {amount} higher', 'micronaire {amount} lower'),
    moduleLossKg: amount('{amount} more spoiled in storage', '{amount} less spoiled in storage'),
    leftInFieldKg: amount('{amount} more left in the field', '{amount} less left in the field'),
    weatheredKg: amount('{amount} more lost to weather', '{amount} less lost to weather'),
    ginTrashKg: amount('{amount} more gin trash', '{amount} less gin trash'),
    motesKg: amount('{amount} more lint-cleaner waste', '{amount} less lint-cleaner waste'),
    millWasteKg: amount('{amount} more waste at the mill', '{amount} less waste at the mill'),
    irrigationInches: amount('{amount} more irrigation', '{amount} less irrigation'),
    rainInches: amount('{amount} more rain', '{amount} less rain'),
    clothSquareMetres: amount('{amount} more cloth', '{amount} less cloth'),
    patchInches: amount('each boll’s patch {amount} wider', 'each boll’s patch {amount} narrower'),
  },
};
