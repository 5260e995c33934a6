/** Words of the picture of Boll. */
export const boll = {
  green: '{days} old',
  openToday: 'It opened today',
  open: 'Open for {days}',
  place: 'node {node}: {locks} locks, {seeds} seeds',
  placeCut: 'node {node}, cut open: {locks} locks, {seeds} seeds',
  placeShort: '{locks} locks, {seeds} seeds',
  length: 'Fibers so far: {length}',
  wall: 'fiber cut across, {share} filled',
  lengthNote:
    'The picture lets fibers lengthen evenly until they are full at {days} on the boll’s clock; only that end is published.',
  none: 'The plant drawn keeps no boll this season.',
  rows: {
    elongated: 'Lengthening is over, on the boll’s clock',
    boll: 'Boll shown large',
    fibreLength: 'Its fibers',
    fibreWall: 'Their wall, of a full one',
    open: 'Bolls open, whole field',
  },
  steps: {
    floweredOn: 'Its flower opened on',
    openedOn: 'It opened on',
    daysSince: 'Days since',
    node: 'Node',
    locks: 'Locks',
    seeds: 'Seeds',
    clock: 'Its age on the boll’s clock',
    fullLength: 'Longest fibers of the variety',
    lengthShare: 'Share of that length',
  },
};
