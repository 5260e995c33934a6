/** Words on the picture of the cleaning line. */
export const cleaningWords = {
  suctionPipe: 'Suction pipe',
  overflow: 'Overflow',
  outWords: 'of the trash is out',
  short: { in: 'Seed cotton', trash: 'Trash', cleaned: 'To the gin', evaporated: 'Vapor' },
  turning: '{turns} turns a minute, drawn {slowed} times slower',
  wheels: {
    disperser: 'Spiked cylinders of the module feeder',
    cylinder: 'Spiked cylinders',
    extractorSaw: 'Saw cylinders',
    brush: 'Brushes',
  },
  shows: '{part}: {rate}',
  caption: 'A tuft or seed: {tuft}; a bit of trash: {bit}. {rate}.',
  captionShort: 'A tuft or seed: {tuft}; a bit: {bit}. Wheels {slowed} times slower.',
  rows: {
    took: '{machine}: trash so far',
    overflow: 'Runs past the feeder and comes round again',
    share: 'Trash taken out before the gin',
    piece: 'A tuft or seed stands for',
    bit: 'A bit of trash stands for',
  },
  see: 'Every machine drops what it takes into the trough below it. The distributor carries more than the feeder can take: {overflow} runs past it and comes round again.',
  seeMost: '{machine} takes most: {mass} of the trash so far.',
};
