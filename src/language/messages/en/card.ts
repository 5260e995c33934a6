/** Words of the season card. */
export const card = {
  title: 'Season card',
  toCard: 'The season card: one page to print or save',
  toTrace: 'The way back: how many bolls and plants a sewn thing takes',
  toCompare: 'This season beside the farm’s own choices',
  paidMeans:
    'What is paid to the farm is what the bales and the seed bring, less ginning, classing, storage and hired picking.',
  chose: 'You chose:',
  choseNothing: 'Every choice is the farm’s own.',
  invented: 'Season card of an invented farm',
  own: 'Season card of somebody’s own farm',
  headline: 'One boll made a patch {size} square.',
  noPatch: 'This season made no patch.',
  setting: '{climate}, {acres}, season number {seed}. {weather}.',
  weatherYear: '{weather}, {year}',
  trueSize: 'True size where the ruler measures true: print at 100%.',
  halfSize: 'Half size where the ruler measures half: print at 100%.',
  /** Names that stand alone here, away from their station. */
  labels: { value: 'Worth of the bales', left: 'Paid to the farm', weight: 'Weight of the cloth' } as Readonly<
    Record<string, string>
  >,
  closingIn: '{total} came in: {list}.',
  closingOut: '{total} went out: {list}. Unaccounted: {left}.',
  item: '{amount} {name}',
  rest: '× rests on memory or assumption.',
  link: 'Opens this season again, with every number:',
  linkHere: 'Opens this season again, on this device only:',
  print: 'Print the card',
  savePicture: 'Save as a picture',
  pictureFailed: 'The picture could not be made here. Printing to a file gives the same page.',
  back: 'Back to this season',
  changeFarm: 'Change this farm',
  inWords: 'The card in words',
  numbers: 'The season in numbers',
  alt: 'The season card as a picture: {headline} The same in words is below.',
  rests: 'Each number opens its working. Numbers with a cross-stitch rest on memory or assumption.',
};
