import type { PluralForms } from '../../../fill.ts';

/** Words on the picture of the harvest. */
export const harvestWords = {
  personDays: { one: '{n} person-day', other: '{n} person-days' } as PluralForms,
  personDaysOf: 'to pick one bale',
  minutes: { one: '{n} minute', other: '{n} minutes' } as PluralForms,
  minutesOf: 'of the machine, one bale',
  drum: 'Spindle drum, seen from above',
  doffer: 'Doffers',
  wetPad: 'Wet pad',
  sack: 'Picking sack, cut open',
  rolls: 'Rolls of brushes and bats',
  fieldCleaner: 'Field cleaner',
  shredded: 'Stalks shredded',
  cutDown: 'Stalks cut down',
  drumShows:
    'The drum turns so that its spindles stand still against the plants: {speed} of row a second in the field, one turn in {seconds} seconds here.',
  dofferShows: 'The doffers turn against it and strip the spindles: one turn in {seconds} seconds here.',
  rollsShow: 'The rolls turn {turns} times a minute, drawn {times} times slower.',
  cleanerShows: 'The saw of the field cleaner turns {turns} times a minute, drawn {times} times slower.',
  captionPieces: 'A boll, tuft, seed or drop stands for {tuft}, a bit of trash for {bit}.',
  captionShort: 'A boll, tuft, seed or drop: {tuft}. A bit: {bit}.',
  captionField: 'A bale passes in {seconds} seconds; in the field in {work}.',
  captionPace: 'A bale passes in {seconds} seconds.',
  feet: '{n} ft',
  field: 'The field',
  progress: 'Gathered so far',
  work: 'Work for one bale',
  row: 'Bolls on a foot of row',
  efficiency: 'Gathered of what still stood',
  seeHand:
    'Hands pull the locks from open bolls into a sack of {feet}, dragged along the row. The burs stay on the plant.',
  seeSpindle:
    'Barbed spindles reach into a row of open bolls, wind up the locks and leave the burs on the plant; doffers strip the spindles, wet pads clean them.',
  seeStripper: 'Two rolls of brushes and bats strip the whole stalk: cotton, burs, sticks and leaf come along.',
  seeCleaner: 'A saw in the field cleaner slings burs and sticks back to the ground.',
  seeFar: 'In the distance {share} of the field is gathered.',
};
