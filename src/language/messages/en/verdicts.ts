/** What a station concludes, why a block cannot be sewn in yet, and why a crop failed. */
export const verdicts = {
  module: {
    sound: 'Sound: dry enough to store.',
    ginSoon: 'Warming: gin it soon.',
    ginNow: 'Heating: gin it now, or it yellows.',
  },
  spinning: {
    comfortable: 'This fiber spins this yarn with ease.',
    strained: 'Strained: expect breaks.',
    impossible: 'Beyond what this fiber can spin.',
  },
  spinningReasons: {
    fibresInSection: 'Too few fibers would lie side by side in the yarn.',
    staple: 'The fiber is short for so fine a yarn.',
    rotorCount: 'Rotors do not spin so fine.',
  },
  weaving: {
    settIgnored: 'A knit takes no threads per inch: its rows follow from the loop.',
    tightSett: 'Closer than a handweaver would set it.',
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
    killedByFrost: 'Frost killed the young plants.',
    fibresInSection: 'The season ends here: this fiber cannot spin so fine a yarn.',
    rotorCount: 'The season ends here: a rotor cannot spin so fine a yarn.',
    settTooHigh: 'The season ends here: so many threads do not fit in an inch.',
    soWhat: 'A crop that fails is a result too. The ledger still closes.',
  },
  notes: {
    leafyPlant: 'Green leaf still hangs on the plants and comes along.',
    poorCropForMachine: 'So thin a crop pays badly for a machine.',
    tooWetToStore: 'Too wet to store for long.',
    spindlesWetCotton: 'Wet spindles add a little water.',
    fieldCleanerUsed: 'The field cleaner leaves burs and sticks in the field.',
    baleTooDamp: 'This bale is damper than the trade takes.',
    oddWeight: 'The bales come out far from the weight you set.',
    overflow: 'More comes than the stands take; the rest goes round again.',
  },
};
