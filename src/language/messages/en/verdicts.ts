/** What a station concludes, why a block cannot be sewn in yet, and why a crop failed. */
export const verdicts = {
  module: {
    sound: 'Sound: dry enough to store.',
    ginSoon: 'Warming: gin it soon.',
    ginNow: 'Heating: gin it now, or it yellows.',
  },
  spinning: {
    spins: 'This fiber spins this yarn.',
    near: 'Near the limit: expect breaks.',
    beyond: 'Beyond what this fiber can spin.',
  },
  weaving: {
    open: 'Open cloth.',
    usual: 'A usual cloth for this weave.',
    close: 'Close cloth: hard to weave.',
    beyond: 'More threads than fit.',
  },
  refusals: {
    notEnoughBollsOpen: 'Only {open} of the bolls are open. Harvest needs {needed}.',
    cropFailed: 'No crop came this season, so nothing can go on. Change the planting, or try another season.',
    tooWetToStore: 'The seed cotton holds {moisture} water. Above {limit} it heats in storage.',
    yarnOutOfReach: 'Yarn {count} is too fine for this fiber. It reaches {limit}.',
    settTooHigh: '{sett} does not fit this yarn. The most is {limit}.',
  },
  stopped: {
    heading: 'The crop stopped here',
    neverEmerged: 'The seeds never came up: {dd60} gathered, {needed} needed.',
    neverSquared: 'The plants never set a square: {dd60} gathered, {needed} needed.',
    neverFlowered: 'The plants never flowered: {dd60} gathered, {needed} needed.',
    noBollOpened: 'No boll opened before the season ended: {dd60} gathered, {needed} needed.',
    noCrop: 'No boll was left to pick. The season gathered {dd60}.',
    soWhat: 'A crop that fails is a result too. The ledger still closes.',
  },
  warnings: {
    heavyBale: 'This bale is heavier than the press and the trade like.',
    lightBale: 'The last bale came out light.',
    wetLint: 'Lint this wet can cake and mold in the bale.',
    dryLint: 'Lint this dry breaks more and fights the press.',
    overflow: 'More comes than the stands take; the rest goes round again.',
    shortFibre: 'More short fiber than most mills want.',
    lowMicronaire: 'Micronaire is low: fine, or not ripe.',
    highMicronaire: 'Micronaire is high: coarse fiber.',
  },
};
