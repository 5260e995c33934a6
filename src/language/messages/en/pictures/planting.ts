/** Words of the picture of Planting. */
export const planting = {
  caption:
    '{length} of one row, {seeds}; seeds and depth drawn larger. Strip: the day’s air, low to high; yellow: its heat above {base}.',
  captionShort: '{length} of one row; seeds drawn larger. Yellow: the day’s heat above {base}.',
  feet: '{n}\u00a0ft',
  titles: {
    sowing: 'Sowing today',
    lying: 'Day {day} in the soil',
    upToday: 'Up today',
    up: 'Up for {days}',
  },
  places: {
    sowing: '{seeds}, one seed from each cell of the plate',
    lying: '{had} of {needs} to come up',
    up: '{nodes} nodes',
  },
  opener: 'The disc that opens the furrow rolls with the ground, one turn to {length} of the row as drawn.',
  wheel: 'The wheels carry the planter and press the furrow shut, one turn to {length} of the row as drawn.',
  plate: 'The seed plate lets one seed go from each cell: {seeds}.',
  rolling: 'Disc and wheels roll with the ground as far as the row passes.',
  tube: 'Each seed in the tube is one seed of the row.',
  sowing: 'The planter is at work on {date}: {all} seeds in one day.',
  lying: 'The seed lies in the ground on {date}. It needs {needs} to come up and has had {had}.',
  up: 'On {date} the plants are up: {up} of {all} seeds, {share}. They stand {height} tall, with {nodes} nodes.',
  air: 'The strip beside it is a thermometer: it shows the air from the day’s low to its high. Cotton grows on heat above {base}. The soil’s own temperature is not in the model.',
  rows: {
    upShare: 'Share that came up',
    base: 'Heat counts above',
    low: 'Low of the day',
    high: 'High of the day',
    heatNeeded: 'Heat a seedling needs to come up',
    perLength: 'Seeds in the row',
  },
};
